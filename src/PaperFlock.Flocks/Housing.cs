using System.Collections.Immutable;
using PaperFlock.Diagnostics;

namespace PaperFlock.Flocks;

/// <param name="Lambing">Outdoors means no housing job and no pens.</param>
/// <param name="LambingPens">Null when the file does not say.</param>
public sealed record Housing(
    LambingPlace Lambing,
    ImmutableArray<Pen> Pens,
    int? LambingPens,
    DaysInLambingPen DaysInLambingPen);

public enum LambingPlace
{
    Indoors,
    Outdoors,
}

public sealed record Pen(string Name, Length Length, Length Width, Length? Trough, SourceSpan Span);

/// <summary>Whole days a ewe and her lambs hold a lambing pen.</summary>
public sealed record DaysInLambingPen(int Single, int Twin, int Triplet)
{
    /// <param name="litter">Lambs carried; more than three hold a pen as long as three.</param>
    public int For(int litter) => litter switch { <= 1 => Single, 2 => Twin, _ => Triplet };
}
