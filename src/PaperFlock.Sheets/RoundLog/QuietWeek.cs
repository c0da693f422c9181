namespace PaperFlock.Sheets.RoundLog;

/// <summary>A whole week on one page: two or so rounds a day, and room for notes below.</summary>
internal static class QuietWeek
{
    public static Element Of(SheetContext context, LogPage page)
    {
        var rows = ImmutableArray.CreateBuilder<TableRow>();
        foreach (var day in page.Days)
        {
            for (var i = 0; i < day.Times.Length; i++)
            {
                rows.Add(RoundTable.Row(context, day.Date, day.Times[i], saysDay: true, i == 0 && rows.Count > 0 ? Lines.Box * 1.5 : null) with
                {
                    KeepWithNext = i + 1 < day.Times.Length,
                });
            }
        }

        rows.Add(RoundTable.LeftForTomorrow(context));
        return new Column(
            [
                new Table(RoundTable.Columns(context), [RoundTable.Head(context)], rows.ToImmutable()) { RowHeaders = true },
                Block.Notes(context.WriteIn.BarnRow),
            ],
            9);
    }
}
