namespace PaperFlock.Pdf.Fonts;

/// <summary>The outlines of a font by the number of the glyph: tables loca and glyf.</summary>
/// <param name="count">Numbers of the font's own glyphs are below it.</param>
/// <param name="isLong">Whether loca holds places as they are, and not halved.</param>
internal sealed class GlyphOutlines(FontTable loca, FontTable glyf, int count, bool isLong)
{
    private const int BoxLength = 8;

    // What follows a part of a compound glyph, by its flags.
    private const int ArgumentsAreWords = 0x0001;
    private const int HasScale = 0x0008;
    private const int MorePartsFollow = 0x0020;
    private const int HasTwoScales = 0x0040;
    private const int HasFourScales = 0x0080;

    private readonly List<byte[]> _made = [];

    public int Count => count + _made.Count;

    /// <summary>Without those that were made.</summary>
    public int Own => count;

    /// <returns>Its number.</returns>
    public ushort Add(byte[] outline)
    {
        _made.Add(outline);
        return Count <= ushort.MaxValue ? (ushort)(Count - 1) : throw glyf.Damaged();
    }

    /// <summary>As it stands in the file; nothing of a glyph without an outline, such as a space.</summary>
    public ReadOnlyMemory<byte> Of(int glyph)
    {
        if (glyph >= count)
        {
            return glyph < Count ? _made[glyph - count] : throw glyf.Damaged();
        }

        var (start, end) = (Place(glyph), Place(glyph + 1));
        return glyf.Part(start, end - start);
    }

    /// <summary>All zeros for a glyph without an outline.</summary>
    public GlyphBox BoxOf(int glyph) => Of(glyph) is { IsEmpty: false } outline ? GlyphBox.Read(Table(outline), 2) : default;

    /// <summary>The glyphs a compound glyph is put together from, such as a letter and its accent; none of any other.</summary>
    public IEnumerable<ushort> PartsOf(int glyph)
    {
        var outline = Table(Of(glyph));
        if (outline.Bytes.IsEmpty || outline.Int16(0) >= 0)
        {
            yield break;
        }

        var at = 2 + BoxLength;
        int flags;
        do
        {
            flags = outline.UInt16(at);
            yield return outline.UInt16(at + 2);
            at += 4 + ((flags & ArgumentsAreWords) != 0 ? 4 : 2);
            at += (flags & HasScale) != 0 ? 2 : (flags & HasTwoScales) != 0 ? 4 : (flags & HasFourScales) != 0 ? 8 : 0;
        }
        while ((flags & MorePartsFollow) != 0);
    }

    private int Place(int glyph) => isLong ? loca.Offset(4 * glyph) : 2 * loca.UInt16(2 * glyph);

    private FontTable Table(ReadOnlyMemory<byte> outline) => glyf.With(outline);
}

/// <summary>The least box round an outline, in font units, y upwards from the baseline.</summary>
internal readonly record struct GlyphBox(int Left, int Lowest, int Right, int Highest)
{
    public static GlyphBox Read(FontTable table, int at) => new(table.Int16(at), table.Int16(at + 2), table.Int16(at + 4), table.Int16(at + 6));
}
