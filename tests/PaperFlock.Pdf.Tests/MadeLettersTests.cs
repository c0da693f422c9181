using PaperFlock.Layout;
using PaperFlock.Pdf.Fonts;
using SkiaSharp;

namespace PaperFlock.Pdf.Tests;

/// <summary>Letters a face lacks, put together from its letter and its mark.</summary>
public sealed class MadeLettersTests
{
    public static TheoryData<Face> Faces => [.. Enum.GetValues<Face>()];

    [Theory]
    [MemberData(nameof(Faces))]
    public void The_mark_stands_over_or_under_the_middle_of_its_letter_and_within_the_line(Face face)
    {
        var file = FontLibrary.Of(face).File;
        foreach (var (made, letter, isUnder) in new[] { ('ō', 'o', false), ('Ō', 'O', false), ('ĥ', 'h', false), ('ĩ', 'ı', false), ('ĵ', 'ȷ', false), ('ạ', 'a', true), ('ị', 'i', true), ('ḏ', 'd', true) })
        {
            var (own, whole) = (file.Glyphs.BoxOf(file.Characters[letter]), file.Glyphs.BoxOf(file.Characters[made]));
            var mark = file.PartsOf(file.Characters[made])[^1];
            var drawn = file.Glyphs.BoxOf(mark.Id);
            Assert.Equal(own.Left + own.Right, drawn.Left + drawn.Right + (2 * mark.X), new Within(1));
            Assert.True(isUnder ? drawn.Highest + mark.Y < own.Lowest : drawn.Lowest + mark.Y > own.Highest, $"{made} in {face}");
            Assert.Equal(file.AdvanceOf(file.Characters[letter]), file.AdvanceOf(file.Characters[made]));
            Assert.InRange(whole.Highest, own.Highest, file.Ascent);
            Assert.InRange(whole.Lowest, -file.Descent, own.Lowest);
        }
    }

    /// <summary>A letter is printed in whatever face a sheet has for it, and in capitals too.</summary>
    [Theory]
    [MemberData(nameof(Faces))]
    public void Every_face_makes_the_same_letters_with_their_capitals_and_none_higher_or_lower_than_its_line(Face face)
    {
        var file = FontLibrary.Of(face).File;
        var made = Made(face);
        Assert.InRange(made.Length, 150, 300);
        Assert.Equal(Made(Face.Text), made);
        Assert.Equal(file.Glyphs.Count - file.Glyphs.Own, made.Length);
        Assert.All(made, letter => Assert.NotEqual(0, file.Characters[char.ToUpperInvariant(letter)]));
        Assert.All(made, letter => Assert.InRange(file.Glyphs.BoxOf(file.Characters[letter]).Highest, 0, file.Ascent));
        Assert.All(made, letter => Assert.InRange(file.Glyphs.BoxOf(file.Characters[letter]).Lowest, -file.Descent, 0));

        static char[] Made(Face face) => [.. Enumerable.Range(0, 0x2000).Select(c => (char)c).Where(c => FontLibrary.Of(face).File.Characters[c] >= FontLibrary.Of(face).File.Glyphs.Own)];
    }

    /// <summary>Text is measured by it, and the PDF sets it so.</summary>
    [Theory]
    [MemberData(nameof(Faces))]
    public void It_drawnas_wide_as_its_letter(Face face)
    {
        var style = new TextStyle(face, 11);
        Assert.Equal(FontLibrary.Measurer.WidthOf("Tororoa", style), FontLibrary.Measurer.WidthOf("Tōrọrŏȧ", style), 1e-9);
    }

    /// <summary>Read back by SkiaSharp: whatever was made, one mark or two.</summary>
    [Theory]
    [MemberData(nameof(Faces))]
    public void A_part_font_draws_each_as_its_parts_stand(Face face)
    {
        var whole = FontLibrary.Of(face).File;
        var made = Enumerable.Range(whole.Glyphs.Own, whole.Glyphs.Count - whole.Glyphs.Own).Select(g => (ushort)g).ToArray();
        using var data = SKData.CreateCopy(FontSubset.Of(whole, made));
        using var typeface = SKTypeface.FromData(data);
        Assert.NotNull(typeface);
        Assert.Equal(whole.Glyphs.Count, typeface.GlyphCount);
        using var font = new SKFont(typeface, typeface.UnitsPerEm) { Hinting = SKFontHinting.None, LinearMetrics = true, Subpixel = true };
        using var wholeFont = SkiaFonts.At(face, typeface.UnitsPerEm);
        var widths = new float[made.Length];
        font.GetGlyphWidths(made, widths, []);
        Assert.Equal(made.Select(g => (int)whole.AdvanceOf(g)), widths.Select(w => (int)Math.Round(w)));
        foreach (var glyph in made)
        {
            using var outline = font.GetGlyphPath(glyph);
            var (drawn, ought, points) = (outline.Bounds, SKRect.Empty, 0);
            foreach (var part in whole.PartsOf(glyph))
            {
                using var path = wholeFont.GetGlyphPath(part.Id);
                var box = path.Bounds;
                box.Offset(part.X, -part.Y);
                (ought, points) = (points == 0 ? box : SKRect.Union(ought, box), points + path.PointCount);
            }

            Assert.Equal([ought.Left, ought.Top, ought.Right, ought.Bottom], [drawn.Left, drawn.Top, drawn.Right, drawn.Bottom], (a, b) => Math.Abs(a - b) <= 1.01f);
            Assert.Equal(points, outline.PointCount);
        }
    }

    private sealed class Within(int most) : IEqualityComparer<int>
    {
        public bool Equals(int x, int y) => Math.Abs(x - y) <= most;

        public int GetHashCode(int obj) => 0;
    }
}
