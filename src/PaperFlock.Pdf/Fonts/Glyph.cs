namespace PaperFlock.Pdf.Fonts;

/// <param name="Id">In the font file; 0 is the box for what the face lacks.</param>
/// <param name="Advance">In font units.</param>
public readonly record struct Glyph(ushort Id, ushort Advance)
{
    /// <summary>For characters that take no room and leave no mark.</summary>
    internal static readonly Glyph Nothing = new(ushort.MaxValue, 0);

    public bool IsMissing => Id == 0;

    public bool IsPrinted => Id != ushort.MaxValue;
}
