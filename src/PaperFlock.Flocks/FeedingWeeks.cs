namespace PaperFlock.Flocks;

/// <summary>How many weeks before lambing concentrate begins, by lambs carried.</summary>
/// <param name="Thin">For a thin ewe, whatever she carries.</param>
public sealed record FeedingWeeks(int Single, int Twin, int Triplet, int Thin)
{
    public int Single { get; init; } = Require.Within(Single, 1, int.MaxValue);

    public int Twin { get; init; } = Require.Within(Twin, 1, int.MaxValue);

    public int Triplet { get; init; } = Require.Within(Triplet, 1, int.MaxValue);

    public int Thin { get; init; } = Require.Within(Thin, 1, int.MaxValue);

    /// <summary>The earliest that any ewe can begin.</summary>
    public int Most => Math.Max(Math.Max(Single, Twin), Math.Max(Triplet, Thin));

    /// <summary>The same for every ewe.</summary>
    public static FeedingWeeks Same(int weeks) => new(weeks, weeks, weeks, weeks);

    /// <param name="litter">Lambs carried; more than three count as three.</param>
    public int For(int litter, bool thin)
    {
        var weeks = litter switch { <= 1 => Single, 2 => Twin, _ => Triplet };
        return thin ? Math.Max(weeks, Thin) : weeks;
    }
}
