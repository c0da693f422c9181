namespace PaperFlock.Pdf.Fonts;

/// <summary>
/// What printing asks of a TrueType font file (ISO/IEC 14496-22, the OpenType specification), in font units, y upwards from the baseline.
/// Neither hinting nor kerning is used, and of the outlines only where they end.
/// </summary>
internal sealed class FontFile
{
    private const int HeadLength = 12;
    private const int EntryLength = 16;
    private const int WindowsPlatform = 3;
    private const int PostScriptName = 6;

    private readonly string _file;
    private readonly Dictionary<string, FontTable> _tables = new(StringComparer.Ordinal);
    private readonly int _advances;
    private readonly FontTable _hmtx;
    private readonly List<(ushort Advance, ImmutableArray<GlyphPart> Parts)> _made = [];

    /// <param name="file">What to call it in a message.</param>
    /// <exception cref="InvalidDataException">It is damaged, or no TrueType font with Unicode characters.</exception>
    public FontFile(string file, byte[] bytes)
    {
        _file = file;
        var whole = new FontTable(file, "directory", bytes);
        if (whole.UInt32(0) != 0x00010000)
        {
            throw new InvalidDataException($"{file} is not a TrueType font");
        }

        for (var entry = HeadLength; entry < HeadLength + (whole.UInt16(4) * EntryLength); entry += EntryLength)
        {
            var name = Encoding.Latin1.GetString(whole.Part(entry, 4).Span);
            _tables[name] = new FontTable(file, name, whole.Part(whole.Offset(entry + 8), whole.Offset(entry + 12)));
        }

        var (head, hhea) = (Table("head"), Table("hhea"));
        UnitsPerEm = head.UInt16(18) is var units and > 0 ? units : throw head.Damaged();
        Bounds = GlyphBox.Read(head, 36);
        Ascent = hhea.Int16(4);
        Descent = -hhea.Int16(6);
        CapHeight = Table("OS/2").Int16(88);
        IsFixedPitch = Table("post").UInt32(12) != 0;
        _advances = hhea.UInt16(34) is var advances and > 0 ? advances : throw hhea.Damaged();
        _hmtx = Table("hmtx");
        _ = _hmtx.Part(0, 4 * _advances);
        Glyphs = new GlyphOutlines(Table("loca"), Table("glyf"), Table("maxp").UInt16(4), isLong: head.Int16(50) != 0);
        Characters = new CharacterMap(Table("cmap"));
        Name = ReadName(Table("name"));
        MadeLetters.AddTo(this);
    }

    /// <summary>The PostScript name, by which a PDF calls it.</summary>
    public string Name { get; }

    public int UnitsPerEm { get; }

    /// <summary>Room for any of its glyphs.</summary>
    public GlyphBox Bounds { get; }

    public int Ascent { get; }

    /// <summary>Below the baseline, as a positive number.</summary>
    public int Descent { get; }

    public int CapHeight { get; }

    public bool IsFixedPitch { get; }

    public GlyphOutlines Glyphs { get; }

    public CharacterMap Characters { get; }

    /// <summary>Width of an upright stroke: that of the outline of the vertical bar, which is nothing else.</summary>
    public int Stem => Glyphs.BoxOf(Characters['|']) is var bar && bar.Right > bar.Left ? bar.Right - bar.Left : throw Table("glyf").Damaged();

    /// <summary>How far the next glyph is. All after the last that is listed are as wide as it.</summary>
    public ushort AdvanceOf(ushort glyph) => glyph >= Glyphs.Own ? _made[glyph - Glyphs.Own].Advance : _hmtx.UInt16(4 * Math.Min((int)glyph, _advances - 1));

    /// <summary>The glyphs of the file that one is drawn with: itself, but for a letter that was made.</summary>
    public ImmutableArray<GlyphPart> PartsOf(ushort glyph) => glyph >= Glyphs.Own ? _made[glyph - Glyphs.Own].Parts : [new GlyphPart(glyph, 0, 0)];

    /// <summary>A glyph that is not in the file.</summary>
    /// <param name="like">As wide as this one.</param>
    /// <returns>Its number, after all there are.</returns>
    public ushort Add(byte[] outline, ushort like, IEnumerable<GlyphPart> parts)
    {
        _made.Add((AdvanceOf(like), [.. parts.SelectMany(part => PartsOf(part.Id).Select(inner => new GlyphPart(inner.Id, part.X + inner.X, part.Y + inner.Y)))]));
        return Glyphs.Add(outline);
    }

    public FontTable Table(string name) => _tables.TryGetValue(name, out var table) ? table : throw new InvalidDataException($"the font {_file} is damaged: it has no table {name}");

    private static string ReadName(FontTable table)
    {
        for (var i = 0; i < table.UInt16(2); i++)
        {
            var entry = 6 + (12 * i);
            if (table.UInt16(entry) == WindowsPlatform && table.UInt16(entry + 6) == PostScriptName)
            {
                var name = Encoding.BigEndianUnicode.GetString(table.Part(table.UInt16(4) + table.UInt16(entry + 10), table.UInt16(entry + 8)).Span);
                return name.Length > 0 && name.All(c => char.IsAsciiLetterOrDigit(c) || c == '-') ? name : throw table.Damaged();
            }
        }

        throw table.Damaged();
    }
}
