namespace PaperFlock.Flocks;

/// <summary>What came of a ewe's season before this one.</summary>
/// <param name="Scan">Lambs counted, 0 to 5; null where she was not scanned.</param>
/// <param name="LambsAlive">Lambs born alive; null where nobody wrote them down.</param>
public sealed record LastSeason(int? Scan, int? LambsAlive)
{
    public int? Scan { get; init; } = Require.WithinIfGiven(Scan, 0, 5);

    public int? LambsAlive { get; init; } = Require.WithinIfGiven(LambsAlive, 0, LambingResult.MostLambs);
}
