namespace PaperFlock.Planning.Pens;

/// <summary>Which ewes are housed when the shed cannot hold them all.</summary>
internal static class EwesThatFit
{
    /// <summary>As many as the pens hold; of those, the first given where they fit, else the lightest.</summary>
    /// <remarks>Floor and trough both grow with weight, so if any so many ewes can be fitted, so many of the lightest can:
    /// the most that fit is found on the lightest alone.</remarks>
    /// <param name="ewes">The first to be housed first.</param>
    /// <param name="pens">Empty pens.</param>
    /// <returns>Indices of those to be housed, ascending.</returns>
    public static ImmutableArray<int> Choose(ImmutableArray<RoomNeeded> ewes, ImmutableArray<PenRoom> pens)
    {
        ImmutableArray<int> lightest = [.. Enumerable.Range(0, ewes.Length).OrderBy(i => ewes[i].Floor).ThenBy(i => ewes[i].Trough)];
        var most = ewes.Length;
        while (most > 0 && !Fit(lightest[..most], ewes, pens))
        {
            most--;
        }

        ImmutableArray<int> first = [.. Enumerable.Range(0, most)];
        return Fit(first, ewes, pens) ? first : [.. lightest[..most].Order()];
    }

    private static bool Fit(ImmutableArray<int> chosen, ImmutableArray<RoomNeeded> ewes, ImmutableArray<PenRoom> pens) =>
        PenPacking.Of([.. chosen.Select(i => ewes[i])], pens) is not null;
}
