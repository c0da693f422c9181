using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>Who eats with whom on a day: those in lamb by their charts, those with lambs by theirs, and those without on forage.</summary>
public sealed class TroughsTests
{
    private static readonly LocalDate Lambed = Sample.Day("2027-01-05");

    [Fact]
    public void Ewes_not_in_lamb_eat_together_for_as_long_as_the_others_are_fed()
    {
        var plan = Plan();
        var start = plan.Feeding.Charts.Min(c => c.Start);
        Assert.Equal(["Campion", "Mallow", "Sedge", "Yarrow"], plan.Feeding.NotInLamb.Select(e => e.Ewe.Name));
        Assert.Empty(On(plan, start.PlusDays(-1), FeedCodes.NotInLamb));
        Assert.Equal(["Mallow Sedge"], On(plan, start, FeedCodes.NotInLamb));
        Assert.Equal(["Mallow Sedge Yarrow"], On(plan, Sample.Day("2026-12-03"), FeedCodes.NotInLamb));
        Assert.Equal(["Campion Mallow Sedge Yarrow"], On(plan, Lambed, FeedCodes.NotInLamb));
    }

    /// <summary>A single has a day in the lambing pen, twins two, more three; all are turned out after ten.</summary>
    [Fact]
    public void Ewes_with_lambs_eat_alone_in_the_lambing_pens_and_then_with_their_like()
    {
        var plan = Plan();
        Assert.Equal(["Bracken", "Clover", "Dock", "Fern"], On(plan, Lambed, FeedCodes.Lambed));
        Assert.Equal(["Bracken", "Clover", "Dock", "Fern"], On(plan, Lambed.PlusDays(1), FeedCodes.Lambed));
        Assert.Equal(["Bracken Fern", "Clover", "Dock"], On(plan, Lambed.PlusDays(3), FeedCodes.Lambed));
        Assert.Equal([1, 2, 3], plan.Feeding.On(Lambed.PlusDays(3)).Where(t => t.Chart == FeedCodes.Lambed).Select(t => t.LambsAtFoot!.Value).Order());
        Assert.NotEmpty(On(plan, Lambed.PlusDays(9), FeedCodes.Lambed));
        Assert.Empty(On(plan, Lambed.PlusDays(10), FeedCodes.Lambed));
    }

    [Fact]
    public void Troughs_stand_by_day_then_by_place_then_by_chart()
    {
        var troughs = Plan().Feeding.Troughs;
        Assert.Equal(troughs.OrderBy(t => t.From).ThenBy(t => t.Place.Kind).ThenBy(t => t.Place.Name, StringComparer.Ordinal).ThenBy(t => t.Chart, StringComparer.Ordinal), troughs);
    }

    /// <summary>On scan day: the singles and those without lambs to their fields, the others to theirs. She who loses her lambs, and she who stays at home, are not sorted.</summary>
    [Fact]
    public void Ewes_are_sorted_by_what_they_carry()
    {
        var flock = Flock(
            Marked("Bracken", 2), Marked("Fern", 2), Marked("Dock", 1), Marked("Clover", 1), Marked("Yarrow", 2) with { LostLambs = Sample.Day("2026-12-03") },
            Sample.Ewe("Mallow", scan: 0), Sample.Ewe("Sedge") with { ToTup = false });
        var sorts = SeasonPlanner.Plan(flock, Sample.Day("2027-01-20")).Feeding.Sorts;
        Assert.Equal(
            ["2026-10-24 Croft Singles: Dock Clover", "2026-10-24 Orchard Twins: Bracken Fern Yarrow", "2026-10-24 Top Field : Mallow"],
            sorts.Select(s => $"{s.Day:uuuu-MM-dd} {s.Field} {s.Kind}: {string.Join(' ', s.Ewes.Select(e => e.Name))}"));
    }

    /// <summary>By the week their ewes are due in, counted from 147 days after the first tup went in; two that are due before it have a number each.</summary>
    [Fact]
    public void Charts_are_numbered_by_due_week()
    {
        var plan = SeasonPlanner.Plan(
            Sample.Flock(
                [Sample.Group("Orchard"), Sample.Group("Paddock", Sample.TupIn.PlusDays(28))],
                Marked("Bracken", 2, "Orchard"), Marked("Fern", 2, "Orchard"), Marked("Tansy", 2, "Orchard"),
                Marked("Dock", 2, "Paddock", "2026-09-14"), Marked("Clover", 2, "Paddock", "2026-09-14"), Marked("Vetch", 2, "Paddock", "2026-09-14")) with
            {
                Feeds = Sample.Feeds() with { Method = FeedMethod.EnergyBalance },
            },
            Sample.Day("2026-12-01"));
        Assert.Equal(["FEED-TWINS-1", "FEED-TWINS-6"], plan.Feeding.Charts.Select(c => c.Code));

        ImmutableArray<EwePlan> early = [.. FeedingSample.Ewes(3, due: -21), .. FeedingSample.Ewes(3, from: 4, due: -7)];
        Assert.Equal(["FEED-TWINS-1", "FEED-TWINS-2"], FedFlock.Plan(FedFlock.Stepped(early), early).Charts.Select(c => c.Code));
    }

    [Fact]
    public void A_chart_knows_the_likely_days_of_its_first_and_last_ewe()
    {
        ImmutableArray<EwePlan> ewes = [.. FeedingSample.Ewes(2), .. FeedingSample.Ewes(2, from: 3, due: 3)];
        var chart = Assert.Single(FedFlock.Plan(FedFlock.Stepped(ewes), ewes).Charts);
        Assert.Equal((FeedingSample.FirstDue.PlusDays(5), FeedingSample.FirstDue.PlusDays(8)), (chart.FirstDue, chart.LastDue));
    }

    private static IEnumerable<string> On(SeasonPlan plan, LocalDate day, string chart) =>
        plan.Feeding.On(day).Where(t => t.Chart == chart).Select(t => string.Join(' ', t.Ewes.Select(e => e.Name))).Order(StringComparer.Ordinal);

    private static SeasonPlan Plan()
    {
        Ewe Done(string name, int alive) => Marked(name, Math.Max(1, alive)) with { Lambed = Lambed, Lambing = LambingResult.Unknown with { Alive = alive } };
        return SeasonPlanner.Plan(
            Flock(
                Done("Bracken", 2), Done("Fern", 2), Done("Dock", 1), Done("Clover", 4), Done("Campion", 0), Sample.Ewe("Mallow", scan: 0),
                Sample.Ewe("Sedge") with { ToTup = false }, Marked("Yarrow", 2) with { LostLambs = Sample.Day("2026-12-03") }, Marked("Tansy", 2), Marked("Teasel", 2)),
            Sample.Day("2027-01-20"));
    }

    private static Ewe Marked(string name, int scan, string group = "", string on = "2026-08-14") => Sample.Ewe(name, group, on, scan);

    private static Flock Flock(params Ewe[] ewes) => Sample.Flock(ewes) with { Fields = new ClassFields("Croft", "Orchard", "Moor", "Top Field", "Home Field") };
}
