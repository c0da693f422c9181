namespace PaperFlock.Layout.Tests.Fakes;

/// <summary>Every character is 0.6 em wide: 6 pt in the usual style.</summary>
internal sealed class FakeMeasurer : ITextMeasurer
{
    public double WidthOf(ReadOnlySpan<char> text, TextStyle style) => 0.6 * style.Size * text.Length;

    public FontMetrics MetricsOf(TextStyle style) => new(0.8 * style.Size, 0.2 * style.Size, 0.7 * style.Size);
}
