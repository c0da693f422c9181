using CsCheck;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Jobs;

namespace PaperFlock.Planning.Tests.Jobs;

/// <summary>Whole keeper's weeks with absences and fixed days, against trying everything.</summary>
public class JobPlacerTests
{
    private static readonly LocalDate Start = new(2026, 6, 1);

    [Fact]
    public void Every_placement_is_the_one_brute_force_finds() =>
        GenCase.Sample(c =>
        {
            var placed = Place(c);
            foreach (var free in new[] { true, false })
            {
                var jobs = placed.Where(j => !j.IsFixed && j.Date is not null && (j.WhyThatDay != DayReason.NobodyFree) == free).ToList();
                var cost = Cost(jobs, c);
                Assert.True(cost.CompareTo(BruteForce(jobs, free, c)) == 0, $"cost {cost}, brute force {BruteForce(jobs, free, c)}");
            }
        }, iter: 5_000);

    [Fact]
    public void Days_lie_in_their_windows_and_no_absence_or_busy_day_is_used_when_it_can_be_helped() =>
        GenCase.Sample(c =>
        {
            foreach (var job in Place(c))
            {
                if (job.IsFixed)
                {
                    Assert.Equal(job.Best, job.Date);
                    continue;
                }

                var window = Days(job).ToList();
                var there = window.Where(d => c.Keeper.AbsenceOn(d) is null).ToList();
                var free = there.Where(c.Keeper.IsFreeWeekday).ToList();
                Assert.Equal(there.Count == 0, job.Date is null);
                if (job.Date is { } day)
                {
                    Assert.Contains(day, free.Count > 0 ? free : there);
                }
            }
        });

    [Fact]
    public void A_job_not_handled_goes_on_the_nearest_day_it_may() =>
        GenCase.Sample(c =>
        {
            var unhandled = c with { Jobs = [.. c.Jobs.Select(j => j with { Rule = j.Rule with { Handled = false } })] };
            foreach (var job in Place(unhandled).Where(j => !j.IsFixed && j.Date is not null))
            {
                var there = Days(job).Where(d => c.Keeper.AbsenceOn(d) is null).ToList();
                var free = there.Where(c.Keeper.IsFreeWeekday).ToList();
                Assert.Equal((free.Count > 0 ? free : there).OrderBy(job.DaysOff).ThenBy(d => d).First(), job.Date);
            }
        });

    [Fact]
    public void Nobody_free_is_said_and_the_day_still_found()
    {
        // Wed 10 to Fri 12 June, a keeper with weekends.
        var plan = Plan(Sample.Own("Drench", JobAnchor.TupIn, -61, -59));

        var job = plan.Jobs.Single(j => j.Kind == JobKind.Own);
        Assert.Equal(new LocalDate(2026, 6, 11), job.Date);
        Assert.Equal(DayReason.NobodyFree, job.WhyThatDay);
    }

    [Fact]
    public void A_job_the_keeper_is_away_for_names_the_nearest_day_that_would_do()
    {
        var plan = Plan(
            Sample.Own("Drench", JobAnchor.TupIn, -61, -50),
            Sample.Away("2026-06-05", "2026-06-25"));

        var job = plan.Jobs.Single(j => j.Kind == JobKind.Own);
        Assert.Equal((null, DayReason.NoDay), (job.Date, job.WhyThatDay));
        Assert.Equal(job.Best, job.ShownOn);
        // The window is 10 to 21 June; 31 May lies ten days before it, 27 June six after.
        Assert.Equal(new LocalDate(2026, 6, 27), job.NearestDay);
        Assert.Contains(plan.Warnings, w => w is PlanWarning.NoDayForJob && w.Span.Line == 20);
        Assert.DoesNotContain(plan.Gatherings, g => g.Jobs.Any(j => j.Kind == JobKind.Own));
    }

    [Fact]
    public void Housing_that_cannot_be_placed_leaves_dagging_with_it()
    {
        var plan = Plan(null, Sample.Away("2026-12-20", "2027-01-02"));

        // The window is 25 to 30 December: Sun 3 Jan is four days after it, Sat 19 Dec six before.
        Assert.All(plan.Jobs.Where(j => j.Kind is JobKind.House or JobKind.Dag), j => Assert.Equal(new LocalDate(2027, 1, 3), j.NearestDay));

        // They are housed all the same: straw and indoor feeding are reckoned from the day it should have been.
        Assert.Equal(new LocalDate(2026, 12, 28), plan.Groups[0].Housed);
    }

    [Fact]
    public void Away_for_years_there_is_no_day_to_name()
    {
        var plan = Plan(null, Sample.Away("2024-01-01", "2029-12-31"));

        Assert.All(plan.Jobs.Where(j => !j.IsFixed), j => Assert.Null(j.NearestDay));
        Assert.All(plan.Jobs.Where(j => j.IsFixed), j => Assert.NotNull(j.Date));
    }

    [Fact]
    public void A_day_inside_the_last_six_weeks_is_not_offered_for_a_job_kept_out_of_them()
    {
        // Six weeks before first due is 23 November; the window is cut to 16 to 22 November, the keeper away till the 27th.
        var plan = Plan(Sample.Own("Trim feet", JobAnchor.FirstDue, -49, -30), Sample.Away("2026-11-01", "2026-11-27"));

        Assert.Equal(new LocalDate(2026, 10, 31), plan.Jobs.Single(j => j.Kind == JobKind.Own).NearestDay);
    }

