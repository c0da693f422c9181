using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Tests.Dates;

public class TupAdviceTests
{
    [Theory]
    [InlineData(Teeth.Sound, Toes.Sound, Teats.Sound, TupVerdict.ToTheTup, null)]
    [InlineData(Teeth.Unchecked, Toes.Unchecked, Teats.Unchecked, TupVerdict.ToTheTup, null)]
    [InlineData(Teeth.Worn, Toes.Sound, Teats.Sound, TupVerdict.ToTheTup, TupFinding.WornTeeth)]
    [InlineData(Teeth.Sound, Toes.Treated, Teats.Sound, TupVerdict.TreatFirst, TupFinding.FeetTreated)]
    [InlineData(Teeth.Sound, Toes.Lame, Teats.Sound, TupVerdict.TreatFirst, TupFinding.Lame)]
    [InlineData(Teeth.Sound, Toes.Sound, Teats.Lumpy, TupVerdict.LeaveOut, TupFinding.LumpyUdder)]
    [InlineData(Teeth.Sound, Toes.Sound, Teats.LostHalf, TupVerdict.Cull, TupFinding.LostHalfUdder)]
    [InlineData(Teeth.Broken, Toes.Sound, Teats.Sound, TupVerdict.Cull, TupFinding.BrokenMouth)]
    [InlineData(Teeth.Broken, Toes.Lame, Teats.Lumpy, TupVerdict.Cull, TupFinding.BrokenMouth)]
    [InlineData(Teeth.Worn, Toes.Lame, Teats.Lumpy, TupVerdict.LeaveOut, TupFinding.LumpyUdder)]
    public void The_gravest_finding_decides_and_comes_first(Teeth teeth, Toes toes, Teats teats, TupVerdict verdict, TupFinding? first)
    {
        var advice = TupAdvisor.Advise(Sample.Ewe() with { Teeth = teeth, Toes = toes, Teats = teats });

        Assert.Equal(verdict, advice.Verdict);
        Assert.Equal(first, advice.Findings.Select(f => (TupFinding?)f).FirstOrDefault());
    }

    [Fact]
    public void Every_finding_is_named_and_those_that_keep_her_from_the_tup_apart()
    {
        var advice = TupAdvisor.Advise(Sample.Ewe() with { Teeth = Teeth.Worn, Toes = Toes.Lame, Teats = Teats.Lumpy, Condition = 1.5m });

        Assert.Equal([TupFinding.LumpyUdder, TupFinding.Lame, TupFinding.WornTeeth, TupFinding.Thin], advice.Findings);
        Assert.Equal([TupFinding.LumpyUdder, TupFinding.Lame], advice.Unfit);
    }

    [Theory]
    [InlineData(1.5, TupFinding.Thin)]
    [InlineData(2.0, null)]
    [InlineData(4.0, null)]
    [InlineData(4.5, TupFinding.TooFat)]
    public void Condition_is_spoken_of_and_decides_nothing(double condition, TupFinding? finding)
    {
        var advice = TupAdvisor.Advise(Sample.Ewe() with { Condition = (decimal)condition });

        Assert.Equal(TupVerdict.ToTheTup, advice.Verdict);
        Assert.Equal(finding is { } found ? [found] : [], advice.Findings);
    }

    [Theory]
    [InlineData(PastTrouble.Caesarean, TupFinding.HadCaesarean)]
    [InlineData(PastTrouble.Prolapse, TupFinding.HadProlapse)]
    [InlineData(PastTrouble.Mastitis, TupFinding.HadMastitis)]
    public void What_she_went_through_keeps_her_from_the_tup_unless_the_keeper_says_otherwise(PastTrouble trouble, TupFinding finding)
    {
        var ewe = Sample.Ewe() with { History = [trouble] };
        var advice = TupAdvisor.Advise(ewe);

        Assert.Equal((TupVerdict.LeaveOut, finding), (advice.Verdict, Assert.Single(advice.Unfit)));
        Assert.Equal(Standing.LeftOut, EwePlans.BeforeLoss(ewe, advice));
        Assert.Equal(Standing.ToLamb, EwePlans.BeforeLoss(ewe with { ToTup = true }, advice));
    }

    [Fact]
    public void A_ewe_the_keeper_keeps_back_is_left_out()
    {
        var advice = TupAdvisor.Advise(Sample.Ewe() with { ToTup = false });

        Assert.Equal((TupVerdict.LeaveOut, TupFinding.KeptBack), (advice.Verdict, Assert.Single(advice.Findings)));
    }

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
