namespace PaperFlock.Sheets.FeedCharts;

/// <summary>Above the table: where they stand, who they are, and how it is read.</summary>
internal static class FeedLead
{
    /// <summary>More are counted and not named: the card of each says where she is.</summary>
    private const int MostNamed = 14;

    public static Element Of(SheetContext context, FeedChart chart) => Block.Column(
        3,
        [
            .. Places(context, chart),
            new Text(
                [
                    new Run("Count the heads at the trough. ", TypeScale.BodyBold),
                    new Run($"{Capital(context.Amounts.AtFeedUnit)} of {context.Flock.Feeds.Concentrate.Name} for ", TypeScale.Body),
                    new Run("all of them together, at each feed.", TypeScale.BodyBold),
                ],
                TextAlign.Left,
                1.2),
        ]);

    /// <summary>Places they stand in while it lasts, in the order they come to them, with the most of them that are there. Today has no part in it: days
    /// that pass change no sheet.</summary>
    private static IEnumerable<Element> Places(SheetContext context, FeedChart chart)
    {
        var plan = context.Plan;
        var troughs = plan.Feeding.Troughs.Where(t => t.Chart == chart.Code).ToList();
        var runs = ImmutableArray.CreateBuilder<Run>();
        foreach (var place in troughs.GroupBy(t => t.Place))
        {
            var fullest = place.MaxBy(t => t.Ewes.Length)!;
            var later = place.Min(t => t.From) is var from && from > chart.Start ? $" from {DateText.Short(from)}" : "";
            runs.Add(new Run($"{(runs.Count == 0 ? "" : "    ")}{FeedText.Place(place.Key)} {fullest.Ewes.Length}{later} ", TypeScale.BodyBold));
            var ewes = plan.Ewes.Where(e => fullest.Ewes.Any(o => o.Tag == e.Ewe.Tag)).ToList();
            if (ewes.Count > MostNamed)
            {
                continue;
            }

            for (var i = 0; i < ewes.Count; i++)
            {
                runs.Add(Who.Called(ewes[i].Ewe, TypeScale.Body));
                var dots = chart.Joined.Any(j => j.Ewe.Tag == ewes[i].Ewe.Tag) || chart.Kind == FeedKind.Mixed ? Dots.After(Math.Max(1, ewes[i].Litter)) : "";
                runs.Add(new Run(dots + (i + 1 < ewes.Count ? " \u00b7 " : ""), TypeScale.Body));
            }
        }

        return runs.Count == 0 ? [] : [new Text(runs.ToImmutable(), TextAlign.Left, 1.2)];
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