    [Fact]
    public void A_gathering_on_a_day_that_is_not_free_is_not_joined_and_that_is_known()
    {
        // Wed 10 June is the keeper's own, and no free day; the window of teeth, toes and teats holds it.
        var plan = SeasonPlanner.Plan(
            Sample.Flock(Sample.Ewe()) with { OwnJobs = [Sample.OwnOn("Vet's visit", "2026-06-10")], KeeperDays = Sample.Free(Sample.Weekend) }, Start);
        var check = plan.Jobs.Single(j => j.Kind == JobKind.TeethToesTeats);

        Assert.Equal(new LocalDate(2026, 6, 14), check.Date);
        Assert.Equal([new LocalDate(2026, 6, 10)], plan.NotJoined(check).Select(g => g.Date));
        Assert.All(plan.Jobs.Where(j => j.IsFixed || !j.Handled), j => Assert.Empty(plan.NotJoined(j)));

        // On a Saturday it is joined.
        var free = SeasonPlanner.Plan(
            Sample.Flock(Sample.Ewe()) with { OwnJobs = [Sample.OwnOn("Vet's visit", "2026-06-13")], KeeperDays = Sample.Free(Sample.Weekend) }, Start);
        Assert.Equal(new LocalDate(2026, 6, 13), free.Jobs.Single(j => j.Kind == JobKind.TeethToesTeats).Date);
        Assert.Empty(free.NotJoined(free.Jobs.Single(j => j.Kind == JobKind.TeethToesTeats)));
    }

    [Fact]
    public void Several_jobs_pull_a_shared_day_harder_than_one()
    {
        // Best on the first day and on the tenth: with one each the earlier would win.
        var placed = Place(new([Made(0, 9, 0, isFixed: false), Made(0, 9, 9, isFixed: false), Made(0, 9, 9, isFixed: false)], Sample.Free(Sample.EveryDay)));

        Assert.All(placed, j => Assert.Equal(Start.PlusDays(9), j.Date));
    }

    private static SeasonPlan Plan(OwnJob? own, params Absence[] away) => SeasonPlanner.Plan(
        Sample.Flock(Sample.Ewe()) with
        {
            OwnJobs = own is null ? [] : [own],
            KeeperDays = Sample.Free(Sample.Weekend, away),
        },
        Start);

    private static readonly Gen<Case> GenCase =
        from free in Gen.Int[1, 7].Array[1, 3]
        from away in Gen.Select(Gen.Int[0, 20], Gen.Int[0, 9]).Array[0, 2]
        from jobs in Gen.Select(Gen.Int[0, 18], Gen.Int[0, 9], Gen.Int[0, 9], Gen.Int[0, 3]).Array[1, 5]
        select new Case(
            [.. jobs.Select(j => Made(j.Item1, j.Item2, Math.Min(j.Item2, j.Item3), isFixed: j.Item4 == 0))],
            new KeeperDays(
                [.. free.Distinct().Select(d => (IsoDayOfWeek)d)],
                [.. away.OrderBy(a => a.Item1).Select(a => new Absence(Start.PlusDays(a.Item1), Start.PlusDays(a.Item1 + a.Item2), null, null, default))]));

    /// <param name="start">Days after <see cref="Start"/>.</param>
    /// <param name="best">Days after the first of its window.</param>
    private static Job Made(int start, int length, int best, bool isFixed) => new(
        new JobRule(
            JobKind.Own, null, isFixed ? JobWindow.Day(best) : new(0, best, length), Handled: true, JobReason.FlockFileGivesTheWindow, FigureSource.FlockFile)
        {
            IsFixed = isFixed,
        },
        null,
        Start.PlusDays(start));

    private static ImmutableArray<Job> Place(Case c) => new JobPlacer(new KeeperCalendar(c.Keeper)).Place(c.Jobs);

    private static (int New, int Distance) Cost(List<Job> jobs, Case c) => (
        jobs.Select(j => j.Date!.Value).Distinct().Count(d => !Standing(c).Contains(d)),
        jobs.Sum(j => j.DaysOff(j.Date!.Value)));

    /// <summary>Every allowed day of every job, in every combination.</summary>
    private static (int New, int Distance) BruteForce(List<Job> jobs, bool free, Case c)
    {
        var least = (New: int.MaxValue, Distance: 0);
        Try(0, [], 0);
        return least;

        void Try(int at, ImmutableHashSet<LocalDate> used, int distance)
        {
            if (at == jobs.Count)
            {
                var cost = (used.Count, distance);
                least = cost.CompareTo(least) < 0 ? cost : least;
                return;
            }

            var job = jobs[at];
            foreach (var day in Days(job).Where(d => c.Keeper.AbsenceOn(d) is null && (!free || c.Keeper.IsFreeWeekday(d))))
            {
                Try(at + 1, Standing(c).Contains(day) ? used : used.Add(day), distance + job.DaysOff(day));
            }
        }
    }

    private static HashSet<LocalDate> Standing(Case c) => c.Jobs.Where(j => j.IsFixed).Select(j => j.Best).ToHashSet();

    private static IEnumerable<LocalDate> Days(Job job) => new DateInterval(job.Earliest, job.Latest);

    private sealed record Case(ImmutableArray<Job> Jobs, KeeperDays Keeper)
    {
        public override string ToString() =>
            $"{string.Join(", ", Jobs.Select(j => $"{j.Earliest}-{j.Best}-{j.Latest}{(j.IsFixed ? " fixed" : "")}"))}; free {string.Join(' ', Keeper.Free)}; away {string.Join(", ", Keeper.Away.Select(a => $"{a.From}-{a.To}"))}";
    }
}
