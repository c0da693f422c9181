using System.Collections.Immutable;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.Theme;

namespace PaperFlock.Sheets.FeedCharts;

/// <summary>What goes into the trough at one feed: the amount, and below it in small words the same in other measures.</summary>
/// <param name="Small">Empty where there is nothing else to say.</param>
internal sealed record FeedAmount(string Large, string Small)
{
    public const double LargeLeading = 0.9;
    public static readonly TextStyle SmallStyle = TypeScale.Body;

    /// <summary>Letters and marks that hang below the line.</summary>
    private const string Tails = "gjpqy,;";

    /// <summary>Points of white between a tail and the words below it.</summary>
    private const double Clear = 0.6;

    /// <param name="columns">Feeds of a day that have a column; more of them share one.</param>
    public static FeedAmount Of(SheetContext context, FeedWeek week, int columns)
    {
        var (first, second) = context.Amounts.FeedParts(week.KgPerFeedForGroup);
        var scoops = week.ScoopsPerFeed is { } s ? Amounts.Scoops(s) : context.Flock.Feeds.Concentrate.Scoop is null ? null : "weigh it";
        var times = week.FeedsPerDay > columns ? English.Plural(week.FeedsPerDay, $"{week.FeedsPerDay}\u00a0time a day", $"{week.FeedsPerDay}\u00a0times a day") : null;
        return new FeedAmount(first, string.Join(" · ", new[] { second, scoops, times }.OfType<string>()));
    }

    /// <summary>Points between the two lines that keep the tails of the large letters off the small words; 0 where none of the amounts has any words below a tail.</summary>
    public static double Gap(IEnumerable<FeedAmount> amounts, TextStyle large, SheetContext context)
    {
        if (!amounts.Any(a => a.HasWordsBelowATail(large, context.Measurer)))
        {
            return 0;
        }

        var (above, below) = (context.Measurer.MetricsOf(large), context.Measurer.MetricsOf(SmallStyle));
        var apart = ((LargeLeading * large.Size) - above.Ascent + above.Descent + SmallStyle.Size + below.Ascent - below.Descent) / 2;
        return Math.Max(0, (TypeScale.TailOfEm * large.Size) + Clear + (TypeScale.AscenderOfEm * SmallStyle.Size) - apart);
    }

    public Column Element(TextStyle large, double gap) => new(
        [
            Block.Text(Large, large, TextAlign.Centre, LargeLeading),
            .. Small.Length > 0 ? [(Element)Block.Text(Small, SmallStyle, TextAlign.Centre, 1.0)] : ImmutableArray<Element>.Empty,
        ],
        gap);

    /// <summary>Both lines are set about the same middle.</summary>
    private bool HasWordsBelowATail(TextStyle large, ITextMeasurer measurer)
    {
        var left = -measurer.WidthOf(Large, large) / 2;
        var half = measurer.WidthOf(Small, SmallStyle) / 2;
        return Enumerable.Range(0, Large.Length).Any(i => Tails.Contains(Large[i], StringComparison.Ordinal)
            && left + measurer.WidthOf(Large.AsSpan(0, i), large) < half && left + measurer.WidthOf(Large.AsSpan(0, i + 1), large) > -half);
    }
}
