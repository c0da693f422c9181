using System.Buffers.Binary;
using System.Text;
using PaperFlock.Layout;
using PaperFlock.Pdf.Fonts;
using SkiaSharp;

namespace PaperFlock.Pdf.Tests;

/// <summary>Our reading of the font files against SkiaSharp's.</summary>
public sealed class FontFileTests
{
    public static TheoryData<Face> Faces => [.. Enum.GetValues<Face>()];

    /// <summary>All of Unicode: also what no face has.</summary>
    [Theory]
    [MemberData(nameof(Faces))]
    public void Every_code_point_has_the_glyph_and_the_advance_another_reader_finds(Face face)
    {
        var file = FontLibrary.Of(face).File;
        using var typeface = SkiaFonts.Of(face);
        using var font = SkiaFonts.At(face, typeface.UnitsPerEm);
        var characters = Enumerable.Range(0, 0x110000).Where(Rune.IsValid).ToArray();
        var glyphs = new ushort[characters.Length];
        font.GetGlyphs(characters, glyphs);
        // What was made of a letter and a mark, another reader does not find.
        Assert.Equal(glyphs, characters.Select(c => file.Characters[c] is var glyph && glyph < file.Glyphs.Own ? glyph : (ushort)0));

        var used = glyphs.Distinct().ToArray();
        Assert.InRange(used.Length, 300, 1000);
        var widths = new float[used.Length];
        font.GetGlyphWidths(used, widths, []);
        Assert.Equal(widths.Select(w => (int)Math.Round(w)), used.Select(g => (int)file.AdvanceOf(g)));
    }

    [Theory]
    [MemberData(nameof(Faces))]
    public void Every_outline_ends_where_another_reader_finds_it_to(Face face)
    {
        var file = FontLibrary.Of(face).File;
        using var typeface = SkiaFonts.Of(face);
        using var font = SkiaFonts.At(face, typeface.UnitsPerEm);
        Assert.Equal(typeface.GlyphCount, file.Glyphs.Own);
        for (ushort glyph = 0; glyph < file.Glyphs.Own; glyph++)
        {
            using var path = font.GetGlyphPath(glyph);
            // Round the points of its curves, as the file has it too. An accent placed between two units is set on one or the other.
            var box = path?.Bounds ?? SKRect.Empty;
            var ours = file.Glyphs.BoxOf(glyph);
            Assert.Equal([box.Left, -box.Bottom, box.Right, -box.Top], [ours.Left, ours.Lowest, ours.Right, ours.Highest], new Near(1.01f));
        }
    }

    [Theory]
    [MemberData(nameof(Faces))]
    public void The_face_is_what_another_reader_says_it_is(Face face)
    {
        var file = FontLibrary.Of(face).File;
        using var typeface = SkiaFonts.Of(face);
        using var font = SkiaFonts.At(face, typeface.UnitsPerEm);
        Assert.Equal((typeface.PostScriptName, typeface.UnitsPerEm, typeface.IsFixedPitch), (file.Name, file.UnitsPerEm, file.IsFixedPitch));
        Assert.Equal((Math.Round(-font.Metrics.Ascent), Math.Round(font.Metrics.Descent), Math.Round(font.Metrics.CapHeight)), (file.Ascent, file.Descent, file.CapHeight));
        using var bar = font.GetGlyphPath(font.GetGlyph('|'));
        Assert.Equal(bar.Bounds.Width, file.Stem, 0.51f);
    }

    [Fact]
    public void A_bolder_face_has_the_wider_stem()
    {
        Assert.True(FontLibrary.Of(Face.TextBold).File.Stem > FontLibrary.Of(Face.Text).File.Stem);
        Assert.True(FontLibrary.Of(Face.MonoBold).File.Stem > FontLibrary.Of(Face.Mono).File.Stem);
    }

    [Fact]
    public void A_font_cut_short_anywhere_is_said_to_be_damaged()
    {
        var bytes = FontLibrary.Of(Face.Mono).Bytes.ToArray();
        for (var length = 0; length < bytes.Length; length += length < 300 ? 1 : 997)
        {
            Assert.Throws<InvalidDataException>(() => new FontFile("cut", bytes[..length]));
        }
    }

    /// <summary>A wrong number anywhere may give a wrong glyph, and nothing worse.</summary>
    [Fact]
    public void A_font_with_a_wrong_byte_is_read_or_said_to_be_damaged()
    {
        var bytes = FontLibrary.Of(Face.Mono).Bytes.ToArray();
        var random = new Random(11);
        var refused = 0;
        for (var i = 0; i < 400; i++)
        {
            var spoilt = bytes.ToArray();
            spoilt[i < 200 ? i : random.Next(spoilt.Length)] ^= (byte)random.Next(1, 256);
            try
            {
                var file = new FontFile("spoilt", spoilt);
                for (ushort glyph = 0; glyph < file.Glyphs.Count; glyph++)
                {
                    _ = (file.Glyphs.BoxOf(glyph), file.AdvanceOf(glyph), file.Glyphs.PartsOf(glyph).Count());
                }
            }
            catch (InvalidDataException e)
            {
                Assert.Contains("spoilt", e.Message, StringComparison.Ordinal);
                refused++;
            }
        }

        Assert.InRange(refused, 50, 399);
    }

    [Fact]
    public void A_missing_table_is_named()
    {
        var bytes = FontLibrary.Of(Face.Text).Bytes.ToArray();
        var entry = Enumerable.Range(0, BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(4))).Select(i => 12 + (16 * i)).Single(at => Encoding.ASCII.GetString(bytes, at, 4) == "hmtx");
        bytes[entry] = (byte)'x';
        var fault = Assert.Throws<InvalidDataException>(() => new FontFile("some.ttf", bytes));
        Assert.Equal("the font some.ttf is damaged: it has no table hmtx", fault.Message);
    }

    private sealed class Near(float off) : IEqualityComparer<float>
    {
        public bool Equals(float x, float y) => Math.Abs(x - y) <= off;

        public int GetHashCode(float value) => 0;
    }
}
