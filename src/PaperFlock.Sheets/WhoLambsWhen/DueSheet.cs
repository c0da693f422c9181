namespace PaperFlock.Sheets.WhoLambsWhen;

/// <summary>A row a ewe in the order they are due, the days she may lamb on across, and how many to expect each night at the foot.</summary>
internal static class DueSheet
{
    public static readonly SheetDefinition Definition = new("due", "DUE", SheetUse.Pinned)
    {
        Lives = "wall or shed",
        Purpose = "which ewes may lamb tonight, and how many; strike off when lambed",
        IsForSitter = true,
        IsOneLeaf = true,
        IsStruckByHand = true,
        OnBack = new("what was seen at lambing", [("night of, time", 2), ("ewe", 2), ("what was seen, what was done, who helped", 6)]),
        Make = Make,
    };

    /// <summary>Before that most are not scanned, and everything on it would change: about ten weeks before the first may lamb (common practice, no source).</summary>
    private const int WorthPrintingDays = 70;

    private const string Title = "Who lambs when";

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        ImmutableArray<DueRow> rows = [.. PencilLists.WhoLambsWhen(context.Plan).Select((row, i) => new DueRow(i + 1, row.Ewe, row.Window)).Where(row => context.MayLamb(row.Ewe))];
        if (rows.IsEmpty)
        {
            return [];
        }

        var (first, last) = (rows.Min(r => r.Window.Earliest).PlusDays(-WorthPrintingDays), rows.Max(r => r.LastChance));
        if (!context.IsNamed(Definition) && (context.Plan.AsOf < first || context.Plan.AsOf > last))
        {
            return [];
        }

        var (format, pages) = Pages(context, rows);
        var body = new Column([.. pages.SelectMany((page, i) => i == 0 ? [format.Page(page)] : (Element[])[new PageBreak(), format.Page(page)])]);
        return [Binder.Bind(context, Definition, Definition.Code, Title, body, format.Design(Definition.Code, Title)) with { Last = last }];
    }

    /// <summary>Lying where one page is enough. Standing, a page holds more ewes and fewer days.</summary>
    private static (DueFormat Format, ImmutableArray<ImmutableArray<DueRow>> Pages) Pages(SheetContext context, ImmutableArray<DueRow> rows)
    {
        var lying = new DueFormat(context, rows, Papers.Landscape(context.Page.Paper));
        var standing = new DueFormat(context, rows, context.Page.Paper);
        var (wide, tall) = (lying.Split(rows), standing.Split(rows));
        return wide.Length > tall.Length && tall.All(standing.Holds) ? (standing, tall) : (lying, wide);
    }
}
