using System.Text;
using System.Text.Json.Nodes;
using PaperFlock.Flocks.Drafting;
using PaperFlock.Flocks.Editing;
using PaperFlock.Flocks.Lists;
using static PaperFlock.Packs.Figures.Shown;

namespace PaperFlock.Packs.Screen;

/// <summary>Ewes from what somebody copied out of a spreadsheet, or from a list it saved.</summary>
public static class ScreenPaste
{
    private const int MostShown = 8;

    /// <summary>More is no flock of one keeper, and would be looked at row by row.</summary>
    private const int MostRows = 5000;

    /// <param name="text">The flock file.</param>
    /// <param name="pasted">Cells with tabs, commas or semicolons between them.</param>
    /// <param name="tagColumn">The column somebody pointed at, from 0; -1 to find it by its heading.</param>
    /// <param name="nameColumn">As <paramref name="tagColumn"/>, of what they are called.</param>
    /// <returns>
    /// <c>rows</c>, the first of them, each a list of cells; <c>of</c>, how many rows there are; <c>columns</c>, how many; <c>keys</c>, what each column is taken for, null for one that is left out; <c>hasHeading</c>; <c>ask</c>,
    /// when nobody can tell which holds the tags; else <c>taken</c> and <c>refused</c>, how many ewes, <c>found</c>, what is wrong or left out, its line the row, and <c>text</c>, the flock file with the ewes that were taken, null when there are none.
    /// </returns>
    /// <remarks>A ewe whose tag is wrong is left out; of one with something else wrong, only that is.</remarks>
    public static JsonObject Read(string text, string name, string pasted, int tagColumn, int nameColumn)
    {
        var all = Cells(CsvTable.Read(name, Encoding.UTF8.GetBytes(pasted), new DiagnosticBag()));
        if (all.Length > MostRows)
        {
            throw new PackRequestException($"that is {ScreenText.Count(all.Length, "row")}, and a flock has at most {MostRows} ewes: is it the right list?");
        }

        if (FlockFile.OpenAsIs(name, Encoding.UTF8.GetBytes(text), out _) is not { Reading.Flock: { } flock } file)
        {
            throw new PackRequestException("the flock has mistakes in it: put them right first, then paste");
        }

        var isPointed = tagColumn >= 0 || nameColumn >= 0;
        var hasHeading = !all.IsEmpty && (!isPointed || HasHeading(all[0]));
        var list = WithoutBadCells(all.IsEmpty ? "" : Pointed(all, hasHeading, tagColumn, nameColumn));
        var keys = list.Keys;
        return new JsonObject
        {
            ["rows"] = List(all.Take(MostShown), row => List(row, cell => (JsonNode)cell.Text.Trim())),
            ["of"] = all.Length,
            ["columns"] = all.IsEmpty ? 0 : all.Max(row => row.Length),
            ["keys"] = List(keys, key => (JsonNode?)key),
            ["hasHeading"] = hasHeading && HasHeading(all[0]),
            ["ask"] = !all.IsEmpty && !keys.Contains("tag"),
            ["taken"] = list.Good.Length,
            ["refused"] = list.Rows.Length - list.Good.Length,
            ["found"] = ScreenFlock.Found(hasHeading ? list.Found : list.Found.Select(InRow), _ => []),
            ["text"] = list.Good.IsEmpty ? null : Encoding.UTF8.GetString(WithoutUnnamed(With(list.Good).File!).ToBytes()),
        };

        // Once more without the cells that were refused, until only tags are.
        EweList WithoutBadCells(string rows)
        {
            var list = Listed(rows);
            var found = list.Found;
            while (list.Keys.IndexOf("tag") is >= 0 and var tag)
            {
                var table = CsvTable.Read("list", Encoding.UTF8.GetBytes(rows), new DiagnosticBag());
                var bad = list.Found.Where(d => d.Severity == Severity.Error).Select(d => d.Span).ToHashSet();
                bad.ExceptWith(table.Rows.Where(row => tag < row.Length).Select(row => row[tag].Span));
                if (!table.Rows.Any(row => row.Any(cell => bad.Contains(cell.Span))))
                {
                    break;
                }

                rows = string.Concat(Cells(table).Select(row => Line(row.Select(cell => bad.Contains(cell.Span) ? "" : cell.Text))));
                list = Listed(rows);
                found = [.. found, .. list.Found.Where(d => !found.Any(f => f.Code == d.Code && f.Span.Line == d.Span.Line))];
            }

            return list with { Found = [.. found.OrderBy(d => d.Span.Line)] };
        }

        EweList Listed(string rows) => EweList.Read("what you pasted", Encoding.UTF8.GetBytes(rows), flock.Season.TupIn.Year, ewes => With(ewes) is var edit ? (edit.Source, edit.Diagnostics) : default);

        // Lines of dashes stand for tags nobody had typed yet, and here they are.
        FlockFile WithoutUnnamed(FlockFile added) => flock.Ewes.All(e => e.Tag.StartsWith(DraftEwe.TagLine, StringComparison.Ordinal))
            ? added.Apply(flock.Ewes.Select((_, i) => new RemoveFromList(FlockPlace.Top, "ewes", flock.Ewes.Length - 1 - i))).File ?? added
            : added;

        FlockEdit With(IEnumerable<DraftEwe> ewes) => file.Apply(AddToList.Ewes(ewes.Select(ewe => FlockValue.Section(ewe.Lines))));
    }

