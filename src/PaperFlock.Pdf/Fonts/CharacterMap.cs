namespace PaperFlock.Pdf.Fonts;

/// <summary>Which glyph shows which character: the part of table cmap that maps Unicode's first plane (format 4).</summary>
internal sealed class CharacterMap
{
    private const int WindowsPlatform = 3;
    private const int UnicodeEncoding = 1;
    private const int SegmentFormat = 4;

    private readonly ushort[] _glyphs = new ushort[char.MaxValue + 1];

    public CharacterMap(FontTable cmap)
    {
        var start = Find(cmap);
        var count = cmap.UInt16(start + 6) / 2;
        // Four lists of as many numbers each, with one number to spare after the first.
        var ends = start + 14;
        var starts = ends + (2 * count) + 2;
        var deltas = starts + (2 * count);
        var ranges = deltas + (2 * count);
        for (var i = 0; i < count; i++)
        {
            var (delta, range) = (cmap.UInt16(deltas + (2 * i)), cmap.UInt16(ranges + (2 * i)));
            var first = cmap.UInt16(starts + (2 * i));
            for (int character = first; character <= cmap.UInt16(ends + (2 * i)); character++)
            {
                // Where there is a range, it is counted from where it stands itself.
                var listed = range == 0 ? character : cmap.UInt16(ranges + (2 * i) + range + (2 * (character - first)));
                _glyphs[character] = range != 0 && listed == 0 ? (ushort)0 : (ushort)((listed + delta) & ushort.MaxValue);
            }
        }
    }

    /// <summary>0, the box for what is missing, for a character the font lacks.</summary>
    public ushort this[int character] => character < _glyphs.Length ? _glyphs[character] : (ushort)0;

    public void Add(char character, ushort glyph) => _glyphs[character] = glyph;

    /// <summary>Where the segments begin.</summary>
    private static int Find(FontTable cmap)
    {
        for (var i = 0; i < cmap.UInt16(2); i++)
        {
            var entry = 4 + (8 * i);
            if (cmap.UInt16(entry) == WindowsPlatform && cmap.UInt16(entry + 2) == UnicodeEncoding && cmap.Offset(entry + 4) is var start && cmap.UInt16(start) == SegmentFormat)
            {
                return start;
            }
        }

        throw cmap.Damaged();
    }
}
