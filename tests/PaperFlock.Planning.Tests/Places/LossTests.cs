using CsCheck;
using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests.Places;

/// <summary>A ewe that dies, is sold or loses her lambs: nothing made ahead moves, and nothing is reckoned for her from that day.</summary>
public sealed class LossTests
{
    private static readonly LocalDate Day = Sample.Day("2026-12-03");

    [Fact]
    public void She_is_gone_from_that_day() => Assert.Equal(
        ["2026-09-22 InLamb Field", "2026-12-03 Gone Gone"],
        Stays(Plan(e => e with { Gone = new Loss(Day, LossReason.Died) })).Skip(2));

    [Fact]
    public void A_ewe_that_lost_her_lambs_is_no_longer_in_lamb_and_stays_out() => Assert.Equal(
        ["2026-09-22 InLamb Field", "2026-12-03 NotInLamb Field"],
        Stays(Plan(e => e with { LostLambs = Day })).Skip(2));

    [Fact]
    public void A_ewe_left_out_was_left_out_until_she_went() => Assert.Equal(
        ["2026-05-25 LeftOut Field", "2026-12-03 Gone Gone"],
        Stays(Plan(e => e with { ToTup = false, Marks = [], Scan = null, Gone = new Loss(Day, LossReason.Sold) })));

    [Fact]
    public void Charts_pens_and_jobs_stand_as_they_were_and_stores_and_nights_do_not() => AnyFlock.Drawn.Where(f => f.Ewes.Length > 1).Sample(
        flock =>
        {
            var before = SeasonPlanner.Plan(flock, flock.Season.TupIn);
            var lost = before.Ewes.Where(e => e.IsCarrying).Select(e => e.Ewe).LastOrDefault();
            var day = flock.Groups.Max(g => g.TupIn).PlusDays(flock.Practice.ScanDaysAfterTupIn.Last + 14);
            // With the last ewe of a group, or of a chart, its jobs go too.
            bool IsLike(EwePlan her, EwePlan other) => other.IsCarrying && her.Ewe.Tag != other.Ewe.Tag;
            if (before.Ewes.FirstOrDefault(e => e.Ewe.Tag == lost?.Tag) is not { } her || her.Due!.Earliest <= day
                || !before.Ewes.Any(e => IsLike(her, e) && e.Ewe.Group == her.Ewe.Group) || !before.Ewes.Any(e => IsLike(her, e) && e.Chart == her.Chart))
            {
                return;
            }

            var after = SeasonPlanner.Plan(
                flock with { Ewes = [.. flock.Ewes.Select(e => e.Tag == her.Ewe.Tag ? e with { Gone = new Loss(day, LossReason.Died) } : e)] }, flock.Season.TupIn);
            Assert.Equal(before.Feeding.Charts.Select(c => c.Code), after.Feeding.Charts.Select(c => c.Code));
            Assert.Equal(before.Feeding.Charts.SelectMany(c => c.Rows.Select(r => (r.From, r.KgPerEwePerDay))), after.Feeding.Charts.SelectMany(c => c.Rows.Select(r => (r.From, r.KgPerEwePerDay))));
            Assert.Equal(before.Jobs.Select(j => (j.Kind, j.ShownOn)), after.Jobs.Select(j => (j.Kind, j.ShownOn)));
            Assert.Equal(Pens(before, her.Ewe), Pens(after, her.Ewe));
            Assert.Equal(before.Lambing.Ewes - 1, after.Lambing.Ewes);
            Assert.DoesNotContain(after.Feeding.Troughs, t => t.To >= day && t.From >= day && t.Ewes.Any(e => e.Tag == her.Ewe.Tag));
            Assert.All(after.Stores.Where(s => s.Kg is not null), s => Assert.InRange(s.Kg!.Value, 0, before.Stores.First(o => o.Kind == s.Kind).Kg!.Value));
        },
        iter: 100);

    /// <summary>Nothing has been made ahead for her by then.</summary>
    [Fact]
    public void One_lost_before_the_scan_leaves_no_trace_in_charts()
    {
        var plan = Plan(e => e with { Scan = null, Gone = new Loss(Sample.Day("2026-10-01"), LossReason.Died) });
        Assert.DoesNotContain(plan.Feeding.Charts.SelectMany(c => c.Ewes), e => e.Ewe.Name == "Bracken");
        Assert.Empty(plan.Outcome.Lambings);
        Assert.Equal("Bracken", Assert.Single(plan.Outcome.Gone).Ewe.Name);
    }

    [Fact]
    public void A_season_with_every_ewe_gone_is_still_planned() => Assert.Equal(
        0,
        SeasonPlanner.Plan(Sample.Flock(Sample.Ewe(marks: "2026-08-14", scan: 2) with { Gone = new Loss(Day, LossReason.Died) }), Day).Lambing.Ewes);

