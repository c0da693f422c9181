using NodaTime;
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
    [InlineData(Teeth.Broken, Toes.Sound, Teats.Sound, null, "")]
    [InlineData(Teeth.Sound, Toes.Lame, Teats.Sound, null, "")]
    [InlineData(Teeth.Sound, Toes.Sound, Teats.Lumpy, null, "2026-08-14")]
    [InlineData(Teeth.Sound, Toes.Sound, Teats.LostHalf, 2, "")]
    public void A_ewe_unfit_for_the_tup_is_named(Teeth teeth, Toes toes, Teats teats, int? scan, string marks)
    {
        var ewe = Sample.Ewe(marks: marks, scan: scan) with { Teeth = teeth, Toes = toes, Teats = teats };

        var warning = Assert.IsType<PlanWarning.UnfitForTup>(Assert.Single(Warnings(Flock(ewe))));

        Assert.Equal((ewe, ewe.Span), (warning.Ewe.Ewe, warning.Span));
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
        Assert.IsType<PlanWarning.KeptBackYetMated>(Assert.Single(Warnings(Flock(kept with { Scan = 1 }))));
        Assert.IsType<PlanWarning.KeptBackYetMated>(Assert.Single(Warnings(Flock(kept with { Marks = [Sample.Day("2026-08-14")] }))));
    }

    /// <summary>Her mark is on the first day and the scanner calls her late: what matters is that she was to stay at home.</summary>
    [Fact]
    public void A_ewe_kept_back_yet_mated_is_warned_of_once() => Assert.IsType<PlanWarning.KeptBackYetMated>(Assert.Single(Warnings(
        Flock(Sample.Ewe(marks: "2026-08-11", scan: 2, stage: ScanStage.Late) with { ToTup = false }))));

    [Theory]
    // Scan on Sat 24 Oct: 40 days before it is Mon 14 Sep.
    [InlineData("2026-09-14", null, null)]
    [InlineData("2026-09-15", null, typeof(PlanWarning.MarkedTooLateToCount))]
    [InlineData("2026-09-15", 2, null)]
    [InlineData("", null, typeof(PlanWarning.TooLateToCount))]
    [InlineData("", 1, null)]
    public void A_ewe_too_few_days_in_lamb_to_be_counted_is_warned_of(string marks, int? scan, Type? warning)
    {
        var warnings = Warnings(Sample.Flock(Sample.Ewe(marks: marks, scan: scan)));

        Assert.Equal(warning is null ? [] : [warning], warnings.Select(w => w.GetType()));
    }

    [Fact]
    public void Too_early_a_scan_is_known_by_its_days()
    {
        var flock = Sample.Flock(Sample.Ewe(marks: "2026-09-20"), Sample.Ewe("Fern"));
        var scan = Sample.Day("2026-10-24");

        Assert.Equal(
            [
                new PlanWarning.MarkedTooLateToCount(flock.Ewes[0], Sample.Day("2026-09-20"), scan),
                new PlanWarning.TooLateToCount(flock.Groups[0], 1, Sample.TupOut, scan),
            ],
            Warnings(flock));
    }

    [Theory]
    [InlineData("2026-11-22", null, false)]
    [InlineData("2026-11-23", null, true)]
    [InlineData("2026-11-23", 2, false)]
    public void No_scan_by_feeding_time_is_warned_of(string asOf, int? scan, bool warned)
    {
        var warnings = SeasonPlanner.Plan(Flock(Sample.Ewe(scan: scan)), Sample.Day(asOf)).Warnings;

        Assert.Equal(warned ? [new PlanWarning.NotScannedByFeeding(Short, 1, Sample.Day("2026-11-23"))] : [], warnings);
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

        Assert.Equal(warned ? [new PlanWarning.TooManyEwes(group, ewes, 50)] : [], Warnings(flock));
    }

    /// <summary>A 70 kg ewe wants 1.27 m² of straw (DEFRA PB5162, between 1.2 m² at 60 kg and 1.4 m² at 90) and half a metre of trough (Teagasc).</summary>
    [Theory]
    [InlineData("1.2", "1", null, true)]
    [InlineData("1.3", "1", null, false)]
    [InlineData("3", "1", "0.4", true)]
    [InlineData("3", "1", "0.5", false)]
    public void A_pen_that_holds_nobody_is_warned_of(string length, string width, string? trough, bool warned)
    {
        var pen = FeedingSample.Pen("Bay", decimal.Parse(length, null), decimal.Parse(width, null), trough is null ? null : decimal.Parse(trough, null));
        var flock = Flock(Sample.Ewe() with { Weight = new Mass(70) }) with { Housing = Sample.Housing() with { Pens = [pen] } };

        Assert.Equal(warned ? [new PlanWarning.PenTooSmall(pen)] : [], Warnings(flock));
    }

    [Fact]
    public void A_pen_with_room_that_nobody_needs_is_not_warned_of() => Assert.Empty(Warnings(
        Flock(Sample.Ewe()) with { Housing = Sample.Housing() with { Pens = [FeedingSample.Pen("Bay", 3, 1), FeedingSample.Pen("Far bay", 3, 1)] } }));

    [Theory]
    [InlineData(LambingPlace.Outdoors, Shearing.AtHousing, true)]
    [InlineData(LambingPlace.Outdoors, Shearing.BeforeTupping, false)]
    [InlineData(LambingPlace.Indoors, Shearing.AtHousing, false)]
    public void Ewes_shorn_in_winter_that_lamb_outdoors_are_warned_of(LambingPlace place, Shearing shear, bool warned)
    {
        var flock = Flock(Sample.Ewe()) with { Housing = Sample.Housing(place), Practice = Sample.Practice() with { Shear = shear } };
        Assert.Equal(warned ? [new PlanWarning.ShornOutdoors(flock.Season)] : [], Warnings(flock));
    }

    /// <summary>Half a metre of trough each, and room on the floor for both.</summary>
    [Theory]
    [InlineData("0.5", 1)]
    [InlineData("0.9", 1)]
    [InlineData("1.0", 0)]
    public void Ewes_without_room_are_counted_at_the_first_pen(string trough, int without)
    {
        var pen = FeedingSample.Pen("Bay", 3, 2, decimal.Parse(trough, null));
        var flock = Flock(Sample.Ewe() with { Weight = new Mass(70) }, Sample.Ewe("Fern") with { Weight = new Mass(70) }) with { Housing = Sample.Housing() with { Pens = [pen] } };

        Assert.Equal(without > 0 ? [new PlanWarning.NoRoom(without, pen)] : [], Warnings(flock));
    }

    [Theory]
    // Tup in 10 Aug to 13 Sep: the middle day is 27 Aug, and belongs to both halves.
    [InlineData("2026-08-27", ScanStage.Early, false)]
    [InlineData("2026-08-28", ScanStage.Early, true)]
    [InlineData("2026-08-27", ScanStage.Late, false)]
    [InlineData("2026-08-26", ScanStage.Late, true)]
    [InlineData("2026-08-11 2026-08-28", ScanStage.Early, false)]
    public void A_scanner_who_contradicts_the_mark_is_warned_of(string marks, ScanStage stage, bool warned) =>
        Assert.Equal(warned ? [typeof(PlanWarning.StageAgainstMark)] : [], Warnings(Flock(Sample.Ewe(marks: marks, scan: 2, stage: stage))).Select(w => w.GetType()));

    private static Flock Flock(params Ewe[] ewes) => Sample.Flock([Short], ewes);

    private static IEnumerable<PlanWarning> Warnings(Flock flock) => SeasonPlanner.Plan(flock, new LocalDate(2026, 5, 1)).Warnings;
}
