namespace PaperFlock.Flocks;

/// <param name="Lambing">Outdoors means no housing job and no pens.</param>
/// <param name="LambingPens">Null when the file does not say.</param>
public sealed record Housing(
    LambingPlace Lambing,
    ImmutableArray<Pen> Pens,
    int? LambingPens,
    DaysInLambingPen DaysInLambingPen)
{
    public ImmutableArray<Pen> Pens { get; init; } = Require.Unique(Pens, p => p.Name);

    /// <summary>Days after lambing at which a ewe and her lambs go out to grass.</summary>
    public int TurnoutDaysAfterLambing { get; init; } = 10;

    public int? LambingPens { get; init; } = Require.WithinIfGiven(LambingPens, 0, int.MaxValue);
}

public enum LambingPlace
{
    Indoors,
    Outdoors,
}

public sealed record Pen(string Name, Length Length, Length Width, Length? Trough, SourceSpan Span)
{
    public string Name { get; init; } = Require.Text(Name);

    public Length Length { get; init; } = Require.Some(Length);

    public Length Width { get; init; } = Require.Some(Width);

    public Length? Trough { get; init; } = Require.SomeIfGiven(Trough);

    /// <summary>Where its upper left corner lies on the plan of the shed; null when the file does not say.</summary>
    public PenCorner? At { get; init; }
}

/// <summary>Whole days a ewe and her lambs hold a lambing pen.</summary>
public sealed record DaysInLambingPen(int Single, int Twin, int Triplet)
{
    public int Single { get; init; } = Require.Within(Single, 1, int.MaxValue);

    public int Twin { get; init; } = Require.Within(Twin, 1, int.MaxValue);

    public int Triplet { get; init; } = Require.Within(Triplet, 1, int.MaxValue);

    /// <param name="litter">Lambs carried; more than three hold a pen as long as three.</param>
    public int For(int litter) => litter switch { <= 1 => Single, 2 => Twin, _ => Triplet };
}
