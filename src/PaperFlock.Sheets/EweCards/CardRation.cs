namespace PaperFlock.Sheets.EweCards;

/// <summary>Her concentrate a day, row by row of her chart to the last; rows with the same amount are said once.</summary>
internal static class CardRation
{
    private const int Columns = 4;

    /// <summary>Two lines of columns: the last steps, since those are still to come when the card is in the hand.</summary>
    private const int MostSteps = 2 * Columns;

    public static Element? Of(SheetContext context, EwePlan ewe, double width)
    {
        if (!ewe.IsCarrying || context.Plan.Feeding.ChartOf(ewe) is not { } chart)
        {
            return null;
        }

        var steps = Steps(chart);
        if (chart.IsForageOnly || steps.Length <= 2)
        {
            return Block.Text(Sentence(context, chart, steps), TypeScale.Label, leading: 1.25);
        }

        var rows = ImmutableArray.CreateBuilder<TableRow>();
        foreach (var chunk in steps.TakeLast(MostSteps).Chunk(Columns))
        {
            rows.Add(Row("from", chunk.Select(s => DateText.DayMonth(s.From)), TypeScale.Label));
            rows.Add(Row($"{context.Amounts.FeedUnit} a day", chunk.Select(s => context.Amounts.PlainFigure(s.KgPerEwePerDay)), TypeScale.LabelBold));
        }

        return Block.Column(
            2,
            Block.Text($"fed by {chart.Code}", TypeScale.Label),
            new Table([Track.Fixed(width * 0.22), .. Enumerable.Repeat(Track.Share(), Columns)], [], rows.ToImmutable()) { RowHeaders = true });
    }

    /// <summary>The rows in which her amount changes.</summary>
    internal static ImmutableArray<FeedRow> Steps(FeedChart chart) =>
        [.. chart.Rows.Where((r, i) => i == 0 || chart.Rows[i - 1].KgPerEwePerDay != r.KgPerEwePerDay)];

    private static string Sentence(SheetContext context, FeedChart chart, ImmutableArray<FeedRow> steps) => chart.IsForageOnly
        ? "Forage alone, no concentrate."
        : $"Fed by {chart.Code}: {string.Join(", ", steps.Select((s, i) => $"{context.Amounts.Plain(s.KgPerEwePerDay)}{(i == 0 ? " a day" : "")} from {DateText.Short(s.From)}"))}.";

    private static TableRow Row(string caption, IEnumerable<string> values, TextStyle style)
    {
        var cells = values.Select(v => Block.Cell(v, style, TextAlign.Centre)).ToList();
        while (cells.Count < Columns)
        {
            cells.Add(Block.Blank());
        }

        return new TableRow([Block.Cell(caption, TypeScale.Label), .. cells]);
    }
}