    /// <summary>Marked on 14 August, 147 days to the likely day of 8 January: two days early and six days late, and 9 in 10 within four days either way (sd 2.5).</summary>
    [Fact]
    public void How_it_went_holds_what_was_forecast_against_what_happened()
    {
        var plan = SeasonPlanner.Plan(
            Sample.Flock(
                Sample.Ewe("Bracken", marks: "2026-08-14", scan: 2) with { Lambed = Sample.Day("2027-01-06"), Lambing = new(null, 2, 0, LambingHelp.None) },
                Sample.Ewe("Fern", marks: "2026-08-14", scan: 2) with { Lambed = Sample.Day("2027-01-14"), Lambing = new(null, 1, 1, LambingHelp.Vet), History = [PastTrouble.Caesarean], ToTup = true },
                Sample.Ewe("Dock", marks: "2026-08-14", scan: 1) with { LostLambs = Day },
                Sample.Ewe("Mallow", scan: 0)),
            Sample.Day("2027-03-01"));
        var outcome = plan.Outcome;
        Assert.True(outcome.IsOver);
        Assert.Equal((3, 0, 5, 3, 1), (outcome.ToLamb, outcome.StillToLamb, outcome.LambsScanned, outcome.BornAlive, outcome.BornDead));
        Assert.Equal([-2, 6], outcome.Lambings.Select(l => l.DaysLate));
        Assert.Equal(1, outcome.InsideSpan);
        Assert.Equal(4, outcome.MeanDaysOut!.Value, 9);
        Assert.Equal(1, outcome.Helped(LambingHelp.Vet));
        Assert.Equal("Dock", Assert.Single(outcome.LostLambs).Ewe.Name);
        Assert.Equal("Fern", Assert.Single(outcome.NotAgain).Ewe.Name);
        Assert.Equal("Mallow", Assert.Single(outcome.Empty).Ewe.Name);
    }

    [Fact]
    public void A_season_is_over_when_some_have_lambed_and_none_is_left_to()
    {
        Ewe lambed = Sample.Ewe("Bracken", marks: "2026-08-14", scan: 2) with { Lambed = Sample.Day("2027-01-06") }, waiting = Sample.Ewe("Fern", marks: "2026-08-14", scan: 2);
        Assert.False(Outcome(waiting).IsOver);
        Assert.False(Outcome(lambed, waiting).IsOver);
        Assert.False(Outcome(waiting with { Gone = new Loss(Day, LossReason.Died) }).IsOver);
        Assert.True(Outcome(lambed, waiting with { LostLambs = Day }).IsOver);
        Assert.Null(Outcome(waiting).MeanDaysOut);
    }

    [Fact]
    public void Lambs_and_help_are_added_up_and_what_nobody_wrote_down_is_counted()
    {
        Ewe Lambed(string name, LambingResult result) => Sample.Ewe(name, marks: "2026-08-14", scan: 2) with { Lambed = Sample.Day("2027-01-06"), Lambing = result };
        var outcome = Outcome(
            Lambed("Bracken", new(null, 2, 1, LambingHelp.Hand)), Lambed("Fern", new(null, 1, 2, LambingHelp.Hand)), Lambed("Dock", LambingResult.Unknown),
            Sample.Ewe("Sedge", marks: "2026-08-14", scan: 2) with { Gone = new Loss(Day.PlusDays(1), LossReason.Sold) },
            Sample.Ewe("Tansy", marks: "2026-08-14", scan: 2) with { Gone = new Loss(Day, LossReason.Died) },
            Sample.Ewe("Yarrow", scan: 0) with { History = [PastTrouble.Mastitis] });
        Assert.Equal((3, 3, 1), (outcome.BornAlive, outcome.BornDead, outcome.Uncounted));
        Assert.Equal((2, 0), (outcome.Helped(LambingHelp.Hand), outcome.Helped(LambingHelp.Vet)));
        Assert.Equal(["Tansy", "Sedge"], outcome.Gone.Select(e => e.Ewe.Name));
        Assert.Equal("Yarrow", Assert.Single(outcome.NotAgain).Ewe.Name);
    }

    /// <summary>Nine in ten lamb from 4 to 12 January.</summary>
    [Theory]
    [InlineData(-1, false)]
    [InlineData(0, true)]
    [InlineData(8, true)]
    [InlineData(9, false)]
    public void The_first_and_the_last_day_of_her_span_are_in_it(int after, bool inside)
    {
        var due = Plan(e => e).Ewes[0].Due!;
        Assert.Equal(8, Period.DaysBetween(due.Earliest, due.Latest));
        Assert.Equal(inside, Assert.Single(Outcome(Sample.Ewe("Bracken", marks: "2026-08-14", scan: 2) with { Lambed = due.Earliest.PlusDays(after) }).Lambings).IsInsideSpan);
    }

    [Fact]
    public void Only_a_ewe_that_lost_her_lambs_or_went_is_lost()
    {
        Assert.False(Plan(e => e).Ewes[0].IsLost);
        Assert.True(Plan(e => e with { LostLambs = Day }).Ewes[0].IsLost);
        Assert.True(Plan(e => e with { Gone = new Loss(Day, LossReason.Sold) }).Ewes[0].IsLost);
    }

    private static SeasonOutcome Outcome(params Ewe[] ewes) => SeasonPlanner.Plan(Sample.Flock(ewes), Sample.Day("2027-03-01")).Outcome;

    private static string? Pens(SeasonPlan plan, Ewe lost) => string.Join(' ', plan.Ewes.Where(e => e.Ewe.Tag != lost.Tag).Select(e => e.Pen));

    private static SeasonPlan Plan(Func<Ewe, Ewe> change) =>
        SeasonPlanner.Plan(Sample.Flock(change(Sample.Ewe("Bracken", marks: "2026-08-14", scan: 2)), Sample.Ewe("Fern", marks: "2026-08-14", scan: 2)), Sample.Day("2026-12-04"));

    private static IEnumerable<string> Stays(SeasonPlan plan) => plan.Whereabouts.Of(plan.Ewes[0].Ewe).Select(s => $"{NodaTime.Text.LocalDatePattern.Iso.Format(s.From)} {s.State} {s.Place.Kind}");
}
