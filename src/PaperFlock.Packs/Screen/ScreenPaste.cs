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
    /// <c>rows</c>, the first of them, each a list of cells; <c>of</c>, how many there are; <c>columns</c>, how many; <c>keys</c>, what each column is taken for, null for one that is left out; <c>hasHeading</c>; <c>ask</c>,
    /// when nobody can tell which holds the tags; else <c>taken</c> and <c>refused</c>, how many ewes, <c>found</c>, what is wrong or left out, and <c>text</c>, the flock file with the ewes that were taken, null when there are none.
    /// </returns>
    public static JsonObject Read(string text, string name, string pasted, int tagColumn, int nameColumn)
    {
        var bag = new DiagnosticBag();
        var csv = CsvTable.Read("what you pasted", Encoding.UTF8.GetBytes(pasted), bag);
        var all = csv.Rows;
        if (all.Length > MostRows)
        {
            throw new PackRequestException($"that is {ScreenText.Count(all.Length, "row")}, and a flock has at most {MostRows} ewes: is it the right list?");
        }

        if (FlockFile.OpenAsIs(name, Encoding.UTF8.GetBytes(text), out _) is not { Reading.Flock: { } flock } file)
        {
            throw new PackRequestException("the flock has mistakes in it: put them right first, then paste");
        }

        var width = all.IsEmpty ? 0 : all.Max(row => row.Length);
        var table = all.IsEmpty ? null : HeadedTable.Of(csv, EweList.IsKnown, tagColumn < 0 ? null : (tagColumn + 1).ToString(CultureInfo.InvariantCulture));
        var list = EweList.Read(csv, table is null || nameColumn < 0 ? table : Named(table, nameColumn, width), flock.Season.TupIn.Year, bag, ewes =>
        {
            var edit = With(ewes.Select(e => e.Lines));
            return (edit.Source, edit.Diagnostics);
        });
        return new JsonObject
        {
            ["rows"] = List(all.Take(MostShown), row => List(row, cell => (JsonNode)cell.Text.Trim())),
            ["of"] = all.Length,
            ["columns"] = width,
            ["keys"] = List(Enumerable.Range(0, width), at => (JsonNode?)list.Keys.ElementAtOrDefault(at)),
            ["hasHeading"] = table is { Headings.IsEmpty: false },
            ["ask"] = tagColumn < 0 && table is null && !all.IsEmpty,
            ["taken"] = list.Good.Length,
            ["refused"] = list.Rows.Length - list.Good.Length,
            ["found"] = ScreenFlock.Found(list.Found, _ => []),
            ["text"] = list.Good.IsEmpty ? null : Encoding.UTF8.GetString(WithoutUnnamed(With(list.Good.Select(e => e.Lines)).File!).ToBytes()),
        };

        // Lines of dashes stand for tags nobody had typed yet, and here they are.
        FlockFile WithoutUnnamed(FlockFile added) => flock.Ewes.All(e => e.Tag.StartsWith(DraftEwe.TagLine, StringComparison.Ordinal))
            ? added.Apply(flock.Ewes.Select((_, i) => new RemoveFromList(FlockPlace.Top, "ewes", flock.Ewes.Length - 1 - i))).File ?? added
            : added;

        FlockEdit With(IEnumerable<ImmutableArray<(string Key, FlockValue Value)>> ewes) => file.Apply(AddToList.Ewes(ewes.Select(lines => FlockValue.Section(lines))));
    }

    /// <summary>A list that a spreadsheet saved, as <c>text</c> to go on with as if it had been pasted.</summary>
    /// <exception cref="PackRequestException">It is no such list.</exception>
    public static JsonObject Open(ReadOnlySpan<byte> bytes, string name)
    {
        var bag = new DiagnosticBag();
        var text = CsvTable.Read(name, bytes.ToArray(), bag).Source.Text;
        if (text.Length == 0 && bag.ToSorted() is [var other, ..])
        {
            // What follows is for whoever types file names.
            throw new PackRequestException($"{other.Message}: {other.Advice.Split('\n')[0]}");
        }

        return text.Any(c => c < ' ' && c is not ('\t' or '\r' or '\n'))
            ? throw new PackRequestException($"the file {name} is no list: save the rows as CSV in the spreadsheet, or copy them and paste them here")
            : new JsonObject { ["text"] = text };
    }

    /// <summary>The same table with a heading that says which column holds the names, and no other that does.</summary>
    private static HeadedTable Named(HeadedTable table, int nameColumn, int width)
    {
        var blank = new CsvCell("", table.Rows.IsEmpty ? default : table.Rows[0][0].Span);
        return table with
        {
            Headings = [.. Enumerable.Range(0, width).Select(at => table.Headings.ElementAtOrDefault(at) ?? blank).Select((cell, at) =>
                at == nameColumn ? cell with { Text = "name" } : cell.Text.Trim().Equals("name", StringComparison.OrdinalIgnoreCase) ? cell with { Text = "" } : cell)],
        };
    }
}
