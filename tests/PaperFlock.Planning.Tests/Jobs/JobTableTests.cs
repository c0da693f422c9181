using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests.Jobs;

/// <summary>What practice, housing, mating and buckets make of the calendar.</summary>
public class JobTableTests
{
    private static readonly Flock Demo = Sample.Flock(Sample.Ewe(), Sample.Ewe("Fern"));

    [Fact]
    public void Practice_moves_the_best_day_and_the_window_keeps_its_shape()
    {
        var plan = Plan(Demo with
        {
            Practice = Sample.Practice() with
            {
                TeethToesTeatsWeeksBeforeTupping = 10,
                ScanDaysAfterTupIn = (80, 90),
                FeedWeeksBeforeLambing = FeedingWeeks.Same(8),
                TwoFeedsWeeksBeforeLambing = 4,
                HouseDaysBeforeLambing = 9,
                BoosterWeeksBeforeLambing = (5, 4),
                ChecksPerDay = new ChecksPerDay(2, 5, 3),
            },
        });

        Assert.Equal((-77, -70, -56), Offsets(plan, JobIds.TeethToesTeats, Sample.TupIn));
        Assert.Equal((80, 80, 90), Offsets(plan, JobIds.Scan, Sample.TupIn));
        var due = Sample.Day("2027-01-04");
        Assert.Equal((-56, -56, -56), Offsets(plan, JobIds.FeedFrom, due));
        Assert.Equal((-56, -56, -56), Offsets(plan, JobIds.BucketsOut, due));
        Assert.Equal((-21, -21, -21), Offsets(plan, JobIds.HeavyRounds, due));
        Assert.Equal((-35, -32, -28), Offsets(plan, JobIds.Booster, due));
        Assert.Equal((-12, -9, -7), Offsets(plan, JobIds.House, due));
        Assert.Equal("5 rounds a day", plan.Jobs.Single(j => j.Id == JobIds.HeavyRounds).Title);
    }

    [Theory]
    [InlineData(7, -21, -14, -10)]
    [InlineData(3, -21, -14, -10)]
    [InlineData(9, -21, -14, -12)]
    [InlineData(28, -38, -31, -31)]
    public void The_shed_is_ready_by_the_first_day_they_may_be_housed(int houseDays, int earliest, int best, int latest)
    {
        var plan = Plan(Demo with { Practice = Sample.Practice() with { HouseDaysBeforeLambing = houseDays, Dag = Dagging.BeforeHousing } });

        Assert.Equal((earliest, best, latest), Offsets(plan, JobIds.ShedReady, Sample.Day("2027-01-04")));
        Assert.Equal((earliest, best, latest), Offsets(plan, JobIds.Dag, Sample.Day("2027-01-04")));
    }

    [Fact]
    public void Housing_on_the_day_the_first_is_due_is_said_so() =>
        Assert.StartsWith(
            "When the first is due, so that they are settled",
            Plan(Demo with { Practice = Sample.Practice() with { HouseDaysBeforeLambing = 0 } }).Jobs.Single(j => j.Id == JobIds.House).Why,
            StringComparison.Ordinal);

    [Fact]
    public void Shearing_follows_the_keepers_practice()
    {
        Assert.Equal((21, 28, 56), Offsets(With(Shearing.AfterLambing), JobIds.Shear, Sample.Day("2027-02-15")));
        Assert.True(With(Shearing.AfterLambing).Jobs.Single(j => j.Id == JobIds.Shear).Handled);
        Assert.DoesNotContain(With(Shearing.None).Jobs, j => j.Id == JobIds.Shear);

        var housed = With(Shearing.AtHousing);
        Assert.Equal([JobIds.House, JobIds.Dag, JobIds.Shear], housed.Gatherings[^1].Jobs.Select(j => j.Id));

        static SeasonPlan With(Shearing shear) => Plan(Demo with { Practice = Sample.Practice() with { Shear = shear } });
    }

    [Fact]
    public void Without_dagging_or_buckets_there_are_no_such_jobs()
    {
        var plan = Plan(Demo with
        {
            Practice = Sample.Practice() with { Dag = Dagging.None },
            Feeds = Sample.Feeds() with { Buckets = null },
        });

        Assert.DoesNotContain(plan.Jobs, j => j.Id is JobIds.Dag or JobIds.BucketsOut);
    }

