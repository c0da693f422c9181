
namespace PaperFlock.Planning.Feeding;

internal static class WeekWords
{
    /// <summary>Runs of following weeks that share something.</summary>
    /// <param name="sort">What they share; null leaves a week out.</param>
    public static List<List<FeedWeek>> Runs(IEnumerable<FeedWeek> weeks, Func<FeedWeek, bool?> sort)
    {
        var runs = new List<List<FeedWeek>>();
        bool? last = null;
        foreach (var week in weeks)
        {
            var now = sort(week);
            if (now is not null)
            {
                if (now != last)
                {
                    runs.Add([]);
                }

                runs[^1].Add(week);
            }

            last = now;
        }

        return runs;
    }

    /// <summary>Such as "in weeks 6 to 4 before lambing", "from week 2 before lambing on", "from the first due date on".</summary>
    public static string When(IReadOnlyList<FeedWeek> run) => (run[0].WeeksBefore, run[^1].WeeksBefore) switch
    {
        ( <= 0, _) => "from the first due date on",
        (var first, <= 0) => $"from week {first} before lambing on",
        var (first, last) when first == last => $"in week {first} before lambing",
        var (first, last) => $"in weeks {first} to {last} before lambing",
    };

    /// <summary>Such as "30 %" or "30 to 80 %".</summary>
    /// <param name="shares">Fractions, 0.3 for 30 %; never empty.</param>
    public static string Percent(IReadOnlyCollection<decimal> shares)
    {
        var low = Whole(shares.Min());
        var high = Whole(shares.Max());
        return low == high ? $"{low} %" : $"{low} to {high} %";
    }

    public static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static decimal Whole(decimal share) => Math.Round(share * 100, MidpointRounding.AwayFromZero);
}
