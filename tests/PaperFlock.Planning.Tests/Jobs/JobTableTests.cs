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

        Assert.Equal((-77, -70, -56), Offsets(plan, JobKind.TeethToesTeats, Sample.TupIn));
        Assert.Equal((80, 80, 90), Offsets(plan, JobKind.Scan, Sample.TupIn));
        var due = Sample.Day("2027-01-04");
        Assert.Equal((-56, -56, -56), Offsets(plan, JobKind.FeedFrom, due));
        Assert.Equal((-56, -56, -56), Offsets(plan, JobKind.BucketsOut, due));
        Assert.Equal((-21, -21, -21), Offsets(plan, JobKind.HeavyRounds, due));
        Assert.Equal((-35, -31, -28), Offsets(plan, JobKind.Booster, plan.Ewes[0].Due!.Likely));
        Assert.Equal((-12, -9, -7), Offsets(plan, JobKind.House, due));
    }

    [Theory]
    [InlineData(7, -21, -14, -10)]
    [InlineData(3, -21, -14, -10)]
    [InlineData(9, -21, -14, -12)]
    [InlineData(28, -38, -31, -31)]
    public void The_shed_is_ready_by_the_first_day_they_may_be_housed(int houseDays, int earliest, int best, int latest)
    {
        var plan = Plan(Demo with { Practice = Sample.Practice() with { HouseDaysBeforeLambing = houseDays, Dag = Dagging.BeforeHousing } });

        Assert.Equal((earliest, best, latest), Offsets(plan, JobKind.ShedReady, Sample.Day("2027-01-04")));
        Assert.Equal((earliest, best, latest), Offsets(plan, JobKind.Dag, Sample.Day("2027-01-04")));
    }

    [Fact]
    public void Shearing_follows_the_keepers_practice()
    {
        Assert.Equal((21, 28, 56), Offsets(With(Shearing.AfterLambing), JobKind.Shear, Sample.Day("2027-02-15")));
        Assert.True(With(Shearing.AfterLambing).Jobs.Single(j => j.Kind == JobKind.Shear).Handled);
        Assert.DoesNotContain(With(Shearing.None).Jobs, j => j.Kind == JobKind.Shear);

        var housed = With(Shearing.AtHousing);
        Assert.Equal([JobKind.House, JobKind.Dag, JobKind.Shear], housed.Gatherings[^1].Jobs.Select(j => j.Kind));

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

        Assert.DoesNotContain(plan.Jobs, j => j.Kind is JobKind.Dag or JobKind.BucketsOut);
    }

    [Fact]
    public void Outdoors_nobody_is_housed_and_they_are_dagged_for_the_field()
    {
        var plan = Plan(Demo with
        {
            Housing = Sample.Housing(LambingPlace.Outdoors),
            Practice = Sample.Practice() with { Shear = Shearing.AtHousing },
        });

        Assert.DoesNotContain(plan.Jobs, j => j.Kind is JobKind.House or JobKind.Shear);
        Assert.Null(plan.Groups[0].Housed);
        var dag = plan.Jobs.Single(j => j.Kind == JobKind.Dag);
        Assert.Equal((JobReason.CleanTeat, Sample.Day("2026-12-26")), (dag.Rule.Reason, dag.Date));
        Assert.IsType<PlanWarning.ShornOutdoors>(plan.Warnings.Single(w => w is not PlanWarning.TooLateToCount));
    }

    [Theory]
    [InlineData(LambingPlace.Indoors, Dagging.AtHousing, JobReason.GatheredOnceWithHousing)]
    [InlineData(LambingPlace.Indoors, Dagging.BeforeHousing, JobReason.CleanWhenHoused)]
    [InlineData(LambingPlace.Outdoors, Dagging.AtHousing, JobReason.CleanTeat)]
    [InlineData(LambingPlace.Outdoors, Dagging.BeforeHousing, JobReason.CleanTeat)]
    public void Dagging_is_a_gathering_wherever_they_lamb(LambingPlace place, Dagging dagging, JobReason reason)
    {
        var plan = Plan(Demo with { Housing = Sample.Housing(place), Practice = Sample.Practice() with { Dag = dagging } });

        var dag = plan.Jobs.Single(j => j.Kind == JobKind.Dag);
        Assert.Equal((reason, true), (dag.Rule.Reason, dag.Handled));
        Assert.Contains(plan.Gatherings, g => g.Date == dag.Date);
    }

    [Theory]
    [InlineData(Mating.Artificial)]
    [InlineData(Mating.Hand)]
    public void A_group_mated_on_one_day_has_no_tup_to_take_out(Mating mating)
    {
        var plan = Plan(Sample.Flock([Sample.OneDay("Paddock", Sample.Day("2026-08-14"), mating, "Damson")], Sample.Ewe(group: "Paddock")));

        Assert.Contains(plan.Jobs, j => j.Kind == JobKind.TupIn);
        Assert.DoesNotContain(plan.Jobs, j => j.Kind is JobKind.TupOut or JobKind.RaddleChange);
        Assert.Contains(plan.Jobs, j => j.Kind == JobKind.TupCheck);
        Assert.Equal(Sample.Day("2027-01-08"), plan.Dates.FirstDue);
    }

    [Fact]
    public void A_straw_needs_no_tup_looked_over()
    {
        var plan = Plan(Sample.Flock([Sample.OneDay("P", Sample.Day("2026-08-14"))], Sample.Ewe(group: "P")));

        Assert.DoesNotContain(plan.Jobs, j => j.Kind == JobKind.TupCheck);
    }

    [Fact]
    public void A_group_with_nothing_in_lamb_has_no_lambing_jobs()
    {
        var plan = Plan(Sample.Flock(Sample.Ewe(scan: 0)));

        Assert.Equal(JobKind.Scan, plan.Jobs[^1].Kind);
        Assert.Null(plan.Dates.FirstDue);
        Assert.Equal(plan.Jobs[^1].Date, plan.To);
    }

    [Theory]
    // From 8 to 56 days with the tup at 17 days a colour; none is changed on the day he leaves.
    [InlineData(17, "yellow orange", "")]
    [InlineData(18, "yellow orange", "orange")]
    [InlineData(34, "yellow orange", "orange")]
    [InlineData(56, "yellow orange", "orange|yellow|orange")]
    [InlineData(56, "yellow orange red blue", "orange|red|blue")]
    [InlineData(35, "blue", "blue|blue")]
    [InlineData(56, "", "")]
    public void Colours_run_in_order_and_start_again(int stay, string colours, string changes)
    {
        var group = Sample.Group(tupIn: Sample.TupIn, tupOut: Sample.TupIn.PlusDays(stay)) with
        {
            Raddle = [.. colours.Split(' ', StringSplitOptions.RemoveEmptyEntries)],
        };

        var plan = Plan(Demo with { Groups = [group] });

        Assert.Equal(changes.Split('|', StringSplitOptions.RemoveEmptyEntries), plan.Jobs.Where(j => j.Kind == JobKind.RaddleChange).Select(j => j.Rule.Colour!));
    }

    [Fact]
    public void Groups_share_gatherings()
    {
        var plan = Plan(Sample.Flock(
            [
                Sample.Group("Orchard", Sample.TupIn, tup: "Bramley"),
                Sample.Group("Paddock", Sample.TupIn.PlusDays(4), tup: "Damson"),
            ],
            Sample.Ewe(group: "Orchard"),
            Sample.Ewe("Fern", group: "Paddock")));

        Assert.Equal([Sample.Day("2026-06-14"), Sample.Day("2026-06-14")], plan.Jobs.Where(j => j.Kind == JobKind.TeethToesTeats).Select(j => j.Date!.Value));
        Assert.Equal(["Orchard", "Paddock"], plan.GatheringOf(plan.Jobs.First(j => j.Kind == JobKind.Booster))!.Jobs.Where(j => j.Kind == JobKind.Booster).Select(j => j.Group!.Name));
        Assert.Equal(
            (Sample.Day("2027-01-04"), Sample.Day("2027-02-19")),
            (plan.Dates.FirstDue!.Value, plan.Dates.LastDue!.Value));
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
        Assert.Equal(Sample.Day(feedFrom), plan.Jobs.Single(j => j.Kind == JobKind.FeedFrom).Date);
        Assert.Equal(Sample.Day(house), plan.Jobs.Single(j => j.Kind == JobKind.House).Date);
    }

    private static (int Earliest, int Best, int Latest) Offsets(SeasonPlan plan, JobKind kind, LocalDate anchor)
    {
        var job = plan.Jobs.Single(j => j.Kind == kind);
        return (Period.DaysBetween(anchor, job.Earliest), Period.DaysBetween(anchor, job.Best), Period.DaysBetween(anchor, job.Latest));
    }

    private static SeasonPlan Plan(Flock flock) => SeasonPlanner.Plan(flock, Sample.Day("2026-05-01"));
}
