namespace PaperFlock.Pdf.Fonts;

/// <summary>Widths as the sum of advances, which is how the PDF sets text: no kerning, no ligatures, no hinting.</summary>
internal sealed class TextMeasurer : ITextMeasurer
{
    public double WidthOf(ReadOnlySpan<char> text, TextStyle style)
    {
        var face = FontLibrary.Of(style.Face);
        var units = 0L;
        foreach (var rune in text.EnumerateRunes())
        {
            units += face[rune].Advance;
        }

        return units * style.Size / face.UnitsPerEm;
    }

    public FontMetrics MetricsOf(TextStyle style)
    {
        var face = FontLibrary.Of(style.Face);
        return new FontMetrics(face.Ascent * style.Size, face.Descent * style.Size, face.CapHeight * style.Size);
    }
}