    [Fact]
    public void Outdoors_nobody_is_housed_and_they_are_dagged_for_the_field()
    {
        var plan = Plan(Demo with
        {
            Housing = Sample.Housing(LambingPlace.Outdoors),
            Practice = Sample.Practice() with { Shear = Shearing.AtHousing },
        });

        Assert.DoesNotContain(plan.Jobs, j => j.Id is JobIds.House or JobIds.Shear);
        Assert.Null(plan.Groups[0].Housed);
        Assert.Equal("Lambing field and kit ready", plan.Jobs.Single(j => j.Id == JobIds.ShedReady).Title);
        var dag = plan.Jobs.Single(j => j.Id == JobIds.Dag);
        Assert.Equal(("Dag before lambing", Sample.Day("2026-12-26")), (dag.Title, dag.Date));
        Assert.Equal("FLK109", plan.Warnings.Single(w => w.Code != "FLK104").Code);
    }

    [Theory]
    [InlineData(LambingPlace.Indoors, Dagging.AtHousing, "Dag")]
    [InlineData(LambingPlace.Indoors, Dagging.BeforeHousing, "Dag before housing")]
    [InlineData(LambingPlace.Outdoors, Dagging.AtHousing, "Dag before lambing")]
    [InlineData(LambingPlace.Outdoors, Dagging.BeforeHousing, "Dag before lambing")]
    public void Dagging_is_a_gathering_wherever_they_lamb(LambingPlace place, Dagging dagging, string title)
    {
        var plan = Plan(Demo with { Housing = Sample.Housing(place), Practice = Sample.Practice() with { Dag = dagging } });

        var dag = plan.Jobs.Single(j => j.Id == JobIds.Dag);
        Assert.Equal((title, true), (dag.Title, dag.Handled));
        Assert.Contains(plan.Gatherings, g => g.Date == dag.Date);
    }

    [Theory]
    [InlineData(Mating.Artificial, "Artificial insemination")]
    [InlineData(Mating.Hand, "Hand mating")]
    public void A_group_mated_on_one_day_has_no_tup_to_take_out(Mating mating, string title)
    {
        var plan = Plan(Sample.Flock([Sample.OneDay("Paddock", Sample.Day("2026-08-14"), mating, "Damson")], Sample.Ewe(group: "Paddock")));

        Assert.Equal(title, plan.Jobs.Single(j => j.Id == JobIds.TupIn).Title);
        Assert.DoesNotContain(plan.Jobs, j => j.Id is JobIds.TupOut or JobIds.RaddleChange);
        Assert.Contains(plan.Jobs, j => j.Id == JobIds.TupCheck);
        Assert.Equal(Sample.Day("2027-01-08"), plan.Dates.FirstDue);
    }

    [Fact]
    public void A_straw_needs_no_tup_looked_over()
    {
        var plan = Plan(Sample.Flock([Sample.OneDay("P", Sample.Day("2026-08-14"))], Sample.Ewe(group: "P")));

        Assert.DoesNotContain(plan.Jobs, j => j.Id == JobIds.TupCheck);
    }

    [Fact]
    public void A_group_with_nothing_in_lamb_has_no_lambing_jobs()
    {
        var plan = Plan(Sample.Flock(Sample.Ewe(scan: 0)));

        Assert.Equal(JobIds.Scan, plan.Jobs[^1].Id);
        Assert.Null(plan.Dates.FirstDue);
        Assert.Equal(plan.Jobs[^1].Date, plan.To);
    }

