using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Planning;
using PaperFlock.Planning.Tests;

namespace PaperFlock.Sheets.Tests.Text;

public sealed class WarningTextTests
{
    /// <summary>A season short enough that every ewe can be counted at the scan, so that it says nothing by itself.</summary>
    private static readonly TuppingGroup Short = Sample.Group("Orchard", tupOut: Sample.TupIn.PlusDays(34), tup: "Bramley");

    private const string Before = "2026-05-01";

    [Theory]
    [InlineData(Teeth.Broken, Toes.Sound, Teats.Sound, null, "", "Bracken should not go to the tup (broken mouth): she is left out of the plan")]
    [InlineData(Teeth.Sound, Toes.Lame, Teats.Sound, null, "", "Bracken should not go to the tup (lame), yet she is in the group that does")]
    [InlineData(Teeth.Worn, Toes.Sound, Teats.Lumpy, null, "2026-08-14", "Bracken should not go to the tup (lumpy udder), yet she is marked Fri 14 Aug")]
    [InlineData(Teeth.Sound, Toes.Sound, Teats.LostHalf, 2, "", "Bracken should not go to the tup (lost half her udder), yet she is scanned with 2 lambs")]
    public void A_ewe_unfit_for_the_tup_is_named(Teeth teeth, Toes toes, Teats teats, int? scan, string marks, string message)
    {
        var ewe = Ewe(marks, scan) with { Teeth = teeth, Toes = toes, Teats = teats };

        Is(Flock(ewe), Before, Warn(
            "FLK101", ewe.Span, message,
            marks.Length == 0 && scan is null ? "look at her again, then say `to-tup: yes` or `to-tup: no`" : "look at her again; if she is right after all, say `to-tup: yes`"));
    }

    [Fact]
    public void A_ewe_kept_back_and_mated_after_all_is_named()
    {
        var ewe = Ewe(scan: 1) with { ToTup = false };

        Is(Flock(ewe), Before, Warn(
            "FLK102", ewe.Span,
            "Bracken is kept back from the tup, yet scanned with 1 lamb: she is left out of feeding, housing and lambing", "take out `to-tup: no` if she may be in lamb"));
    }

    [Fact]
    public void Too_early_a_scan_says_by_how_much_and_what_would_do()
    {
        var flock = Sample.Flock(Sample.Ewe(marks: "2026-09-20"), Sample.Ewe("Fern"));

        Is(
            flock,
            Before,
            Warn(
                "FLK104", flock.Groups[0].Span,
                "1 ewe could be only 33 days in lamb at the scan on Sat 24 Oct, too few to count lambs", "scan on or after Sat 31 Oct, take the tup out sooner, or have late ones looked at again"),
            Warn(
                "FLK103", flock.Ewes[0].Span,
                "Bracken will be 34 days in lamb at the scan on Sat 24 Oct, too few to count her lambs", "scan her on or after Fri 30 Oct, or have her looked at again then"));
    }

    [Fact]
    public void No_scan_by_feeding_time_is_said() => Is(
        Flock(Ewe()), "2026-11-23",
        Warn(
            "FLK105", Short.Span,
            "1 ewe of Orchard not scanned, and feeding starts on Mon 23 Nov: fed as the average of the flock", "write `scan:` under each ewe, or feed by her condition and the vet's word"));

    [Fact]
    public void A_tup_with_too_many_ewes_is_named() => Is(
        Flock(Ewe(), Ewe() with { Tag = "ZZ 2" }) with { Practice = Sample.Practice() with { EwesPerTup = 1 } },
        Before,
        Warn("FLK106", Short.Span, "Bramley has 2 ewes of Orchard, more than 1", "share them between tups, or set `ewes-per-tup` under practice"));

    [Fact]
    public void A_scanner_who_contradicts_the_mark_is_quoted()
    {
        var ewe = Ewe("2026-08-28", 2) with { ScanStage = ScanStage.Early };

        Is(Flock(ewe), Before, Warn(
            "FLK107", ewe.Span,
            "the scanner said early for Bracken, yet she was marked on Fri 28 Aug", "the mark is used; check both, and watch her for the other date"));
    }