    /// <summary>A list that a spreadsheet saved, as <c>text</c> to go on with as if it had been pasted.</summary>
    /// <exception cref="PackRequestException">It is no such list.</exception>
    public static JsonObject Open(ReadOnlySpan<byte> bytes, string name)
    {
        if (bytes.StartsWith("PK"u8))
        {
            throw new PackRequestException($"the file {name} is a workbook: open it in the spreadsheet, and copy the rows from there, or save it as CSV");
        }

        var text = CsvTable.Read(name, bytes.ToArray(), new DiagnosticBag()).Source.Text;
        return bytes.StartsWith("%PDF"u8) || text.Any(c => char.IsControl(c) && c is not ('\t' or '\r' or '\n') && c < ' ')
            ? throw new PackRequestException($"the file {name} is no list: save the rows as CSV in the spreadsheet, or copy them and paste them here")
            : new JsonObject { ["text"] = text };
    }

    private static ImmutableArray<ImmutableArray<CsvCell>> Cells(CsvTable table) => table.Headings.IsEmpty ? [] : [table.Headings, .. table.Rows];

    /// <summary>A tag has a figure in it, and no heading over tags has one.</summary>
    private static bool HasHeading(ImmutableArray<CsvCell> first) => !first.Any(c => c.Text.Any(char.IsAsciiDigit));

    /// <summary>The same table with headings that say which column holds the tags and which the names; they are put over a list that has none.</summary>
    private static string Pointed(ImmutableArray<ImmutableArray<CsvCell>> all, bool hasHeading, int tagColumn, int nameColumn)
    {
        var heading = Enumerable.Range(0, all.Max(row => row.Length)).Select(i =>
            i == tagColumn ? "tag" : i == nameColumn ? "name" : hasHeading && i < all[0].Length && !Is(all[0][i], tagColumn, "tag") && !Is(all[0][i], nameColumn, "name") ? all[0][i].Text : "");
        return Line(heading) + string.Concat(all.Skip(hasHeading ? 1 : 0).Select(row => Line(row.Select(c => c.Text))));
    }

    /// <summary>Another column that calls itself what somebody has pointed at already.</summary>
    private static bool Is(CsvCell heading, int pointed, string word) => pointed >= 0 && heading.Text.Trim().Equals(word, StringComparison.OrdinalIgnoreCase);

    /// <summary>Without the heading that was put over the list.</summary>
    private static Diagnostic InRow(Diagnostic found) => found.Span.IsWholeFile ? found : found with { Span = found.Span with { Line = found.Span.Line - 1 } };

    private static string Line(IEnumerable<string> cells) =>
        string.Join(',', cells.Select(c => $"\"{c.Replace("\"", "\"\"", StringComparison.Ordinal)}\"")) + "\n";
}
