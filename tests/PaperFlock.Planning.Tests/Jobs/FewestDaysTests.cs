using CsCheck;
using PaperFlock.Planning.Jobs;

namespace PaperFlock.Planning.Tests.Jobs;

public class FewestDaysTests
{
    public static TheoryData<string, string, string, string, string> Cases => new()
    {
        // what it shows, jobs as earliest-best-latest, allowed days, days gathered anyway, days chosen
        { "one job, its best day", "0-5-9", "0 1 2 3 4 5 6 7 8 9", "", "5" },
        { "the nearest allowed day", "0-5-9", "1 6 9", "", "6" },
        { "the earlier of two as near", "0-5-9", "3 7", "", "3" },
        { "two windows that touch share their one common day", "0-0-4 4-9-9", "0 1 2 3 4 5 6 7 8 9", "", "4 4" },
        { "windows apart need a day each", "0-1-2 5-6-7", "0 1 2 3 4 5 6 7", "", "1 6" },
        { "a day gathered anyway is shared, however far from the best", "0-9-9", "0 9", "0", "0" },
        { "the nearest of two days gathered anyway", "0-9-9", "0 5 9", "0 9", "9" },
        { "a standing gathering beats a new one on the best day", "0-9-9", "0 8 9", "8", "8" },
        { "two jobs pull the shared day harder than one", "0-0-9 0-9-9 0-9-9", "0 1 2 3 4 5 6 7 8 9", "", "9 9 9" },
        { "equal pulls settle on the earlier day", "0-2-9 0-6-9", "0 1 2 3 4 5 6 7 8 9", "", "2 2" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Jobs_share_the_fewest_days(string shows, string jobs, string allowed, string gathered, string chosen)
    {
        var windows = jobs.Split(' ').Select(j => j.Split('-')).Select(j => new JobWindow(int.Parse(j[0]), int.Parse(j[1]), int.Parse(j[2])));

        var days = FewestDays.Choose([.. windows], Days(allowed), Days(gathered).ToHashSet());

        Assert.True(Days(chosen).SequenceEqual(days), $"{shows}: {string.Join(' ', days)}");
    }

    [Fact]
    public void The_choice_is_the_one_brute_force_finds() =>
        GenCase.Sample(c => Assert.Equal(BruteForce(c), FewestDays.Choose(c.Jobs, c.Allowed, c.Gathered)), iter: 10_000);

    [Fact]
    public void No_gathering_could_be_dropped() =>
        GenCase.Sample(c =>
        {
            var days = FewestDays.Choose(c.Jobs, c.Allowed, c.Gathered).Distinct().ToList();
            foreach (var dropped in days.Where(d => !c.Gathered.Contains(d)))
            {
                var left = days.Where(d => d != dropped).Concat(c.Allowed.Where(c.Gathered.Contains)).ToList();
                Assert.Contains(c.Jobs, j => !left.Any(d => j.Earliest <= d && d <= j.Latest));
            }
        });

    /// <summary>Forty groups with two hundred jobs of the keeper's own each, every window different, on any day of two years. Where any
    /// day will do, the textbook rule gives the fewest: meet the window that closes first on its last day, and go on with
    /// those it missed.</summary>
    [Fact]
    public void A_very_large_flock_takes_no_more_days_than_stopping_at_the_ends_of_windows()
    {
        ImmutableArray<JobWindow> jobs =
        [
            .. Enumerable.Range(0, 8000).Select(i => (Start: i * 37 % 500, Length: 20 + (i * 13 % 200)))
                .Select(w => new JobWindow(w.Start, w.Start + (w.Length / 2), w.Start + w.Length)),
        ];
        var gathered = new HashSet<int> { 100, 400 };

        var days = FewestDays.Choose(jobs, [.. Enumerable.Range(0, 730)], gathered);

        Assert.All(jobs.Zip(days), j => Assert.InRange(j.Second, j.First.Earliest, j.First.Latest));
        var met = gathered.ToHashSet();
        foreach (var job in jobs.OrderBy(j => j.Latest).Where(j => !met.Any(d => j.Earliest <= d && d <= j.Latest)))
        {
            met.Add(job.Latest);
        }

        Assert.Equal(met.Count, days.Concat(gathered).Distinct().Count());
    }

    private static readonly Gen<Case> GenCase =
        from days in Gen.Int[0, 14].Array[1, 9]
        from standing in Gen.Int[0, 14].Array[0, 3]
        from jobs in Gen.Select(Gen.Int[0, 14], Gen.Int[0, 8], Gen.Int[0, 8], Gen.Int[1, 3]).Array[1, 6]
        select new Case(
            [.. jobs.SelectMany(j => Enumerable.Repeat(new JobWindow(j.Item1, j.Item1 + Math.Min(j.Item3, j.Item2), j.Item1 + j.Item2), j.Item4))
                .Where(j => days.Any(d => j.Earliest <= d && d <= j.Latest))],
            [.. days.Distinct().Order()],
            standing.ToHashSet());

    /// <summary>Tries every set of allowed days: fewest new ones, then nearest to the best days, then the earliest set.</summary>
    private static ImmutableArray<int> BruteForce(Case c)
    {
        ImmutableArray<int>? found = null;
        List<int> foundSet = [];
        (int New, long Distance) least = (int.MaxValue, 0);
        var free = c.Allowed.Where(d => !c.Gathered.Contains(d)).ToList();
        foreach (var set in Subsets(free).Select(s => s.Concat(c.Allowed.Where(c.Gathered.Contains)).Order().ToList()))
        {
            if (c.Jobs.Any(j => !set.Any(d => j.Earliest <= d && d <= j.Latest)))
            {
                continue;
            }

            ImmutableArray<int> days =
                [.. c.Jobs.Select(j => set.Where(d => j.Earliest <= d && d <= j.Latest).OrderBy(d => Math.Abs(d - j.Best)).ThenBy(d => d).First())];
            var cost = (set.Count(d => !c.Gathered.Contains(d)), c.Jobs.Zip(days, (j, d) => (long)Math.Abs(d - j.Best)).Sum());
            if (found is null || cost.CompareTo(least) < 0 || (cost == least && Earlier(set, foundSet)))
            {
                (found, least, foundSet) = (days, cost, set);
            }
        }

        return found!.Value;
    }

    private static bool Earlier(List<int> set, List<int> than) =>
        set.Zip(than, (a, b) => a.CompareTo(b)).FirstOrDefault(order => order != 0) < 0;

    private static IEnumerable<List<int>> Subsets(List<int> of) =>
        Enumerable.Range(0, 1 << of.Count).Select(bits => of.Where((_, i) => (bits & (1 << i)) != 0).ToList());

    private static ImmutableArray<int> Days(string list) => [.. list.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(int.Parse)];

    private sealed record Case(ImmutableArray<JobWindow> Jobs, ImmutableArray<int> Allowed, HashSet<int> Gathered)
    {
        public override string ToString() => $"jobs {string.Join(", ", Jobs)}; allowed {string.Join(' ', Allowed)}; gathered {string.Join(' ', Gathered)}";
    }
}
