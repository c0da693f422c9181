using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Tests.Dates;

public class TupAdviceTests
{
    [Theory]
    [InlineData(Teeth.Sound, Toes.Sound, Teats.Sound, TupVerdict.ToTheTup, "")]
    [InlineData(Teeth.Unchecked, Toes.Unchecked, Teats.Unchecked, TupVerdict.ToTheTup, "")]
    [InlineData(Teeth.Worn, Toes.Sound, Teats.Sound, TupVerdict.ToTheTup, "worn teeth")]
    [InlineData(Teeth.Sound, Toes.Treated, Teats.Sound, TupVerdict.TreatFirst, "feet treated")]
    [InlineData(Teeth.Sound, Toes.Lame, Teats.Sound, TupVerdict.TreatFirst, "lame")]
    [InlineData(Teeth.Sound, Toes.Sound, Teats.Lumpy, TupVerdict.LeaveOut, "lumpy udder")]
    [InlineData(Teeth.Sound, Toes.Sound, Teats.LostHalf, TupVerdict.Cull, "lost half her udder")]
    [InlineData(Teeth.Broken, Toes.Sound, Teats.Sound, TupVerdict.Cull, "broken mouth")]
    [InlineData(Teeth.Broken, Toes.Lame, Teats.Lumpy, TupVerdict.Cull, "broken mouth")]
    [InlineData(Teeth.Worn, Toes.Lame, Teats.Lumpy, TupVerdict.LeaveOut, "lumpy udder")]
    public void The_gravest_finding_decides_and_comes_first(Teeth teeth, Toes toes, Teats teats, TupVerdict verdict, string reason)
    {
        var advice = TupAdvisor.Advise(Sample.Ewe() with { Teeth = teeth, Toes = toes, Teats = teats });

        Assert.Equal(verdict, advice.Verdict);
        Assert.StartsWith(reason, advice.Reason, StringComparison.Ordinal);
        Assert.Equal(reason.Length == 0, advice.Reason.Length == 0);
    }

    [Fact]
    public void Every_finding_is_named()
    {
        var advice = TupAdvisor.Advise(Sample.Ewe() with { Teeth = Teeth.Worn, Toes = Toes.Lame, Teats = Teats.Lumpy, Condition = 1.5m });

        Assert.All(["worn teeth", "lame", "lumpy udder", "thin at condition 1.5"], words => Assert.Contains(words, advice.Reason, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1.5, "thin at condition 1.5")]
    [InlineData(2.0, "")]
    [InlineData(4.0, "")]
    [InlineData(4.5, "too fat at condition 4.5")]
    public void Condition_is_spoken_of_and_decides_nothing(double condition, string reason)
    {
        var advice = TupAdvisor.Advise(Sample.Ewe() with { Condition = (decimal)condition });

        Assert.Equal(new TupAdvice(TupVerdict.ToTheTup, reason), advice);
    }

    [Fact]
    public void A_ewe_the_keeper_keeps_back_is_left_out_and_says_why() =>
        Assert.Equal(new TupAdvice(TupVerdict.LeaveOut, "kept back by the keeper"), TupAdvisor.Advise(Sample.Ewe() with { ToTup = false }));

    [Theory]
    [InlineData(null, Teats.Sound, "", null, null, Standing.ToLamb)]
    [InlineData(null, Teats.Lumpy, "", null, null, Standing.LeftOut)]
    [InlineData(null, Teats.LostHalf, "", null, null, Standing.LeftOut)]
    // She went all the same: what is seen beats what was advised.
    [InlineData(null, Teats.Lumpy, "2026-08-14", null, null, Standing.ToLamb)]
    [InlineData(null, Teats.Lumpy, "", 2, null, Standing.ToLamb)]
    [InlineData(true, Teats.Lumpy, "", null, null, Standing.ToLamb)]
    [InlineData(false, Teats.Sound, "", null, null, Standing.LeftOut)]
    [InlineData(false, Teats.Sound, "2026-08-14", null, null, Standing.LeftOut)]
    [InlineData(null, Teats.Sound, "2026-08-14", 0, null, Standing.Empty)]
    [InlineData(null, Teats.Lumpy, "", 0, null, Standing.Empty)]
    [InlineData(null, Teats.Sound, "2026-08-14", 2, "2027-01-09", Standing.Lambed)]
    [InlineData(false, Teats.Sound, "", null, "2027-01-09", Standing.Lambed)]
    public void Her_standing_follows_the_last_thing_known(bool? toTup, Teats teats, string marks, int? scan, string? lambed, Standing standing)
    {
        var ewe = Sample.Ewe(marks: marks, scan: scan) with
        {
            ToTup = toTup,
            Teats = teats,
            Lambed = lambed is null ? null : Sample.Day(lambed),
        };

        var plan = EwePlans.Of(Sample.Flock(ewe)).Single();

        Assert.Equal(standing, plan.Standing);
        Assert.Equal(standing == Standing.ToLamb, plan.Due is not null);
    }

    [Theory]
    [InlineData(null, null, 1)]
    [InlineData(null, 0, 0)]
    [InlineData(null, 3, 3)]
    [InlineData(false, null, 0)]
    public void She_is_planned_for_the_lambs_counted_and_for_one_where_nobody_counted(bool? toTup, int? scan, int litter) =>
        Assert.Equal(litter, EwePlans.Of(Sample.Flock(Sample.Ewe(scan: scan) with { ToTup = toTup })).Single().Litter);
}
