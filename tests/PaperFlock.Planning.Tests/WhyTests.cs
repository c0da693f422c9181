using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests;

/// <summary>What the plan says of its own reasons. Days are counted on a calendar.</summary>
public sealed class WhyTests
{
    private static readonly SeasonPlan Plan = SeasonPlanner.Plan(
        Sample.Flock(
            [Sample.Group("Orchard", tup: "Bramley"), Sample.Group("Paddock", tup: "Damson")],
            Sample.Ewe("Bracken", "Orchard", "2026-08-14", scan: 2),
            Sample.Ewe("Sorrel", "Orchard", "2026-08-12", scan: 1),
            Sample.Ewe("Heather", "Paddock", "2026-08-18"),
            Sample.Ewe("Lovage", "Paddock")),
        Sample.Day("2026-11-01"));

    [Fact]
    public void Every_job_but_those_put_on_a_day_says_what_it_is_counted_from()
    {
        Assert.All(Plan.Jobs, j => Assert.NotNull(j.Basis));
        Assert.All(Plan.Jobs, j => Assert.NotEqual("", j.Basis!.Evidence));
        var scan = Plan.Jobs.First(j => j.Id == JobIds.Scan);
        Assert.Equal("the day the tup goes in", scan.Basis!.Words);
        Assert.Equal(Sample.Day("2026-08-10"), scan.Basis.Day);
    }

    [Fact]
    public void A_job_of_ewes_mated_on_one_day_is_counted_from_that_day()
    {
        var plan = SeasonPlanner.Plan(Sample.Flock([Sample.OneDay("Paddock", Sample.Day("2026-08-14"))], Sample.Ewe("Heather", "Paddock")), Sample.Day("2026-11-01"));
        Assert.Equal("the day of mating", plan.Jobs.Single(j => j.Id == JobIds.Scan).Basis!.Words);
    }

    [Fact]
    public void First_due_names_the_ewe_who_sets_it_where_every_day_is_known()
    {
        var orchard = Plan.Groups[0];
        Assert.Equal(Sample.Day("2027-01-06"), orchard.FirstDue);
        Assert.Contains("Sorrel, marked Wed 12 Aug, and 147 days on", orchard.FirstDueWhy, StringComparison.Ordinal);
        Assert.Contains("Bracken, marked Fri 14 Aug, and 147 days on", orchard.LastDueWhy, StringComparison.Ordinal);
    }

    [Fact]
    public void First_due_names_the_tups_stay_and_how_many_ewes_are_not_known_where_some_are_not()
    {
        var paddock = Plan.Groups[1];
        Assert.Equal(Sample.Day("2027-01-04"), paddock.FirstDue);
        Assert.Contains("the tup goes in on Mon 10 Aug, and 147 days on", paddock.FirstDueWhy, StringComparison.Ordinal);
        Assert.Contains("of 2 ewes 1 has no mark", paddock.FirstDueWhy, StringComparison.Ordinal);
        Assert.Contains("the tup comes out on Mon 21 Sep", paddock.LastDueWhy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Bracken", "147 days from Fri 14 Aug is Fri 8 Jan.")]
    [InlineData("Sorrel", "147 days from Wed 12 Aug is Wed 6 Jan. With 1 lamb she is planned at 148 days, 1 day more.")]
    [InlineData("Lovage", "Any day from Mon 10 Aug to Mon 21 Sep may be the one; 147 days on from those is Mon 4 Jan to Mon 15 Feb.")]
    public void A_due_window_says_how_it_was_counted(string ewe, string words) =>
        Assert.StartsWith(words, Plan.Ewes.Single(e => e.Ewe.Name == ewe).Due!.Reckoning, StringComparison.Ordinal);

    [Theory]
    [InlineData("2026-08-14", 3, 2.5, "147 days from Fri 14 Aug is Fri 8 Jan. With 3 lambs she is planned at 146 days, 1 day less. Two ewes in three lamb within 2.5 days of that, before or after.")]
    [InlineData("2026-08-14", 2, 2.5, "147 days from Fri 14 Aug is Fri 8 Jan. Two ewes in three lamb within 2.5 days of that, before or after.")]
    [InlineData("2026-08-14", 2, 0, "147 days from Fri 14 Aug is Fri 8 Jan.")]
    // Nobody knows which day, so how far off it she may lamb is not worth saying.
    [InlineData("", 2, 2.5, "Any day from Mon 10 Aug to Mon 21 Sep may be the one; 147 days on from those is Mon 4 Jan to Mon 15 Feb.")]
    public void A_due_window_says_how_far_off_it_she_may_lamb(string marks, int scan, double spread, string words)
    {
        var plan = SeasonPlanner.Plan(
            Sample.Flock(Sample.Ewe(marks: marks, scan: scan)) with { Practice = Sample.Practice() with { GestationSpreadDays = (decimal)spread } },
            Sample.Day("2026-11-01"));

        Assert.Equal(words, plan.Ewes[0].Due!.Reckoning);
    }

    [Fact]
    public void A_group_of_which_some_days_are_not_known_counts_those_ewes()
    {
        var plan = SeasonPlanner.Plan(
            Sample.Flock(Sample.Ewe(marks: "2026-08-14"), Sample.Ewe("Fern"), Sample.Ewe("Sedge")), Sample.Day("2026-11-01"));

        Assert.EndsWith(
            "of 3 ewes 2 have no mark and no day of mating, so any day with the tup may be the one", plan.Groups[0].LastDueWhy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_that_is_not_on_its_best_day_says_why_and_one_that_is_does_not()
    {
        var away = SeasonPlanner.Plan(
            Sample.Flock([Sample.Group("Orchard")], Sample.Ewe("Bracken", "Orchard", "2026-08-14")) with
            {
                KeeperDays = new KeeperDays([.. Enum.GetValues<NodaTime.IsoDayOfWeek>().Skip(1)], [new Absence(Sample.Day("2026-10-24"), Sample.Day("2026-10-25"), null, null, default)]),
            },
            Sample.Day("2026-08-01"));
        var scan = away.Jobs.Single(j => j.Id == JobIds.Scan);
        Assert.Equal(Sample.Day("2026-10-26"), scan.Date);
        Assert.Equal("the nearest free day, as the keeper is away on Sat 24 Oct", scan.Moved);
        Assert.Null(Plan.Jobs.First(j => j.Id == JobIds.Scan).Moved);
    }

    [Fact]
    public void A_round_says_why_there_are_so_many()
    {
        var heavy = Plan.Rounds.Single(r => r.Date == Sample.Day("2027-01-04"));
        Assert.Equal(4, heavy.Times.Length);
        Assert.Contains("from 6 weeks before the first is due", heavy.Why, StringComparison.Ordinal);
        Assert.Equal("outside the heavy weeks", Plan.Rounds.First(r => r.Times.Length == 2).Why);
    }
}
