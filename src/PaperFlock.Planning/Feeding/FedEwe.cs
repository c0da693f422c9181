using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Feeding;

/// <summary>A ewe that was to lamb this season, as feeding sees her; one that has lambed stays in, so that no chart moves.</summary>
/// <param name="Kind">Whose ration she gets.</param>
/// <param name="Lambs">What she is fed for: a thin ewe for one more than she carries, where others carry so many; the unscanned for the flock's average.</param>
/// <param name="Anchor">The day her weeks are counted back from: the first of the week she is due in, so that she never has too little, and no chart moves when another
/// ewe of that week is no longer fed by it.</param>
/// <param name="Weight">kg.</param>
internal sealed record FedEwe(EwePlan Plan, DueWindow Due, FeedKind Kind, decimal Lambs, LocalDate Anchor, decimal Weight, LocalDate? Housed)
{
    /// <summary>Where nobody is scanned: between one and two, common practice, no source.</summary>
    private const decimal UsualLambs = 1.5m;

    public string Tag => Plan.Ewe.Tag;

    public bool IsThin => Plan.Ewe.Condition is { } score && (double)score < ConditionCorrection.Thin;

    /// <summary>Lambs carried as the file says, 1 or more; 2 where nobody has scanned her.</summary>
    public int Carries => Math.Max(1, Plan.Ewe.Scan ?? 2);

    /// <param name="ewes">In the order of the flock file.</param>
    public static ImmutableArray<FedEwe> Of(Flock flock, IReadOnlyList<EwePlan> ewes, Func<EwePlan, LocalDate?> housed)
    {
        var inLamb = ewes.Where(e => e.WasToLamb).ToList();
        var scans = inLamb.Select(e => e.Ewe.Scan).OfType<int>().Where(s => s > 0).ToList();
        var average = scans.Count == 0 ? UsualLambs : decimal.Round((decimal)scans.Average(), 2);
        return [.. inLamb.Select(Made)];

        FedEwe Made(EwePlan ewe)
        {
            var due = ewe.Due ?? DueWindows.Of(flock, ewe.Ewe);
            var anchor = KeeperWeek.FirstDay(due.Evidence.IsOneDay ? due.Likely : due.FirstPossible, flock.ChangeDay);
            var made = new FedEwe(ewe, due, FeedKind.NotScanned, average, anchor, EweWeights.Of(flock, ewe.Ewe), housed(ewe));
            if (ewe.Ewe.Scan is not ({ } scan and > 0))
            {
                return made;
            }

            // Thin ewes run with the class above, where there is one.
            var fedFor = made.IsThin && scan < 3 && scans.Any(s => Math.Min(s, 3) == scan + 1) ? scan + 1 : scan;
            return made with { Kind = KindOf(fedFor), Lambs = fedFor };
        }
    }

    public static FeedKind KindOf(int lambs) => lambs switch { <= 1 => FeedKind.Singles, 2 => FeedKind.Twins, _ => FeedKind.Triplets };
}
