namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>A figure somebody prints for a pregnant ewe.</summary>
/// <param name="From">Days before lambing that the figure is for, the first.</param>
/// <param name="To">The last of them, included.</param>
/// <param name="Where">Name of a <c>Whereabouts</c>.</param>
/// <param name="Condition">Score; null where the source names none, or one that is neither thin nor fat.</param>
/// <param name="Published">MJ a day.</param>
/// <param name="Tolerance">Fraction either way.</param>
/// <param name="Why">Why so much is allowed.</param>
public sealed record Spot(
    string Source, double Weight, int Lambs, int From, int To, string Where, double? Condition, double Published, double Tolerance, string Why)
{
    public override string ToString() => Source;
}
