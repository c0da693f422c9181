using System.Text;
using PaperFlock.Layout;
using PaperFlock.Pdf.Fonts;
using SkiaSharp;

namespace PaperFlock.Pdf.Tests;

public sealed class FontSubsetTests
{
    /// <summary>Read back by SkiaSharp.</summary>
    [Fact]
    public void A_glyph_that_is_used_has_its_outline_and_its_advance_and_no_other_has()
    {
        foreach (var face in Enum.GetValues<Face>())
        {
            var whole = FontLibrary.Of(face).File;
            // With marks over and under letters, which are put together from others.
            ushort[] used = [.. "Hollin Bank ŵÇé 0412".Distinct().Select(c => whole.Characters[c]).Order()];
            var parts = used.SelectMany(glyph => whole.Glyphs.PartsOf(glyph)).ToHashSet();
            using var data = SKData.CreateCopy(FontSubset.Of(whole, used));
            using var typeface = SKTypeface.FromData(data);
            Assert.NotNull(typeface);
            using var font = new SKFont(typeface, typeface.UnitsPerEm) { Hinting = SKFontHinting.None, LinearMetrics = true, Subpixel = true };
            using var wholeFont = SkiaFonts.At(face, typeface.UnitsPerEm);
            for (ushort glyph = 0; glyph < whole.Glyphs.Count; glyph++)
            {
                var kept = glyph == 0 || used.Contains(glyph) || parts.Contains(glyph);
                using var outline = font.GetGlyphPath(glyph);
                using var wanted = wholeFont.GetGlyphPath(glyph);
                Assert.Equal(kept ? wanted?.ToSvgPathData() : new SKPath().ToSvgPathData(), outline?.ToSvgPathData() ?? new SKPath().ToSvgPathData());
            }

            Assert.Equal(wholeFont.MeasureText(used), font.MeasureText(used), 0.01f);
        }
    }

    [Fact]
    public void The_name_of_a_subset_tells_which_glyphs_are_in_it()
    {
        Assert.Equal(NameIn(Sample.Print(Sample.Text(10, 10, "Bramble"))), NameIn(Sample.Print(Sample.Text(20, 90, "Bramble"))));
        Assert.NotEqual(NameIn(Sample.Print(Sample.Text(10, 10, "Bramble"))), NameIn(Sample.Print(Sample.Text(10, 10, "Bracken"))));
        Assert.Matches("^[A-Z]{6}\\+AtkinsonHyperlegibleNext-Regular$", NameIn(Sample.Print(Sample.Text(10, 10, "Bramble"))));
    }

    private static string NameIn(byte[] pdf) => Encoding.Latin1.GetString(pdf).Split("/FontName/")[1].Split('/')[0];
}
