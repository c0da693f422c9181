using System.Globalization;
using System.Text;
using SkiaSharp;

namespace PaperFlock.Printing.Fonts;

/// <summary>The glyph and advance of every character of one face, looked up in blocks of 256 as they are first met. Thread-safe.</summary>
internal sealed class GlyphTable(SKTypeface typeface)
{
    private const int BlockSize = 256;

    // Two threads may fill the same block: they fill it alike, and either may win.
    private readonly Glyph[]?[] _blocks = new Glyph[]?[0x110000 / BlockSize];

    public Glyph this[Rune rune] => (_blocks[rune.Value / BlockSize] ?? Fill(rune.Value / BlockSize))[rune.Value % BlockSize];

    public bool IsMissing(Rune rune) => this[rune].IsMissing || Rune.GetUnicodeCategory(rune) == UnicodeCategory.NonSpacingMark;

    private Glyph[] Fill(int block)
    {
        var characters = new int[BlockSize];
        for (var i = 0; i < BlockSize; i++)
        {
            characters[i] = StandIn((block * BlockSize) + i);
        }

        var ids = new ushort[BlockSize];
        var widths = new float[BlockSize];
        using var font = FontFace.FontAtEm(typeface);
        font.GetGlyphs(characters, ids);
        font.GetGlyphWidths(ids, widths, []);
        var glyphs = new Glyph[BlockSize];
        for (var i = 0; i < BlockSize; i++)
        {
            // Advances are whole font units in the file; 16.16 arithmetic below returns them a hair short.
            glyphs[i] = PrintsNothing((block * BlockSize) + i) ? Glyph.Nothing : new Glyph(ids[i], (ushort)Math.Round(widths[i]));
        }

        Volatile.Write(ref _blocks[block], glyphs);
        return glyphs;
    }

    private static bool PrintsNothing(int character) => CharUnicodeInfo.GetUnicodeCategory(character)
        is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;

    /// <summary>Characters the faces lack that only say "do not break here" look like their breaking fellows.</summary>
    private static int StandIn(int character) => character switch
    {
        0x2010 or 0x2011 => '-',
        0x202F => 0x2009,
        _ => character,
    };
}

/// <param name="Id">In the font file; 0 is the box for what the face lacks.</param>
/// <param name="Advance">In font units.</param>
internal readonly record struct Glyph(ushort Id, ushort Advance)
{
    /// <summary>For characters that take no room and leave no mark.</summary>
    public static readonly Glyph Nothing = new(ushort.MaxValue, 0);

    public bool IsMissing => Id == 0;

    public bool IsPrinted => Id != ushort.MaxValue;
}
