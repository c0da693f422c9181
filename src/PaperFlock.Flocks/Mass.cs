namespace PaperFlock.Flocks;

/// <summary>A mass, kept in kilograms whatever unit the flock file used.</summary>
public readonly record struct Mass(decimal Kilograms)
{
    /// <summary>Never negative.</summary>
    public decimal Kilograms { get; } = Require.Within(Kilograms, 0, decimal.MaxValue);

    /// <summary>The international avoirdupois pound, exact: Weights and Measures Act 1985, section 1.</summary>
    public const decimal KilogramsPerPound = 0.45359237m;

    public static Mass FromPounds(decimal pounds) => new(pounds * KilogramsPerPound);
}
