namespace PaperFlock.Sheets.RoundLog;

/// <summary>A row a round: the hour it should be walked, when it was, and what was looked at.</summary>
internal static class RoundTable
{
    /// <summary>More below than above: the tails of the small words must clear the frame where a page ends.</summary>
    private static readonly Edges Hour = new(4, 0.5, 4, 1.5);

    public static ImmutableArray<Track> Columns(SheetContext context)
    {
        var tick = context.Columns.Fit(
            Math.Max(context.WriteIn.BarnTick + 8, Mm(14)), TypeScale.Label with { Size = 9.5 },
            "all on their feet", "all eating", "water", "hay");
        return [Track.Fixed(Mm(31)), Track.Fixed(Mm(18)), Track.Fixed(Mm(18)), tick, tick, tick, tick, Track.Share()];
    }

    public static TableRow Head(SheetContext context)
    {
        var heads = LogText.EwesToCount(context.Plan);
        return new TableRow(
        [
            Block.Cell("round", TypeScale.Label), Small("walked at"), Small($"seen, of {heads}"), Small("all on their feet"), Small("all eating"),
            Small("water"), Small("hay"), Block.Cell("which ewe, what you saw and did, who you told", TypeScale.Label),
        ]);
    }

    /// <param name="saysDay">Where the table is not one day's alone.</param>
    public static TableRow Row(SheetContext context, LocalDate day, Round round, bool saysDay = false, double? ruleAbove = null)
    {
        var tick = Block.Cell(Block.Tick(context.WriteIn.BarnTick));
        var name = RoundText.Name(round);
        var label = saysDay ? $"{DateText.WeekdayNumber(day)} {name}" : name;
        return new TableRow(
            [
                new TableCell(
                    Block.Column(0, Block.Text(DateText.Clock(round.At), new TextStyle(Face.TextBold, 17), leading: 1.0), Block.Text(label, TypeScale.Label with { Size = 9.5 }, leading: 1.05)),
                    Padding: Hour),
                Block.Blank(), Block.Blank(), tick, tick, tick, tick, Block.Blank(),
            ],
            context.WriteIn.BarnRow,
            ruleAbove,
            About: RowKey.OfRound(day, name, label));
    }

    /// <summary>The last line of a day: what the next person must know.</summary>
    public static TableRow LeftForTomorrow(SheetContext context) => new(
        [new TableCell(Block.Text("left for tomorrow", TypeScale.LabelBold), 8, VerticalAlign.Top, Edges.Of(4, 3))],
        context.WriteIn.BarnRow);

    private static TableCell Small(string words) => new(Block.Text(words, TypeScale.Label with { Size = 9.5 }, TextAlign.Centre, 1.1), Padding: Edges.Of(1, 2));
}
