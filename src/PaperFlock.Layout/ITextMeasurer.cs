namespace PaperFlock.Layout;

/// <summary>All that layout knows of fonts. Thread-safe; the same question always has the same answer.</summary>
public interface ITextMeasurer
{
    /// <summary>Advance width in points of <paramref name="text"/> set on one line.</summary>
    double WidthOf(ReadOnlySpan<char> text, TextStyle style);

    FontMetrics MetricsOf(TextStyle style);
}

/// <summary>Distances from the baseline in points, all positive.</summary>
/// <param name="Ascent">Up to the top of the tallest letter.</param>
/// <param name="Descent">Down to the foot of the lowest.</param>
/// <param name="CapHeight">Up to the top of a capital.</param>
public readonly record struct FontMetrics(double Ascent, double Descent, double CapHeight);
