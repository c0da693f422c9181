namespace PaperFlock.Pdf.Structure;

/// <summary>What a structure tree must be for a reader to make sense of it: ISO 32000-1, 14.8.4, and ISO 14289-1, 7.</summary>
internal static class StructureRules
{
    /// <returns>What is wrong, with the 0-based page it begins on.</returns>
    public static IEnumerable<(int Page, string Problem)> FaultsOf(StructureTree tree)
    {
        var all = tree.Document.All.ToList();
        return all.SelectMany(FaultsOf).Concat(Headings(all));
    }

    private static IEnumerable<(int Page, string Problem)> FaultsOf(StructureElement element)
    {
        if (!IsInItsPlace(element))
        {
            yield return (element.Page, $"{element.Type} stands in {element.Parent?.Type}");
        }

        // 7.3 and 7.18.5: what replaces them for whoever does not see them.
        if (element.Kind == StructureKind.Figure && string.IsNullOrWhiteSpace(element.Tag?.Says))
        {
            yield return (element.Page, "a figure without words for what it shows");
        }

        // 7.5: so that every cell has the header of its column.
        if (element.Kind == StructureKind.Table && element.Elements.Select(row => row.Elements.Sum(cell => cell.Tag?.Columns ?? 1)).Distinct().Order().ToArray() is { Length: > 1 } widths)
        {
            yield return (element.Page, $"the rows of a table cover {string.Join(" or ", widths)} columns");
        }
    }

    private static bool IsInItsPlace(StructureElement element) => element.Kind switch
    {
        StructureKind.Row => element.Parent?.Kind == StructureKind.Table,
        StructureKind.HeaderCell or StructureKind.Cell => element.Parent?.Kind == StructureKind.Row,
        StructureKind.ListItem => element.Parent?.Parent?.Kind == StructureKind.List,
        StructureKind.Label => element.Parent?.Type == "LI",
        null => true,
        _ => element.Parent?.Kind is not (StructureKind.Table or StructureKind.Row or StructureKind.List),
    };

    /// <summary>7.4.2: the first is of level 1, and none skips a level on the way down.</summary>
    private static IEnumerable<(int Page, string Problem)> Headings(IEnumerable<StructureElement> all)
    {
        var level = 0;
        foreach (var heading in all.Where(element => element.Kind == StructureKind.Heading))
        {
            var before = level;
            level = heading.Tag!.Level;
            if (level > before + 1)
            {
                yield return (heading.Page, before == 0 ? $"the first heading is of level {level}" : $"a heading of level {level} follows one of level {before}");
            }
        }
    }
}
