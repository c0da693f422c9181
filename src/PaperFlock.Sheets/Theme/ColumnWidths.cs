namespace PaperFlock.Sheets.Theme;

/// <summary>Columns as wide as they look best, and where a longer word stands in one as wide as that: no word is cut in two.</summary>
internal sealed class ColumnWidths(ITextMeasurer measurer)
{
    /// <summary>Every weekday in every month, all with two figures.</summary>
    private static readonly ImmutableArray<string> SampleDays =
    [
        .. from month in Enumerable.Range(1, 12)
           from day in Enumerable.Range(20, 7)
           select DateText.Short(new LocalDate(2026, month, day)),
    ];

    /// <param name="points">What looks best.</param>
    /// <param name="words">What stands in it; lines break at their spaces.</param>
    public Track Fit(double points, TextStyle style, params IEnumerable<string> words) => Fit(points, style, Table.UsualPadding.Horizontal, words);

    /// <param name="padding">Points on both sides together, for cells that have not the usual one.</param>
    /// <inheritdoc cref="Fit(double, TextStyle, IEnumerable{string})"/>
    public Track Fit(double points, TextStyle style, double padding, params IEnumerable<string> words)
    {
        var wide = Widest(style, words) + padding;
        return Track.Fixed(wide <= points ? points : wide + 1);
    }

    /// <summary>The same for days such as "Mon 4 Jan".</summary>
    public Track FitDays(double points, TextStyle style, params IEnumerable<string> words) => Fit(points, style, SampleDays.Concat(words));

    /// <returns>Points; 0 where there are no words.</returns>
    public double Widest(TextStyle style, IEnumerable<string> words) =>
        words.SelectMany(text => text.Split(' ', '\n')).Select(word => measurer.WidthOf(word, style)).DefaultIfEmpty(0).Max();
}
