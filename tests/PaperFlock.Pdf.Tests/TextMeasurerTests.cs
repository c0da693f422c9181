using System.Buffers.Binary;
using System.Text;
using CsCheck;
using PaperFlock.Layout;
using SkiaSharp;

namespace PaperFlock.Pdf.Tests;

public sealed class TextMeasurerTests
{
    /// <summary>What the drawing library finds in the font file too: letters made of a letter and a mark are not in it.</summary>
    private static readonly string Printable = string.Concat(Enumerable.Range(0x20, 0x160).Select(c => (char)c)
        .Where(c => !char.IsControl(c) && c != '\u00AD' && FontLibrary.FirstMissing(c.ToString(), Face.Text) is null && FontLibrary.Of(Face.Text).File.Characters[c] < FontLibrary.Of(Face.Text).File.Glyphs.Own));

    // Against SkiaSharp's own measuring of the same font. FreeType below it keeps sizes in 64ths of a point, so its widths are
    // those of a size up to a 64th away; the PDF knows no such rounding (see the widths read back from one).
    [Fact]
    public void Width_is_what_the_drawing_library_measures()
        => Gen.Select(Gen.Enum<Face>(), Gen.Double[4, 80], Gen.Char[Printable].Array[0, 60])
            .Sample((face, size, letters) =>
            {
                using var font = SkiaFonts.At(face, (float)size);
                var text = new string(letters);
                var width = FontLibrary.Measurer.WidthOf(text, new TextStyle(face, size));
                Assert.Equal(font.MeasureText(text), width, 0.001 + (width / size / 64));
            });

    [Theory]
    [InlineData(4)]
    [InlineData(9.375)]
    [InlineData(12)]
    [InlineData(27.25)]
    [InlineData(80)]
    public void At_whole_64ths_of_a_point_width_is_what_the_drawing_library_measures_exactly(double size)
    {
        foreach (var face in Enum.GetValues<Face>())
        {
            using var font = SkiaFonts.At(face, (float)size);
            Assert.All(Printable, letter => Assert.Equal(font.MeasureText(letter.ToString()), FontLibrary.Measurer.WidthOf(letter.ToString(), new TextStyle(face, size)), 0.001));
        }
    }

    // Against the font file itself: OpenType 1.9, tables hhea, hmtx and OS/2 (field offsets from memory).
    [Theory]
    [InlineData(Face.Text)]
    [InlineData(Face.TextBold)]
    [InlineData(Face.Mono)]
    [InlineData(Face.MonoBold)]
    public void Metrics_and_advances_are_those_in_the_file(Face face)
    {
        var typeface = SkiaFonts.Of(face);
        using var font = SkiaFonts.At(face, 10);
        var (hhea, hmtx, os2) = (Table("hhea"), Table("hmtx"), Table("OS/2"));
        // Metrics of a face set at its units to the em are the very units.
        var style = new TextStyle(face, typeface.UnitsPerEm);
        var metrics = FontLibrary.Measurer.MetricsOf(style);
        Assert.Equal(Int16(hhea, 4), metrics.Ascent, 1e-9);
        Assert.Equal(-Int16(hhea, 6), metrics.Descent, 1e-9);
        Assert.Equal(Int16(os2, 88), metrics.CapHeight, 1e-9);
        var last = Int16(hhea, 34) - 1;
        foreach (var letter in Printable)
        {
            var advance = Int16(hmtx, 4 * Math.Min(font.GetGlyph(letter), last));
            Assert.Equal(advance, FontLibrary.Measurer.WidthOf([letter], style), 1e-9);
        }

        byte[] Table(string tag) => typeface.GetTableData(BinaryPrimitives.ReadUInt32BigEndian(Encoding.ASCII.GetBytes(tag)));

        static int Int16(byte[] table, int offset) => BinaryPrimitives.ReadInt16BigEndian(table.AsSpan(offset));
    }

    [Fact]
    public void Every_face_has_the_same_line_so_that_faces_may_be_mixed_on_it()
        => Assert.Single(Enum.GetValues<Face>().Select(face => FontLibrary.Measurer.MetricsOf(new TextStyle(face, 10))).Distinct());

    [Theory]
    [InlineData(Face.Text)]
    [InlineData(Face.MonoBold)]
    public void No_letter_rises_above_the_ascent_or_falls_below_the_descent(Face face)
    {
        using var font = SkiaFonts.At(face, 1000);
        var metrics = FontLibrary.Measurer.MetricsOf(new TextStyle(face, 1000));
        foreach (var letter in Printable)
        {
            var ink = InkOf(letter);
            Assert.InRange(-ink.Top, double.MinValue, metrics.Ascent);
            Assert.InRange(ink.Bottom, double.MinValue, metrics.Descent);
        }

        Assert.Equal(metrics.CapHeight, -InkOf('H').Top, 0.5);

        SKRect InkOf(char letter)
        {
            using var outline = font.GetGlyphPath(font.GetGlyph(letter));
            return outline?.TightBounds ?? SKRect.Empty;
        }
    }

    [Fact]
    public void Every_mono_character_is_equally_wide()
        => Assert.Single(Printable.Select(c => FontLibrary.Measurer.WidthOf(c.ToString(), new TextStyle(Face.MonoBold, 12))).Distinct());

    [Fact]
    public void Threads_agree()
    {
        var widths = Enumerable.Range(0, 64).AsParallel().WithDegreeOfParallelism(8)
            .Select(_ => FontLibrary.Measurer.WidthOf(Printable, Sample.Plain)).Distinct();
        Assert.Single(widths);
    }
}
