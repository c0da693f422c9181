namespace PaperFlock.Flocks;

/// <param name="Energy">Metabolisable energy, MJ for each kilogram of dry matter.</param>
/// <param name="Protein">Crude protein, grams for each kilogram of dry matter.</param>
/// <param name="DryMatter">Fraction, 0 to 1.</param>
/// <param name="Scoop">What one level scoop holds; null where the keeper weighs.</param>
public sealed record Concentrate(string Name, decimal Energy, decimal Protein, decimal DryMatter, Mass Bag, Mass? Scoop)
{
    public string Name { get; init; } = Require.Text(Name);

    public decimal Energy { get; init; } = Require.Positive(Energy, decimal.MaxValue);

    public decimal Protein { get; init; } = Require.Within(Protein, 0, 1000);

    public decimal DryMatter { get; init; } = Require.Positive(DryMatter, 1);

    public Mass Bag { get; init; } = Require.Some(Bag);

    public Mass? Scoop { get; init; } = Require.SomeIfGiven(Scoop);
}
