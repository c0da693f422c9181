namespace PaperFlock.Planning.Feeding;

/// <summary>Ewes that will have one chart.</summary>
/// <param name="Own">Whose ration it is, by kind where they are mixed; never empty.</param>
/// <param name="Joined">Ewes of another class that would be parted alone.</param>
internal sealed record FeedClass(FeedKind Kind, ImmutableArray<FedEwe> Own, ImmutableArray<FedEwe> Joined)
{
    public IEnumerable<FedEwe> All => Own.Concat(Joined);

    public LocalDate FirstOwn => Own.Min(e => e.Anchor);

    public LocalDate Anchor => All.Min(e => e.Anchor);

    /// <summary>By what a ewe of it is fed for: who is above whom.</summary>
    public decimal Rank => Own.Average(e => e.Lambs);

    public bool Has(Ewe ewe) => All.Any(e => ReferenceEquals(e.Plan.Ewe, ewe) || e.Tag == ewe.Tag);

    public FeedClass With(FeedClass other) => new(
        Kind == other.Kind ? Kind : FeedKind.Mixed, [.. Own, .. other.Own], [.. Joined, .. other.Joined]);

    /// <summary>Kinds stay apart inside a mixed class, and each is as old as its own first day.</summary>
    public ClassRation[] Parts(Flock flock)
    {
        var caps = new FeedCaps(flock.Feeds);
        var most = caps.MostInLamb(All.Min(e => e.Weight));
        return
        [
            .. Own.GroupBy(e => e.Kind).OrderBy(g => g.Key)
                .Select(g => Kind == FeedKind.Mixed
                    ? new ClassRation(flock, g.Key, [.. g], g.Min(e => e.Anchor), most)
                    : new ClassRation(flock, g.Key, [.. g], Anchor, most, Joined)),
        ];
    }
}
