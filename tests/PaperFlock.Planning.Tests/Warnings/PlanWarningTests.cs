using NodaTime;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests.Warnings;

public class PlanWarningTests
{
    /// <summary>A season short enough that every ewe can be counted at the scan, so that it says nothing by itself.</summary>
    private static readonly TuppingGroup Short = Sample.Group(tupOut: Sample.TupIn.PlusDays(34));

    [Fact]
    public void A_sound_flock_in_a_short_season_is_warned_of_nothing() =>
        Assert.Empty(Warnings(Flock(Sample.Ewe(), Sample.Ewe("Fern", marks: "2026-08-14"))));

    [Theory]
    [InlineData(Teeth.Broken, Toes.Sound, Teats.Sound, null, "", "Bracken should not go to the tup (broken mouth): she is left out of the plan")]
    [InlineData(Teeth.Sound, Toes.Lame, Teats.Sound, null, "", "Bracken should not go to the tup (lame), yet she is in the group that does")]
    [InlineData(Teeth.Sound, Toes.Sound, Teats.Lumpy, null, "2026-08-14", "Bracken should not go to the tup (lumpy udder), yet she is marked Fri 14 Aug")]
    [InlineData(Teeth.Sound, Toes.Sound, Teats.LostHalf, 2, "", "Bracken should not go to the tup (lost half her udder), yet she is scanned with 2 lambs")]
    public void A_ewe_unfit_for_the_tup_is_named(Teeth teeth, Toes toes, Teats teats, int? scan, string marks, string message)
    {
        var ewe = Sample.Ewe(marks: marks, scan: scan) with { Teeth = teeth, Toes = toes, Teats = teats };

        var warning = Assert.Single(Warnings(Flock(ewe)));

        Assert.Equal((Severity.Warning, "FLK101", ewe.Span, message), (warning.Severity, warning.Code, warning.Span, warning.Message));
        Assert.NotEmpty(warning.Advice);
    }

    [Theory]
    [InlineData(Teeth.Worn, Toes.Sound, null)]
    [InlineData(Teeth.Sound, Toes.Treated, null)]
    [InlineData(Teeth.Broken, Toes.Sound, 0)]
    public void What_she_may_go_with_or_is_past_is_not_warned_of(Teeth teeth, Toes toes, int? scan) =>
        Assert.Empty(Warnings(Flock(Sample.Ewe(scan: scan) with { Teeth = teeth, Toes = toes })));

    [Fact]
    public void A_ewe_kept_back_is_only_warned_of_when_she_was_mated_after_all()
    {
        var kept = Sample.Ewe() with { ToTup = false, Teats = Teats.Lumpy };

        Assert.Empty(Warnings(Flock(kept)));
        Assert.Equal("FLK102", Assert.Single(Warnings(Flock(kept with { Scan = 1 }))).Code);
        Assert.Equal("FLK102", Assert.Single(Warnings(Flock(kept with { Marks = [Sample.Day("2026-08-14")] }))).Code);
    }

    [Theory]
    // Scan on Sat 24 Oct: 40 days before it is Mon 14 Sep.
    [InlineData("2026-09-14", null, null)]
    [InlineData("2026-09-15", null, "FLK103")]
    [InlineData("2026-09-15", 2, null)]
    [InlineData("", null, "FLK104")]
    [InlineData("", 1, null)]
    public void A_ewe_too_few_days_in_lamb_to_be_counted_is_warned_of(string marks, int? scan, string? code)
    {
        var warnings = Warnings(Sample.Flock(Sample.Ewe(marks: marks, scan: scan)));

        Assert.Equal(code is null ? [] : [code], warnings.Select(w => w.Code));
    }

    [Fact]
    public void Too_early_a_scan_says_by_how_much_and_what_would_do()
    {
        var warnings = Warnings(Sample.Flock(Sample.Ewe(marks: "2026-09-20"), Sample.Ewe("Fern")));

        Assert.Equal(
            [
                ("1 ewe could be only 33 days in lamb at the scan on Sat 24 Oct, too few to count lambs", "scan on or after Sat 31 Oct, take the tup out sooner, or have late ones looked at again"),
                ("Bracken will be 34 days in lamb at the scan on Sat 24 Oct, too few to count her lambs", "scan her on or after Fri 30 Oct, or have her looked at again then"),
            ],
            warnings.Select(w => (w.Message, w.Advice)));
    }

    [Theory]
    [InlineData("2026-11-22", null, false)]
    [InlineData("2026-11-23", null, true)]
    [InlineData("2026-11-23", 2, false)]
    public void No_scan_by_feeding_time_is_warned_of(string asOf, int? scan, bool warned)
    {
        var warnings = SeasonPlanner.Plan(Flock(Sample.Ewe(scan: scan)), Sample.Day(asOf)).Warnings;

        Assert.Equal(warned ? ["FLK105"] : [], warnings.Select(w => w.Code));
    }

    [Theory]
    [InlineData(50, Mating.Natural, false)]
    [InlineData(51, Mating.Natural, true)]
    [InlineData(51, Mating.Hand, true)]
    [InlineData(51, Mating.Artificial, false)]
    public void A_tup_with_too_many_ewes_is_warned_of(int ewes, Mating mating, bool warned)
    {
        var group = mating == Mating.Natural ? Short : Sample.OneDay("", Sample.TupIn, mating);
        var flock = Sample.Flock(
            [group], [.. Enumerable.Range(1, ewes).Select(i => Sample.Ewe($"{i:000}")), Sample.Ewe("Out") with { ToTup = false }]);

        Assert.Equal(warned ? ["FLK106"] : [], Warnings(flock).Select(w => w.Code));
    }

    [Theory]
    // Tup in 10 Aug to 13 Sep: the middle day is 27 Aug, and belongs to both halves.
    [InlineData("2026-08-27", ScanStage.Early, false)]
    [InlineData("2026-08-28", ScanStage.Early, true)]
    [InlineData("2026-08-27", ScanStage.Late, false)]
    [InlineData("2026-08-26", ScanStage.Late, true)]
    [InlineData("2026-08-11 2026-08-28", ScanStage.Early, false)]
    public void A_scanner_who_contradicts_the_mark_is_warned_of(string marks, ScanStage stage, bool warned) =>
        Assert.Equal(warned ? ["FLK107"] : [], Warnings(Flock(Sample.Ewe(marks: marks, scan: 2, stage: stage))).Select(w => w.Code));

    [Fact]
    public void Warnings_stand_in_the_order_of_the_file()
    {
        var flock = Sample.Flock(
            Sample.Ewe() with { Teats = Teats.Lumpy, Span = new SourceSpan(30, 5, 4) },
            Sample.Ewe("Fern") with { Toes = Toes.Lame, Span = new SourceSpan(20, 5, 4) });

        Assert.Equal([3, 20, 30], Warnings(flock).Select(w => w.Span.Line));
    }

    private static Flock Flock(params Ewe[] ewes) => Sample.Flock([Short], ewes);

    private static IEnumerable<Diagnostic> Warnings(Flock flock) => SeasonPlanner.Plan(flock, new LocalDate(2026, 5, 1)).Warnings;
}
