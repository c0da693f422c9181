namespace PaperFlock.Planning.Feeding;

/// <summary>The rows of one chart: week by week up to what its ewes should have, in steps they can stand, and never down.</summary>
internal static class ChartRows
{
    /// <param name="to">Last day of the plan; the last row goes on to it.</param>
    public static ImmutableArray<FeedRow> Of(Flock flock, FeedClass feeding, int mostHeads, LocalDate to)
    {
        var parts = feeding.Parts(flock);
        var weeks = Weeks(flock, feeding, parts);
        var largest = weeks.Max(w => w.Target.Ration);
        var rows = ImmutableArray.CreateBuilder<FeedRow>();
        var maker = new RowMaker(flock, feeding, parts, mostHeads);
        var first = weeks.FirstOrDefault(w => w.Target.Ration > 0).Week;
        var given = 0m;
        foreach (var (week, target) in weeks)
        {
            var days = NodaConstants.DaysPerWeek;
            given = Next(given, Brought(target.Ration, largest, week, first));
            var half = week.PlusDays(FeedCaps.StepDays);
            var more = Next(given, Brought(target.Ration, largest, half, first));
            if (more == given)
            {
                rows.Add(maker.Make(week, week.PlusDays(days - 1), given, target));
                continue;
            }

            rows.Add(maker.Make(week, half.PlusDays(-1), given, target));
            rows.Add(maker.Make(half, week.PlusDays(days - 1), more, target));
            given = more;
        }

        if (rows[^1].To < to)
        {
            rows[^1] = rows[^1] with { To = to };
        }

        return rows.ToImmutable();
    }

    private static List<(LocalDate Week, RationTarget Target)> Weeks(Flock flock, FeedClass feeding, ClassRation[] parts)
    {
        var most = new FeedCaps(flock.Feeds).MostInLamb(feeding.All.Min(e => e.Weight));
        var weeks = new List<(LocalDate, RationTarget)>();
        var reached = default(RationTarget);
        var last = feeding.All.Max(e => e.Due.Latest);
        for (var week = parts.Min(p => p.Start); weeks.Count == 0 || week <= last; week = week.PlusWeeks(1))
        {
            var target = Mean([.. parts.Where(p => p.Start <= week).Select(p => (p.Heads, p.In(week)))]);
            var ration = Math.Max(reached.Ration, Math.Min(target.Ration, most));
            reached = target with { Ration = ration, EnergyBalance = Math.Max(reached.EnergyBalance, target.EnergyBalance) };
            weeks.Add((week, reached));
        }

        return weeks;
    }

    /// <summary>By heads; a kind that has not started yet counts as the others.</summary>
    private static RationTarget Mean((int Heads, RationTarget Target)[] parts)
    {
        if (parts.Length == 1)
        {
            return parts[0].Target;
        }

        var heads = parts.Sum(p => p.Heads);
        decimal Of(Func<RationTarget, decimal> what) => parts.Sum(p => p.Heads * what(p.Target)) / heads;
        return new(
            FeedCaps.Down(Of(t => t.Ration)), Of(t => t.Plain), FeedCaps.Nearest(Of(t => t.EnergyBalance)), Of(t => t.PerLamb),
            new(Math.Round(Of(t => t.Need.Energy), 2), Math.Round(Of(t => t.Need.Protein), 1)));
    }

    /// <summary>Nobody has the whole of the largest ration before the rumen has had its days.</summary>
    private static decimal Brought(decimal ration, decimal largest, LocalDate day, LocalDate start) =>
        Period.DaysBetween(start, day) < FeedCaps.IntroductionDays && largest > FeedCaps.Grain
            ? Math.Min(ration, Math.Max(FeedCaps.Grain, FeedCaps.Down(largest - FeedCaps.Grain)))
            : ration;

    /// <summary>The next step towards a ration; a last step too small to weigh is shared with the one before.</summary>
    private static decimal Next(decimal given, decimal ration)
    {
        var missing = ration - given;
        return missing <= 0 ? given
            : missing <= FeedCaps.Step ? ration
            : missing < FeedCaps.Step + FeedCaps.Grain ? given + FeedCaps.Grain
            : given + FeedCaps.Step;
    }

    private sealed class RowMaker(Flock flock, FeedClass feeding, ClassRation[] parts, int mostHeads)
    {
        private readonly FeedCaps _caps = new(flock.Feeds);
        private readonly TroughAmounts _amounts = new(flock.Feeds, flock.Print.Units);
        private readonly decimal _lightest = feeding.All.Min(e => e.Weight);
        private readonly LocalDate _anchor = feeding.Anchor;
        private int _feeds = 1;

        public FeedRow Make(LocalDate from, LocalDate to, decimal ration, RationTarget target)
        {
            var isTwo = from >= _anchor.PlusWeeks(-flock.Practice.TwoFeedsWeeksBeforeLambing);
            var times = FeedTimes.For(ration, _caps.Largest, isTwo ? Math.Max(2, _feeds) : _feeds);
            _feeds = Math.Max(_feeds, times.Length);
            var (dryMatter, concentrate) = _caps.SharesInLamb(ration, _lightest);
            return new(
                from, to, ration, times,
                times.IsEmpty ? [] : _amounts.ByHeads(ration / times.Length, mostHeads),
                target.Need,
                Supply(ration, from),
                Math.Round(dryMatter, 4), Math.Round(concentrate, 4),
                Math.Round(target.PerLamb, 3), target.EnergyBalance,
                ration < target.Ration);
        }

        private Nutrients Supply(decimal ration, LocalDate from)
        {
            var heads = parts.Sum(p => p.Heads);
            var each = parts.Select(p => (p.Heads, Supply: p.Supply(ration, from))).ToList();
            return new(
                Math.Round(each.Sum(e => e.Heads * e.Supply.Energy) / heads, 2),
                Math.Round(each.Sum(e => e.Heads * e.Supply.Protein) / heads, 1));
        }
    }
}
