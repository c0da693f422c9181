namespace PaperFlock.Planning;

/// <summary>A tup that may be the sire, and how likely he is.</summary>
/// <param name="Chance">Over 0, to 1.</param>
public sealed record Sire(string Tup, double Chance)
{
    /// <summary>So near to 1 that in whole percents nothing is left for another.</summary>
    public bool IsCertain => Chance >= 0.995;
}
