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
    Ground Ground);

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
public sealed record Forage(
    ForageKind Kind,
    decimal Energy,
    decimal Protein,
    decimal DryMatter,
    Mass? Bale,
    bool AdLib,
    decimal? Intake,
    decimal SubstitutionRate);

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
public sealed record Concentrate(string Name, decimal Energy, decimal Protein, decimal DryMatter, Mass Bag, Mass? Scoop);

/// <param name="Days">How long one bucket lasts its ewes.</param>
public sealed record Buckets(string Name, Mass Weight, int EwesPerBucket, int Days);
