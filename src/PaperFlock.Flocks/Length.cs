namespace PaperFlock.Flocks;

/// <summary>A length, kept in metres whatever unit the flock file used.</summary>
public readonly record struct Length(decimal Metres)
{
    /// <summary>Never negative.</summary>
    public decimal Metres { get; } = Require.Within(Metres, 0, decimal.MaxValue);

    /// <summary>The international foot, exact: Weights and Measures Act 1985, section 1 (yard / 3).</summary>
    public const decimal MetresPerFoot = 0.3048m;
}
