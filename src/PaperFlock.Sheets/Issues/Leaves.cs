namespace PaperFlock.Sheets.Issues;

/// <summary>Takes a sheet apart into what is put in and taken out of the pack in one piece.</summary>
internal static class Leaves
{
    public static IEnumerable<Leaf> Of(Sheet sheet) => sheet.Parts.IsEmpty
        ? ByFront(sheet).Select(sides => new Leaf(IdOf(sheet, sides), LabelOf(sides), sheet.Title, RowsOf(sides.Select(s => s.Page.Content)), sheet.Last))
        : sheet.Parts.Select(part => new Leaf(part.Id, part.Label, part.Title.ToString(), sheet.Use == SheetUse.Pinned || sheet.Definition.IsOneLeaf ? OnePage(RowsOf(part.Pieces)) : RowsOf(part.Pieces), sheet.Last));

    /// <summary>The same leaves by name alone, without reading them.</summary>
    public static IEnumerable<string> IdsOf(Sheet sheet) =>
        sheet.Parts.IsEmpty ? ByFront(sheet).Select(sides => IdOf(sheet, sides)) : sheet.Parts.Select(p => p.Id);

    /// <summary>Those of its leaves that are wanted; null when none is. A sheet made of parts comes whole.</summary>
    public static Sheet? Only(Sheet sheet, Func<string, bool> wanted)
    {
        if (!sheet.Parts.IsEmpty)
        {
            return sheet.Parts.Any(p => wanted(p.Id)) ? sheet : null;
        }

        ImmutableArray<SheetSide> sides = [.. ByFront(sheet).Where(s => wanted(IdOf(sheet, s))).SelectMany(s => s)];
        return sides.IsEmpty ? null : sheet with { Sides = sides };
    }

    /// <summary>Page code and number of the leaf's first page.</summary>
    public static string Id(string code, int firstPage) => $"{code} {firstPage.ToString(CultureInfo.InvariantCulture)}";

    /// <summary>The number of the front of the leaf that a page is on, where fronts and backs share one.</summary>
    public static int FirstPage(PageNumber page) => page.Side == PageSide.Back ? page.Number - 1 : page.Number;

    private static string IdOf(Sheet sheet, ImmutableArray<SheetSide> sides) => Id(sheet.Code, FirstPage(sides[0].Page.Number));

    private static string LabelOf(ImmutableArray<SheetSide> sides) =>
        sides.Length > 1 && !sides[1].IsBlank ? $"{sides[0].Label} and {sides[1].Page.Number.Number}" : sides[0].Label;

    private static ImmutableArray<LeafRow> RowsOf(IEnumerable<Piece> pieces) => [.. pieces.SelectMany(p => RowOnPage.Of(p)).Select(p => p.Row)];

    /// <summary>Heads that are repeated on every page count once, since pages come and go.</summary>
    private static ImmutableArray<LeafRow> OnePage(ImmutableArray<LeafRow> rows)
    {
        var said = new HashSet<string>(StringComparer.Ordinal);
        return rows.RemoveAll(r => r.Key.Kind == RowKind.Paragraph && !said.Add(r.Cells[0].Words));
    }

    private static IEnumerable<ImmutableArray<SheetSide>> ByFront(Sheet sheet)
    {
        var leaf = new List<SheetSide>();
        foreach (var side in sheet.Sides)
        {
            if (side.Page.Side == PageSide.Front && leaf.Count > 0)
            {
                yield return [.. leaf];
                leaf.Clear();
            }

            leaf.Add(side);
        }

        yield return [.. leaf];
    }
}
