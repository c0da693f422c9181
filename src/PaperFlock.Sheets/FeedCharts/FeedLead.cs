namespace PaperFlock.Sheets.FeedCharts;

/// <summary>Above the table: where they stand, who they are, and how it is read.</summary>
internal static class FeedLead
{
    /// <summary>More are counted and not named: the card of each says where she is.</summary>
    private const int MostNamed = 14;

    public static Element Of(SheetContext context, FeedChart chart, double width) => Block.Column(
        3,
        [
            .. Places(context, chart, width),
            HowToRead(context, "Count the heads at the trough. ", "all of them together, at each feed."),
        ]);

    /// <param name="count">What to count.</param>
    /// <param name="whom">Whom the figures are for.</param>
    public static Text HowToRead(SheetContext context, string count, string whom)
    {
        var unit = context.Amounts.AtFeedUnit;
        return new Text(
            [
                new Run(count, TypeScale.BodyBold),
                new Run($"{char.ToUpperInvariant(unit[0])}{unit[1..]} of {context.Flock.Feeds.Concentrate.Name} for ", TypeScale.Body),
                new Run(whom, TypeScale.BodyBold),
            ],
            TextAlign.Left,
            1.2);
    }

    /// <summary>Places they stand in while it lasts, in the order they come to them, with the most that were planned there at once. Today has no part in
    /// it: days that pass change no sheet. Who is lost leaves the names, and is struck by hand on older paper; the number beside them is not worth a new leaf.</summary>
    private static IEnumerable<Element> Places(SheetContext context, FeedChart chart, double width)
    {
        var places = context.Plan.Feeding.Troughs.Where(t => t.Chart == chart.Code).GroupBy(t => t.Place)
            .Select(troughs => (Words: PlaceWords(troughs.Key, troughs.Min(t => t.From), chart), Ewes: troughs.MaxBy(t => t.Ewes.Length)!.Ewes))
            .ToList();
        var widest = places.Select(p => context.Measurer.WidthOf(p.Words, TypeScale.BodyBold)).DefaultIfEmpty(0).Max();
        foreach (var (words, ewes) in places)
        {
            var count = ewes.Length.ToString(CultureInfo.InvariantCulture);
            yield return new Row(
                [
                    new RowCell(Track.Fixed(Math.Min(widest + 2, width * 0.4)), Block.Text(words, TypeScale.BodyBold, leading: 1.2)),
                    new RowCell(Track.Fixed(context.Measurer.WidthOf("000", TypeScale.BodyBold)), Block.Text(count, TypeScale.BodyBold, TextAlign.Right, 1.2) with { About = NotContent.Instance }),
                    new RowCell(Track.Share(), ewes.Length > MostNamed ? Block.Text("ewes", TypeScale.Body, leading: 1.2) : Names(context, chart, ewes)),
                ],
                6);
        }
    }

    private static string PlaceWords(Place place, LocalDate from, FeedChart chart) => FeedText.Place(place) + (from > chart.Start ? $" from {DateText.Short(from)}" : "");

    private static Text Names(SheetContext context, FeedChart chart, ImmutableArray<Ewe> planned)
    {
        var ewes = context.Plan.Ewes.Where(e => !e.IsLost && planned.Any(o => o.Tag == e.Ewe.Tag)).ToList();
        return new Text([.. Who.AllCalled(ewes, DotsOf)], TextAlign.Left, 1.2);

        string DotsOf(EwePlan ewe) => chart.Joined.Any(j => j.Ewe.Tag == ewe.Ewe.Tag) || chart.Kind == FeedKind.Mixed ? Dots.After(Math.Max(1, ewe.Litter)) : "";
    }
}
