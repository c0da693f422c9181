using System.Text;

namespace PaperFlock.Pdf.Fonts;

/// <summary>One of the faces in the program: its glyphs for the characters of Unicode, and its metrics. Thread-safe.</summary>
public sealed class FontFace
{
    private readonly byte[] _bytes;

    private FontFace(string file)
    {
        _bytes = Read(file);
        File = new FontFile(file, _bytes);
    }

    /// <summary>The font file.</summary>
    public ReadOnlyMemory<byte> Bytes => _bytes;

    public int UnitsPerEm => File.UnitsPerEm;

    internal FontFile File { get; }

    /// <summary>Of the em; so are the next two. The font's own line metrics, which no letter of it passes and which its bold and mono cousins share.</summary>
    internal double Ascent => (double)File.Ascent / UnitsPerEm;

    internal double Descent => (double)File.Descent / UnitsPerEm;

    internal double CapHeight => (double)File.CapHeight / UnitsPerEm;

    public Glyph this[Rune rune]
    {
        get
        {
            if (PrintsNothing(rune))
            {
                return Glyph.Nothing;
            }

            var id = File.Characters[StandIn(rune.Value)];
            return new Glyph(id, File.AdvanceOf(id));
        }
    }

    internal static FontFace Load(string file) => new(file);

    /// <summary>Whether it cannot be shown. A combining mark is missing in any case: text is set without shaping, so it would not stand over its letter.</summary>
    internal bool IsMissing(Rune rune) => this[rune].IsMissing || Rune.GetUnicodeCategory(rune) == UnicodeCategory.NonSpacingMark;

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
