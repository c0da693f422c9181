using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Jobs;

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

    /// <summary>The first of the autumn month between nine weeks before the first tup goes in and the day the last group is due from: 63 days before 3 December is 1 October, 147 after 7 May too.</summary>
    [Theory]
    [InlineData(54, "2026-12-03", "2026-12-20", "2026-10-01")]
    [InlineData(54, "2026-12-04", "2026-12-20", "")]
    [InlineData(54, "2026-05-06", "2026-05-07", "2026-10-01")]
    [InlineData(54, "2026-05-05", "2026-05-06", "")]
    [InlineData(-45, "2027-03-01", "2027-03-01", "2027-04-01")]
    public void The_vet_is_asked_about_fluke_in_the_autumn_of_the_season(int latitude, string oneIn, string otherIn, string asked)
    {
        var flock = Sample.Flock(
            [Sample.Group("Orchard", Sample.Day(oneIn)), Sample.Group("Paddock", Sample.Day(otherIn))],
            Sample.Ewe("Bracken", "Orchard"), Sample.Ewe("Fern", "Paddock")) with
        { Holding = Sample.Holding(latitude) };
        Assert.Equal(
            asked.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Sample.Day),
            Plan(flock).Jobs.Where(j => j.Rule.Reason == JobReason.AutumnFluke).Select(j => j.Date!.Value));
    }

    /// <summary>Away for two years: what happens of itself, or by the flock file, is on its day all the same.</summary>
    [Fact]
    public void What_stands_on_its_day_stands_though_the_keeper_is_away()
    {
        var plan = Plan(Demo with { KeeperDays = Sample.Free(Sample.EveryDay, Sample.Away("2026-01-01", "2027-12-31")) });
        var standing = plan.Jobs.Where(j => j.WhyThatDay == DayReason.StandsThoughAway).ToList();
        Assert.Equal(
            [
                JobKind.TupIn, JobKind.RaddleChange, JobKind.RaddleChange, JobKind.TupOut, JobKind.FlukeAndWorms, JobKind.BucketsOut, JobKind.HeavyRounds,
                JobKind.FirstDue, JobKind.RingAndTag, JobKind.Turnout, JobKind.LastDue,
            ],
            standing.Select(j => j.Kind));
        Assert.All(standing, j => Assert.Equal(j.Best, j.Date));
        Assert.All(Plan(Demo).Jobs.Where(j => j.Kind is JobKind.TupIn or JobKind.FirstDue), j => Assert.Equal(DayReason.Best, j.WhyThatDay));
        Assert.All(plan.Jobs.Where(j => j.Kind is JobKind.FeedFrom or JobKind.TwoFeeds), j => Assert.True(j.IsFixed));
    }

    [Fact]
    public void Ewes_are_sorted_into_the_fields_of_their_kinds_on_scan_day()
    {
        var plan = Plan(Sample.Flock(Sample.Ewe(marks: "2026-08-14", scan: 2), Sample.Ewe("Fern", marks: "2026-08-14", scan: 2)) with
        {
            Fields = new ClassFields("Croft", "Orchard", null, null, null),
        });
        var sort = Assert.Single(plan.Jobs, j => j.Kind == JobKind.Sort);
        Assert.Equal((plan.Jobs.Single(j => j.Kind == JobKind.Scan).Date, false, true), (sort.Date, sort.Handled, sort.IsFixed));
    }

    [Fact]
    public void Semen_needs_no_tup_looked_over_but_one_that_is_named_does()
    {
        SeasonPlan Served(string? tup) => Plan(Sample.Flock([Sample.OneDay("", Sample.TupIn, tup: tup)], Sample.Ewe()));
        Assert.DoesNotContain(Served(null).Jobs, j => j.Kind is JobKind.TupCheck or JobKind.BoughtTup);
        Assert.Contains(Served("Bramley").Jobs, j => j.Kind == JobKind.TupCheck);
        Assert.Contains(Served("Bramley").Jobs, j => j.Kind == JobKind.BoughtTup);
    }

    [Fact]
    public void A_tup_that_follows_another_goes_in_on_his_day()
    {
        var group = Sample.Group(tup: "Bramley, then Damson") with
        {
            Tups = [new("Bramley", Sample.TupIn, Sample.Day("2026-08-27")), new("Damson", Sample.Day("2026-08-27"), Sample.TupOut)],
        };
        Assert.Equal(Sample.Day("2026-08-27"), Assert.Single(Plan(Sample.Flock([group], Sample.Ewe())).Jobs, j => j.Kind == JobKind.TupChange).Date);
    }

    /// <summary>13 to 19 December 2026 is a week from Sunday to Saturday, and the keeper has weekends.</summary>
    [Theory]
    [InlineData("2026-12-13", "2026-12-19", "2026-12-19")]
    [InlineData("2026-12-13", "2026-12-18", "2026-12-13")]
    [InlineData("2026-12-14", "2026-12-18", "2026-12-18")]
    public void The_last_free_day_of_a_span_is_taken_and_without_one_its_last(string from, string to, string taken) =>
        Assert.Equal(Sample.Day(taken), new KeeperCalendar(Sample.Free(Sample.Weekend)).LastFree(Sample.Day(from), Sample.Day(to)));

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

    /// <summary>One ewe left of a flock keeps every job on its day; with the last of them all that was due goes.</summary>
    [Fact]
    public void A_flock_of_which_nobody_is_left_has_no_jobs_of_feeding_or_lambing()
    {
        var gone = new Loss(Sample.Day("2026-11-01"), LossReason.Sold);
        var one = Plan(Demo with { Ewes = [.. Demo.Ewes.Select((e, i) => i == 0 ? e : e with { Gone = gone })] });
        Assert.Contains(one.Jobs, j => j.Kind == JobKind.House);

        var none = Plan(Demo with { Ewes = [.. Demo.Ewes.Select(e => e with { Gone = gone })] });
        Assert.DoesNotContain(none.Jobs, j => j.Kind is JobKind.House or JobKind.Booster or JobKind.FeedFrom or JobKind.TwoFeeds or JobKind.Dag or JobKind.BucketsOut);
        Assert.All(none.Groups, g => Assert.Null(g.FirstDue));
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
