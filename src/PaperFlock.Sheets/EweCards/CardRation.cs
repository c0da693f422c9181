namespace PaperFlock.Sheets.EweCards;

/// <summary>Her concentrate at one feed, row by row of her chart to the last; rows with the same amount are said once.</summary>
internal static class CardRation
{
    private const int Columns = 3;

    /// <summary>Three lines of columns: the last steps, since those are still to come when the card is in the hand.</summary>
    private const int MostSteps = 3 * Columns;

    public static Element? Of(SheetContext context, EwePlan ewe, double width)
    {
        if (!ewe.IsCarrying || context.Plan.Feeding.ChartOf(ewe) is not { } chart)
        {
            return null;
        }

        var steps = chart.Steps;
        if (chart.IsForageOnly || steps.Length <= 2)
        {
            return Block.Text(Sentence(context, chart, steps), TypeScale.Label, leading: 1.25);
        }

        var rows = ImmutableArray.CreateBuilder<TableRow>();
        foreach (var chunk in steps.TakeLast(MostSteps).Chunk(Columns))
        {
            rows.Add(Row("from", chunk.Select(s => DateText.DayMonth(s.From)), TypeScale.Label));
            rows.Add(Row(context.Amounts.AtFeedUnit, chunk.Select(s => Fed(context, s)), TypeScale.LabelBold));
        }

        return Block.Column(
            2,
            Block.Text($"fed by {chart.Code}", TypeScale.Label),
            new Table([Track.Fixed(width * 0.22), .. Enumerable.Repeat(Track.Share(), Columns)], [], rows.ToImmutable()) { RowHeaders = true });
    }

    private static string Sentence(SheetContext context, FeedChart chart, ImmutableArray<FeedRow> steps) => chart.IsForageOnly
        ? "Forage alone, no concentrate."
        : $"Fed by {chart.Code}: {string.Join(", ", steps.Select((s, i) => $"{Fed(context, s)}{(i == 0 ? $" {context.Amounts.AtFeedUnit}" : "")} from {DateText.Short(s.From)}"))}.";

    /// <summary>"0.45 twice".</summary>
    private static string Fed(SheetContext context, FeedRow row) => row.FedAt.IsEmpty ? "none" : $"{context.Amounts.ForHeads(row, 1)}\u00a0{FeedText.Times(row.FedAt.Length)}";

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
