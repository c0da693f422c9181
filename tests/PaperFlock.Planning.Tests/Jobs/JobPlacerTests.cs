using System.Collections.Immutable;
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
            foreach (var kind in new[] { DayKind.Free, DayKind.Present })
            {
                var jobs = placed.Where(p => !p.Need.Fixed && p.Date is not null && p.Kind == kind).ToList();
                var cost = Cost(jobs, c);
                Assert.True(cost.CompareTo(BruteForce(jobs, c)) == 0, $"cost {cost}, brute force {BruteForce(jobs, c)}");
            }
        }, iter: 5_000);

    [Fact]
    public void Days_lie_in_their_windows_and_no_absence_or_busy_day_is_used_when_it_can_be_helped() =>
        GenCase.Sample(c =>
        {
            foreach (var (need, date, _) in Place(c))
            {
                if (need.Fixed)
                {
                    Assert.Equal(need.Best, date);
                    continue;
                }

                var window = Days(need).ToList();
                var there = window.Where(d => c.Keeper.AbsenceOn(d) is null).ToList();
                var free = there.Where(c.Keeper.IsFreeWeekday).ToList();
                Assert.Equal(there.Count == 0, date is null);
                if (date is { } day)
                {
                    Assert.Contains(day, free.Count > 0 ? free : there);
                }
            }
        });

    [Fact]
    public void A_job_not_handled_goes_on_the_nearest_day_it_may() =>
        GenCase.Sample(c =>
        {
            var unhandled = c with { Needs = [.. c.Needs.Select(n => n with { Handled = false })] };
            foreach (var (need, date, _) in Place(unhandled).Where(p => !p.Need.Fixed && p.Date is not null))
            {
                var there = Days(need).Where(d => c.Keeper.AbsenceOn(d) is null).ToList();
                var free = there.Where(c.Keeper.IsFreeWeekday).ToList();
                Assert.Equal((free.Count > 0 ? free : there).OrderBy(d => Off(d, need)).ThenBy(d => d).First(), date);
            }
        });

    [Fact]
    public void Nobody_free_is_said_and_the_day_still_found()
    {
        // Wed 10 to Fri 12 June, a keeper with weekends.
        var plan = Plan(Sample.Own("Drench", JobAnchor.TupIn, -61, -59));

        var job = plan.Jobs.Single(j => j.Id == JobIds.Own);
        Assert.Equal(new LocalDate(2026, 6, 11), job.Date);
        Assert.Contains("nobody is free", job.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_the_keeper_is_away_for_names_the_nearest_day_that_would_do()
    {
        var plan = Plan(
            Sample.Own("Drench", JobAnchor.TupIn, -61, -50),
            Sample.Away("2026-06-05", "2026-06-25"));

        var job = plan.Jobs.Single(j => j.Id == JobIds.Own);
        Assert.Null(job.Date);
        Assert.Equal(job.Best, job.ShownOn);
        // The window is 10 to 21 June; 31 May lies ten days before it, 27 June six after.
        Assert.Equal(new LocalDate(2026, 6, 27), job.Trouble!.NearestDay);
        Assert.Equal(
            "The keeper is away on every day it may be done, Wed 10 Jun to Sun 21 Jun; the nearest day that would do is Sat 27 Jun.",
            job.Trouble.Words);
        Assert.Contains(plan.Warnings, w => w.Code == "FLK108" && w.Span.Line == 20);
        Assert.DoesNotContain(plan.Gatherings, g => g.Jobs.Any(j => j.Id == JobIds.Own));
    }

    [Fact]
    public void Housing_that_cannot_be_placed_leaves_dagging_with_it()
    {
        var plan = Plan(null, Sample.Away("2026-12-20", "2027-01-02"));

        // The window is 25 to 30 December: Sun 3 Jan is four days after it, Sat 19 Dec six before.
        Assert.All(plan.Jobs.Where(j => j.Id is JobIds.House or JobIds.Dag), j => Assert.Equal(new LocalDate(2027, 1, 3), j.Trouble!.NearestDay));

        // They are housed all the same: straw and indoor feeding are reckoned from the day it should have been.
        Assert.Equal(new LocalDate(2026, 12, 28), plan.Groups[0].Housed);
    }

    [Fact]
    public void A_job_with_one_day_only_names_that_day() =>
        Assert.StartsWith(
            "The keeper is away on Wed 10 Jun, the one day it may be done;",
            Plan(Sample.Own("Drench", JobAnchor.TupIn, -61, -61), Sample.Away("2026-06-10", "2026-06-10")).Jobs.Single(j => j.Id == JobIds.Own).Trouble!.Words,
            StringComparison.Ordinal);

    [Fact]
    public void Away_for_years_there_is_no_day_to_name()
    {
        var plan = Plan(null, Sample.Away("2024-01-01", "2029-12-31"));

        Assert.All(plan.Jobs.Where(j => !j.Fixed), j => Assert.Null(j.Trouble!.NearestDay));
        Assert.All(plan.Jobs.Where(j => j.Fixed), j => Assert.NotNull(j.Date));
    }

    [Fact]
    public void A_day_inside_the_last_six_weeks_is_not_offered_for_a_job_kept_out_of_them()
    {
        // Six weeks before first due is 23 November; the window is cut to 16 to 22 November, the keeper away till the 27th.
        var plan = Plan(Sample.Own("Trim feet", JobAnchor.FirstDue, -49, -30), Sample.Away("2026-11-01", "2026-11-27"));

        Assert.Equal(new LocalDate(2026, 10, 31), plan.Jobs.Single(j => j.Id == JobIds.Own).Trouble!.NearestDay);
    }

    [Fact]
    public void A_job_others_ride_with_pulls_with_the_weight_of_them_all()
    {
        // Best on the first day and on the tenth: with one each the earlier would win.
        var placed = Place(new(
            [Need("trim", 0, 9, 0, isFixed: false), Need("house", 0, 9, 9, isFixed: false), Need("dag", 0, 9, 9, isFixed: false) with { RidesWith = "house" }],
            Sample.Free(Sample.EveryDay)));

        Assert.All(placed, p => Assert.Equal(Start.PlusDays(9), p.Date));
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
            [.. jobs.Select((j, i) => Need($"j{i}", j.Item1, j.Item2, Math.Min(j.Item2, j.Item3), isFixed: j.Item4 == 0))],
            new KeeperDays(
                [.. free.Distinct().Select(d => (IsoDayOfWeek)d)],
                [.. away.OrderBy(a => a.Item1).Select(a => new Absence(Start.PlusDays(a.Item1), Start.PlusDays(a.Item1 + a.Item2), null, null, default))]));

    private static JobNeed Need(string id, int start, int length, int best, bool isFixed) => new(
        id, id, null,
        Start.PlusDays(isFixed ? start + best : start), Start.PlusDays(start + best), Start.PlusDays(isFixed ? start + best : start + length),
        Handled: true, isFixed, null, "because", "common practice", null, null, null, default);

    private static ImmutableArray<Placement> Place(Case c) => new JobPlacer(new KeeperCalendar(c.Keeper)).Place(c.Needs);

    private static (int New, int Distance) Cost(List<Placement> jobs, Case c) => (
        jobs.Select(j => j.Date!.Value).Distinct().Count(d => !Standing(c).Contains(d)),
        jobs.Sum(j => Off(j.Date!.Value, j.Need)));

    /// <summary>Every allowed day of every job, in every combination.</summary>
    private static (int New, int Distance) BruteForce(List<Placement> jobs, Case c)
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

            var (need, _, kind) = jobs[at];
            foreach (var day in Days(need).Where(d => c.Keeper.AbsenceOn(d) is null && (kind == DayKind.Present || c.Keeper.IsFreeWeekday(d))))
            {
                Try(at + 1, Standing(c).Contains(day) ? used : used.Add(day), distance + Off(day, need));
            }
        }
    }

    private static HashSet<LocalDate> Standing(Case c) => c.Needs.Where(n => n.Fixed).Select(n => n.Best).ToHashSet();

    private static IEnumerable<LocalDate> Days(JobNeed need) =>
        Enumerable.Range(0, Period.DaysBetween(need.Earliest, need.Latest) + 1).Select(need.Earliest.PlusDays);

    private static int Off(LocalDate day, JobNeed need) => Math.Abs(Period.DaysBetween(day, need.Best));

    private sealed record Case(ImmutableArray<JobNeed> Needs, KeeperDays Keeper)
    {
        public override string ToString() =>
            $"{string.Join(", ", Needs.Select(n => $"{n.Id} {n.Earliest}-{n.Best}-{n.Latest}{(n.Fixed ? " fixed" : "")}"))}; free {string.Join(' ', Keeper.Free)}; away {string.Join(", ", Keeper.Away.Select(a => $"{a.From}-{a.To}"))}";
    }
}
