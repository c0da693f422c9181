namespace PaperFlock.Pdf.Fonts;

/// <summary>One of the faces in the program: its glyphs for the characters of Unicode, and its metrics. Thread-safe.</summary>
public sealed class FontFace
{
    /// <summary>Latin letters: nearly all that is ever set, and looked up for each letter of it.</summary>
    private const int MostCommon = 0x180;

    private readonly byte[] _bytes;
    private readonly Glyph[] _common = new Glyph[MostCommon];

    internal FontFace(string file)
    {
        _bytes = Read(file);
        File = new FontFile(file, _bytes);
        for (var i = 0; i < MostCommon; i++)
        {
            _common[i] = Find(new Rune(i));
        }
    }

    /// <summary>The font file.</summary>
    public ReadOnlyMemory<byte> Bytes => _bytes;

    public int UnitsPerEm => File.UnitsPerEm;

    internal FontFile File { get; }

    /// <summary>Of the em; so are the next two. The font's own line metrics, which no letter of it passes and which its bold and mono cousins share.</summary>
    internal double Ascent => (double)File.Ascent / UnitsPerEm;

    internal double Descent => (double)File.Descent / UnitsPerEm;

    internal double CapHeight => (double)File.CapHeight / UnitsPerEm;

    public Glyph this[Rune rune] => rune.Value < MostCommon ? _common[rune.Value] : Find(rune);

    /// <summary>The glyphs of the font file to draw one with, each at its place: one, or a letter and its marks.</summary>
    public ImmutableArray<GlyphPart> PartsOf(Glyph glyph) => File.PartsOf(glyph.Id);

    /// <summary>Whether it cannot be shown. A combining mark is missing in any case: text is set without shaping, so it would not stand over its letter.</summary>
    internal bool IsMissing(Rune rune) => this[rune].IsMissing || Rune.GetUnicodeCategory(rune) == UnicodeCategory.NonSpacingMark;

    private Glyph Find(Rune rune)
    {
        if (PrintsNothing(rune))
        {
            return Glyph.Nothing;
        }

        var id = File.Characters[StandIn(rune.Value)];
        return new Glyph(id, File.AdvanceOf(id));
    }

    private static bool PrintsNothing(Rune rune) => Rune.GetUnicodeCategory(rune)
        is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;

    /// <summary>Characters the faces lack that only say "do not break here" look like their breaking fellows.</summary>
    private static int StandIn(int character) => character switch
    {
        0x2010 or 0x2011 => '-',
        0x202F => 0x2009,
        _ => character,
    };

    private static byte[] Read(string file)
    {
        using var stream = typeof(FontFace).Assembly.GetManifestResourceStream(file)
            ?? throw new InvalidOperationException($"{file} is not in the program");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