    [Theory]
    [InlineData("2026-06-05", "2026-06-25", "the nearest day that would do is Sat 27 Jun; change the absence, or ask the sitter to do it")]
    [InlineData("2024-01-01", "2029-12-31", "no day within a year would do; change `keeper-days`")]
    public void A_job_that_fits_no_day_is_named(string from, string to, string advice)
    {
        var drench = Sample.Own("Drench", JobAnchor.TupIn, -61, -50);
        var flock = Flock(Ewe()) with { OwnJobs = [drench], KeeperDays = Sample.Free(Sample.Weekend, Sample.Away(from, to)) };

        Assert.Contains(
            Warn("FLK108", drench.Span, "no day for \"Drench\" of Orchard, wanted Wed 10 Jun to Sun 21 Jun: the keeper is away", advice),
            Of(flock, Before));
    }

    [Fact]
    public void Shearing_at_housing_of_ewes_that_stay_out_is_refused() => Is(
        Flock(Ewe()) with { Housing = Sample.Housing(LambingPlace.Outdoors), Practice = Sample.Practice() with { Shear = Shearing.AtHousing } },
        Before,
        Warn(
            "FLK109", Sample.Season().Span,
            "shearing at housing is asked for, but the ewes lamb outdoors, so no shearing is planned", "set `shear` under practice to another time"));

    [Fact]
    public void A_pen_that_holds_nobody_is_named()
    {
        var pen = new Pen("Kennel", new Length(1), new Length(1), null, new SourceSpan(12, 5, 6));
        Is(
            Flock(Ewe()) with { Housing = Sample.Housing() with { Pens = [pen] } },
            Before,
            Warn("FLK119", pen.Span, "no ewe of this flock has room in the pen \"Kennel\"", "check its length, width and trough and their units, or take the pen out"));
    }

    [Fact]
    public void A_shed_too_small_is_said_before_anybody_is_housed()
    {
        var pen = new Pen("Bay", new Length(3), new Length(2), new Length(0.7m), new SourceSpan(12, 5, 3));
        Is(
            Flock(Ewe(), Ewe() with { Tag = "ZZ 2" }) with { Housing = Sample.Housing() with { Pens = [pen] } },
            Before,
            Warn("FLK189", pen.Span, "the shed is too small: 1 ewe in lamb would have no room in its pen", "check `length`, `width` and `trough` of each pen and their units, or find them room before they are housed"));
    }

    [Fact]
    public void Warnings_stand_in_the_order_of_the_file() => Assert.Equal(
        [20, 30],
        Of(Flock(
            Ewe() with { Teats = Teats.Lumpy, Span = new SourceSpan(30, 5, 4) },
            Ewe() with { Tag = "ZZ 2", Toes = Toes.Lame, Span = new SourceSpan(20, 5, 4) }), Before).Select(w => w.Span.Line));

    private static Ewe Ewe(string marks = "", int? scan = null) => Sample.Ewe(group: "Orchard", marks: marks, scan: scan);

    private static Flock Flock(params Ewe[] ewes) => Sample.Flock([Short], ewes);

    private static void Is(Flock flock, string asOf, params Diagnostic[] warnings) => Assert.Equal(warnings, Of(flock, asOf));

    private static Diagnostic Warn(string code, SourceSpan span, string message, string advice) => new(Severity.Warning, code, span, message, advice);

    /// <summary>Of everything but the rations: what is said of those is held in <see cref="Parts.FeedWarningTextTests"/>.</summary>
    private static IEnumerable<Diagnostic> Of(Flock flock, string asOf)
    {
        var plan = SeasonPlanner.Plan(flock, Sample.Day(asOf));
        return WarningText.Of(plan with { Feeding = plan.Feeding with { Warnings = [] } });
    }
}
