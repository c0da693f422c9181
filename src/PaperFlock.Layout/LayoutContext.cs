using System.Collections.Concurrent;
using System.Collections.Immutable;
using PaperFlock.Layout.Breaking;
using PaperFlock.Layout.Elements;

namespace PaperFlock.Layout;

/// <summary>
/// What one run of layout shares: the measurer, and what it has measured already. Usable from several threads at once.
/// Everything kept is a pure function of its key, so no answer depends on who asked first.
/// </summary>
public sealed class LayoutContext(ITextMeasurer measurer)
{
    /// <summary>Many more locks than cores, so that threads seldom wait for one another.</summary>
    private const int Locks = 61;

    private readonly ConcurrentDictionary<TextStyle, StyleWidths> _styles = new();
    private readonly ConcurrentDictionary<(Run Run, double Width), BrokenText> _broken = new(Locks, 1021);

    public ITextMeasurer Measurer { get; } = measurer;

    /// <summary>Width in points of a word, which the measurer is asked once.</summary>
    internal double WidthOf(ReadOnlySpan<char> word, TextStyle style) => Style(style).WidthOf(word);

    /// <summary>The same of a whole line.</summary>
    internal double WidthOf(string line, TextStyle style) => Style(style).WidthOf(line);

    internal FontMetrics MetricsOf(TextStyle style) => Style(style).Metrics;

    /// <summary>The lines of a paragraph. In one style, as nearly all are, the same words are broken once for each width, wherever they are said.</summary>
    internal BrokenText Break(ImmutableArray<Run> runs, double width)
    {
        if (runs.Length != 1)
        {
            return LineBreaker.Break(runs, width, this);
        }

        // Not GetOrAdd with a closure: this is asked for every cell of every table.
        var key = (runs[0], width);
        if (!_broken.TryGetValue(key, out var broken))
        {
            broken = LineBreaker.Break(runs, width, this);
            _broken.TryAdd(key, broken);
        }

        return broken;
    }

    private StyleWidths Style(TextStyle style)
    {
        if (!_styles.TryGetValue(style, out var widths))
        {
            widths = _styles.GetOrAdd(style, new StyleWidths(Measurer, style));
        }

        return widths;
    }

    private sealed class StyleWidths
    {
        private readonly ITextMeasurer _measurer;
        private readonly TextStyle _style;
        private readonly ConcurrentDictionary<string, double> _widths = new(Locks, 251, StringComparer.Ordinal);
        private readonly ConcurrentDictionary<string, double>.AlternateLookup<ReadOnlySpan<char>> _lookup;

        public StyleWidths(ITextMeasurer measurer, TextStyle style)
        {
            (_measurer, _style) = (measurer, style);
            _lookup = _widths.GetAlternateLookup<ReadOnlySpan<char>>();
            Metrics = measurer.MetricsOf(style);
        }

        public FontMetrics Metrics { get; }

        public double WidthOf(string line)
        {
            if (!_widths.TryGetValue(line, out var width))
            {
                width = _measurer.WidthOf(line, _style);
                _widths.TryAdd(line, width);
            }

            return width;
        }

        public double WidthOf(ReadOnlySpan<char> word)
        {
            if (!_lookup.TryGetValue(word, out var width))
            {
                width = _measurer.WidthOf(word, _style);
                _lookup.TryAdd(word, width);
            }

            return width;
        }
    }
}
