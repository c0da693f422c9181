namespace PaperFlock.Pdf.Fonts;

/// <summary>A glyph of the font file within a letter that is made of two.</summary>
/// <param name="Id">In the font file.</param>
/// <param name="X">How far to the right of its place it stands, in font units; <paramref name="Y"/> upwards.</param>
public readonly record struct GlyphPart(ushort Id, int X, int Y);
