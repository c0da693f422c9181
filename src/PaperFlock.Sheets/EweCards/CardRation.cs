namespace PaperFlock.Sheets.EweCards;

/// <summary>Her concentrate at one feed, row by row of her chart to the last; rows with the same amount are said once.</summary>
internal static class CardRation
{
    private const int Columns = 3;

    /// <summary>Three lines of columns: the last steps, since those are still to come when the card is in the hand.</summary>
    private const int MostSteps = 3 * Columns;

    public static Element? Of(SheetContext context, EwePlan ewe)
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

        return Block.Column(
            2,
            Block.Text($"fed by {chart.Code}: {context.Amounts.AtFeedUnit} at a feed, from", TypeScale.Label),
            new Table([.. Enumerable.Repeat(Track.Share(), Columns)], [], [.. steps.TakeLast(MostSteps).Chunk(Columns).Select(chunk => Row(context, chunk))]));
    }

    private static string Sentence(SheetContext context, FeedChart chart, ImmutableArray<FeedRow> steps) => chart.IsForageOnly
        ? "Forage alone, no concentrate."
        : $"Fed by {chart.Code}: {string.Join(", ", steps.Select((s, i) => $"{Fed(context, s)}{(i == 0 ? $" {context.Amounts.AtFeedUnit}" : "")} from {DateText.Short(s.From)}"))}.";

    /// <summary>"0.45 twice".</summary>
    private static string Fed(SheetContext context, FeedRow row) => row.FedAt.IsEmpty ? "none" : $"{context.Amounts.ForHeads(row, 1)}\u00a0{FeedText.Times(row.FedAt.Length)}";

    private static TableRow Row(SheetContext context, FeedRow[] steps) => new(
        [
            .. steps.Select(s => Block.Cell(Block.Column(0, Block.Text(DateText.Short(s.From), TypeScale.Label, TextAlign.Centre), Block.Text(Fed(context, s), TypeScale.LabelBold, TextAlign.Centre)))),
            .. Enumerable.Repeat(Block.Blank(), Columns - steps.Length),
        ]);
}
