namespace PaperFlock.Pdf.Fonts;

/// <summary>The least box round an outline, in font units, y upwards from the baseline.</summary>
internal readonly record struct GlyphBox(int Left, int Lowest, int Right, int Highest)
{
    public static GlyphBox Read(FontTable table, int at) => new(table.Int16(at), table.Int16(at + 2), table.Int16(at + 4), table.Int16(at + 6));
}
