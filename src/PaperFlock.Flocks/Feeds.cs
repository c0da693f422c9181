namespace PaperFlock.Flocks;

/// <param name="PerLamb">Concentrate a day for each lamb carried.</param>
/// <param name="LargestFeed">Most concentrate a ewe gets at one time.</param>
/// <param name="OrderLeadDays">Days between ordering and having it.</param>
/// <param name="Margin">What is bought over the sum, as a fraction: 0.1 is a tenth more.</param>
/// <param name="Ground">Where the ewes walk when they are not housed; decides the energy of activity.</param>
public sealed record Feeds(
    FeedMethod Method,
    Mass PerLamb,
    Forage Forage,
    Concentrate Concentrate,
    Mass LargestFeed,
    Buckets? Buckets,
    int OrderLeadDays,
    decimal Margin,
    Ground Ground)
{
    public Mass PerLamb { get; init; } = Require.Some(PerLamb);

    public Mass LargestFeed { get; init; } = Require.Some(LargestFeed);

    public int OrderLeadDays { get; init; } = Require.Within(OrderLeadDays, 0, int.MaxValue);

    public decimal Margin { get; init; } = Require.Within(Margin, 0, decimal.MaxValue);
}

public enum FeedMethod
{
    PerLamb,
    EnergyBalance,
}

public enum Ground
{
    Lowland,
    Hill,
}

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

/// <param name="Days">How long one bucket lasts its ewes.</param>
public sealed record Buckets(string Name, Mass Weight, int EwesPerBucket, int Days)
{
    public string Name { get; init; } = Require.Text(Name);

    public Mass Weight { get; init; } = Require.Some(Weight);

    public int EwesPerBucket { get; init; } = Require.Within(EwesPerBucket, 1, int.MaxValue);

    public int Days { get; init; } = Require.Within(Days, 1, int.MaxValue);
}
