namespace PaperFlock.Sheets.RoundLog;

/// <summary>One day a page while they lamb: the rounds, then a row for each lambing, with the likeliest ewes printed in.</summary>
internal static class LambingDayLog
{
    private const int Printed = 5;

    public static Element Of(SheetContext context, RoundDay day)
    {
        var expected = LogText.Expected(context.Plan, day.Date, Printed);
        ImmutableArray<TableRow> rows = [.. expected.Select(e => Row(context, e)), Row(context, null)];
        return new Column(
            [
                HeavyDays.Day(context, day),
                Block.Column(
                    4,
                    new Row(
                        [
                            new RowCell(Track.Share(), Block.Heading("Lambings"), VerticalAlign.Bottom),
                            new RowCell(Track.Share(2), Block.Text("her card has room for the rest", TypeScale.Label, TextAlign.Right), VerticalAlign.Bottom),
                        ]),
                    new Table(Columns(context), [Head()], rows) { Name = "lambings", RowHeaders = true }),
                new LogLines(context.WriteIn.BarnRow, AtLeast: 0),
            ],
            9)
        { Name = DateText.Short(day.Date), About = RowKey.Of(day.Date) };
    }

    private static ImmutableArray<Track> Columns(SheetContext context)
    {
        var tick = context.Columns.Fit(Math.Max(context.WriteIn.BarnTick + 6, Mm(14)), TypeScale.Label, "all sucked", "navels");
        return [Track.Fixed(Mm(58)), context.Columns.Fit(Mm(19), TypeScale.Label, "lambed at"), context.Columns.Fit(Mm(26), TypeScale.Label, "ring lambs alive"), tick, tick, Track.Share()];
    }

    private static TableRow Head() => new(
    [
        Block.Cell("ewe", TypeScale.Label), Block.Cell("lambed at", TypeScale.Label, TextAlign.Centre), Block.Cell("ring lambs alive", TypeScale.Label, TextAlign.Centre),
        Block.Cell("all sucked", TypeScale.Label, TextAlign.Centre), Block.Cell("navels", TypeScale.Label, TextAlign.Centre), Block.Cell("pen, help given, anything wrong", TypeScale.Label),
    ]);

    private static TableRow Row(SheetContext context, EwePlan? ewe)
    {
        var tick = Block.Cell(Block.Tick(context.WriteIn.BarnTick));
        Element? who = ewe is null ? null : Block.Column(
            0,
            new Text([new Run(ewe.Ewe.Name ?? "no name", TypeScale.BodyBold), new Run(ewe.IsScanned ? "  " + $"scanned {ewe.Litter}" : "  " + "not scanned", TypeScale.Label)]),
            Block.Text(ewe.Ewe.Tag, new TextStyle(Face.Mono, 10)));
        return new TableRow(
            [Block.Cell(who), Block.Blank(), Block.Cell(Block.LambsToRing(ewe?.Litter ?? 0), TypeScale.Body, TextAlign.Centre), tick, tick, Block.Blank()],
            context.WriteIn.BarnRow,
            About: ewe is null ? null : RowKey.Of(ewe.Ewe));
    }
}
