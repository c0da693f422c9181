namespace PaperFlock.Flocks;

/// <param name="Energy">Metabolisable energy, MJ for each kilogram of dry matter.</param>
/// <param name="Protein">Crude protein, grams for each kilogram of dry matter.</param>
/// <param name="DryMatter">Fraction, 0 to 1.</param>
/// <param name="Intake">Dry matter a ewe eats a day as a fraction of her live weight; null: the usual figure for its kind.</param>
/// <param name="Bale">Fresh weight; null for what is not baled, such as grass.</param>
/// <param name="SubstitutionRate">Kilograms of forage dry matter left uneaten for each kilogram of concentrate dry matter eaten, 0 to 1.</param>
public sealed record Forage(
    ForageKind Kind,
    decimal Energy,
    decimal Protein,
    decimal DryMatter,
    Mass? Bale,
    bool AdLib,
    decimal? Intake,
    decimal SubstitutionRate)
{
    public decimal Energy { get; init; } = Require.Within(Energy, 0, decimal.MaxValue);

    public decimal Protein { get; init; } = Require.Within(Protein, 0, 1000);

    public decimal DryMatter { get; init; } = Require.Positive(DryMatter, 1);

    public Mass? Bale { get; init; } = Require.SomeIfGiven(Bale);

    public decimal? Intake { get; init; } = Require.WithinIfGiven(Intake, 0, 1);

    public decimal SubstitutionRate { get; init; } = Require.Within(SubstitutionRate, 0, 1);
}

public enum ForageKind
{
    Hay,
    Haylage,
    Silage,
    Straw,
    Grass,
}
