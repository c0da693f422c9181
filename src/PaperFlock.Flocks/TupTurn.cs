namespace PaperFlock.Flocks;

/// <summary>The days one tup was with a group.</summary>
/// <param name="In">First day, included.</param>
/// <param name="Out">Last day, included; on it the next may join them.</param>
public sealed record TupTurn(string Name, LocalDate In, LocalDate Out)
{
    public LocalDate Out { get; init; } = Require.NotBefore(Out, In);
}
