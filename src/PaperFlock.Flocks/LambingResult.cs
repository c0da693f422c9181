namespace PaperFlock.Flocks;

/// <summary>What is written down of a lambing beside the day.</summary>
/// <param name="Time">By the clock of the holding.</param>
/// <param name="Alive">Lambs born alive, 0 to 6.</param>
/// <param name="Dead">Lambs born dead, 0 to 6.</param>
public sealed record LambingResult(LocalTime? Time, int? Alive, int? Dead, LambingHelp? Help)
{
    /// <summary>Six is the most that has been heard of; from memory, no source.</summary>
    public const int MostLambs = 6;

    public static LambingResult Unknown { get; } = new(null, null, null, null);

    public int? Alive { get; init; } = Require.WithinIfGiven(Alive, 0, MostLambs);

    public int? Dead { get; init; } = Require.WithinIfGiven(Dead, 0, MostLambs);
}

public enum LambingHelp
{
    None,
    Hand,
    Vet,
}