    [Theory]
    // From 8 to 56 days with the tup at 17 days a colour; none is changed on the day he leaves.
    [InlineData(17, "yellow orange", "")]
    [InlineData(18, "yellow orange", "Raddle to orange")]
    [InlineData(34, "yellow orange", "Raddle to orange")]
    [InlineData(56, "yellow orange", "Raddle to orange|Raddle to yellow|Raddle to orange")]
    [InlineData(56, "yellow orange red blue", "Raddle to orange|Raddle to red|Raddle to blue")]
    [InlineData(35, "blue", "Fresh blue raddle|Fresh blue raddle")]
    [InlineData(56, "", "")]
    public void Colours_run_in_order_and_start_again(int stay, string colours, string titles)
    {
        var group = Sample.Group(tupIn: Sample.TupIn, tupOut: Sample.TupIn.PlusDays(stay)) with
        {
            Raddle = [.. colours.Split(' ', StringSplitOptions.RemoveEmptyEntries)],
        };

        var plan = Plan(Demo with { Groups = [group] });

        Assert.Equal(titles.Split('|', StringSplitOptions.RemoveEmptyEntries), plan.Jobs.Where(j => j.Id == JobIds.RaddleChange).Select(j => j.Title));
    }

    [Fact]
    public void Groups_share_gatherings_and_their_tups_are_told_apart()
    {
        var plan = Plan(Sample.Flock(
            [
                Sample.Group("Orchard", Sample.TupIn, tup: "Bramley"),
                Sample.Group("Paddock", Sample.TupIn.PlusDays(4), tup: "Damson"),
            ],
            Sample.Ewe(group: "Orchard"),
            Sample.Ewe("Fern", group: "Paddock")));

        Assert.Equal(["Tup Bramley in, raddle yellow", "Tup Damson in, raddle yellow"], plan.Jobs.Where(j => j.Id == JobIds.TupIn).Select(j => j.Title));
        Assert.Equal([Sample.Day("2026-06-14"), Sample.Day("2026-06-14")], plan.Jobs.Where(j => j.Id == JobIds.TeethToesTeats).Select(j => j.Date!.Value));
        Assert.Contains("one gathering with", plan.Jobs.First(j => j.Id == JobIds.Booster).Why, StringComparison.Ordinal);
        Assert.Equal(
            (Sample.Day("2027-01-04"), Sample.Day("2027-02-19")),
            (plan.Dates.FirstDue!.Value, plan.Dates.LastDue!.Value));
    }

    [Fact]
    public void The_only_tup_need_not_be_told_apart()
    {
        var plan = Plan(Sample.Flock([Sample.Group("Orchard", tup: "Bramley")], Sample.Ewe(group: "Orchard")));

        Assert.Equal(
            ["Check the tup", "Tup in, raddle yellow", "Tup out"],
            plan.Jobs.Where(j => j.Id is JobIds.TupCheck or JobIds.TupIn or JobIds.TupOut).Select(j => j.Title));
    }

    /// <summary>Tup in on 10 April at Dunedin, 147 days: counted on a calendar.</summary>
    [Theory]
    [InlineData("2026-04-10", "2026-09-04", "2026-07-20", "2026-08-28")]
    [InlineData("2028-04-10", "2028-09-04", "2028-07-24", "2028-08-28")]
    // Lambing on 29 February.
    [InlineData("2027-10-05", "2028-02-29", "2028-01-17", "2028-02-22")]
    public void Any_hemisphere_and_year_will_do(string tupIn, string firstDue, string feedFrom, string house)
    {
        var day = Sample.Day(tupIn);
        var plan = Plan(Demo with
        {
            Season = Sample.Season(day),
            Groups = [Sample.Group(tupIn: day)],
            Holding = Sample.Holding(-45.87m, 170.5m, "Pacific/Auckland"),
            KeeperDays = Sample.Free(Sample.EveryDay),
        });

        Assert.Equal(Sample.Day(firstDue), plan.Dates.FirstDue);
        Assert.Equal(Sample.Day(feedFrom), plan.Jobs.Single(j => j.Id == JobIds.FeedFrom).Date);
        Assert.Equal(Sample.Day(house), plan.Jobs.Single(j => j.Id == JobIds.House).Date);
    }

    private static (int Earliest, int Best, int Latest) Offsets(SeasonPlan plan, string id, LocalDate anchor)
    {
        var job = plan.Jobs.Single(j => j.Id == id);
        return (Period.DaysBetween(anchor, job.Earliest), Period.DaysBetween(anchor, job.Best), Period.DaysBetween(anchor, job.Latest));
    }

    private static SeasonPlan Plan(Flock flock) => SeasonPlanner.Plan(flock, Sample.Day("2026-05-01"));
}
