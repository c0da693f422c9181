namespace PaperFlock.Sheets.RoundLog;

/// <summary>Two or three days a page, each with its rounds, its ewes to watch and its line for tomorrow.</summary>
internal static class HeavyDays
{
    public const double Spacing = 9;

    private static readonly TextStyle Large = new(Face.TextBold, 17);

    /// <param name="room">Height of the page's body in points: what the days leave is ruled for notes.</param>
    public static Element Of(SheetContext context, LogPage page, double room)
    {
        var days = page.Days.Select(d => Day(context, d)).ToArray();
        var left = room - days.Sum(d => Heights.Of(d, context.Page.UprightWidth, context) + Spacing);
        var notes = left > (2 * context.WriteIn.BarnRow) + 20
            ? [Block.Notes(context.WriteIn.BarnRow)]
            : ImmutableArray<Element>.Empty;
        return new Column([.. days.Select(d => (Element)new KeepTogether(d)), .. notes], Spacing);
    }

    public static Column Day(SheetContext context, RoundDay day) => new(
        [
            DayHead(context, day),
            new Table(
                RoundTable.Columns(context),
                [RoundTable.Head(context)],
                [.. day.Times.Select(t => RoundTable.Row(context, day.Date, t)), RoundTable.LeftForTomorrow(context)])
            { RowHeaders = true },
        ],
        3)
    { Name = DateText.Short(day.Date), About = RowKey.Of(day.Date) };

    private static Row DayHead(SheetContext context, RoundDay day) => new(
        [
            new RowCell(context.Columns.FitDays(Layout.Units.Mm(42), Large), Block.Text(DateText.Short(day.Date), Large) with { Tag = StructureTag.Heading(2) }, VerticalAlign.Bottom),
            new RowCell(Track.Fixed(Layout.Units.Mm(38)), Block.Text(LogText.Sun(day), TypeScale.Label), VerticalAlign.Bottom),
            new RowCell(Track.Share(), new Text(LogText.Watch(context.Plan, day.Date, TypeScale.Label), TextAlign.Right, 1.2), VerticalAlign.Bottom),
        ],
        6);
}
