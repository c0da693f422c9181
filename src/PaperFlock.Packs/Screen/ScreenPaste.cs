using System.Text;
using System.Text.Json.Nodes;
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
    /// <returns>
    /// <c>rows</c>, the first of them, each a list of cells; <c>columns</c>, how many there are; <c>ask</c>, when nobody can tell which holds the tags; else <c>taken</c> and <c>refused</c>, how many ewes,
    /// <c>found</c>, what is wrong or left out, and <c>text</c>, the flock file with the ewes that were taken, null when there are none.
    /// </returns>
    public static JsonObject Read(string text, string name, string pasted, int tagColumn)
    {
        var table = CsvTable.Read(name, Encoding.UTF8.GetBytes(pasted), new DiagnosticBag());
        ImmutableArray<ImmutableArray<CsvCell>> all = table.Headings.IsEmpty ? [] : [table.Headings, .. table.Rows];
        if (all.Length > MostRows)
        {
            throw new PackRequestException($"that is {ScreenText.Count(all.Length, "row")}, and a flock has at most {MostRows} ewes: is it the right list?");
        }

        var shown = new JsonObject
        {
            ["rows"] = List(all.Take(MostShown), row => List(row, cell => (JsonNode)cell.Text.Trim())),
            ["columns"] = all.IsEmpty ? 0 : all.Max(row => row.Length),
        };
        if (FlockFile.OpenAsIs(name, Encoding.UTF8.GetBytes(text), out _) is not { Reading.Flock: { } flock } file)
        {
            throw new PackRequestException("the flock has mistakes in it: put them right first, then paste");
        }

        var list = EweList.Read("what you pasted", Encoding.UTF8.GetBytes(tagColumn < 0 ? pasted : Pointed(all, tagColumn)), flock.Season.TupIn.Year, ewes =>
        {
            var edit = With(ewes.Select(e => e.Lines));
            return (edit.Source, edit.Diagnostics);
        });
        shown["ask"] = tagColumn < 0 && list.Rows.IsEmpty && !all.IsEmpty;
        shown["taken"] = list.Good.Length;
        shown["refused"] = list.Rows.Length - list.Good.Length;
        shown["found"] = ScreenFlock.Found(list.Found, _ => []);
        shown["text"] = list.Good.IsEmpty ? null : Encoding.UTF8.GetString(WithoutUnnamed(With(list.Good.Select(e => e.Lines)).File!).ToBytes());
        return shown;

        // Lines of dashes stand for tags nobody had typed yet, and here they are.
        FlockFile WithoutUnnamed(FlockFile added) => flock.Ewes.All(e => e.Tag.StartsWith("____", StringComparison.Ordinal))
            ? added.Apply(flock.Ewes.Select((_, i) => new RemoveFromList(FlockPlace.Top, "ewes", flock.Ewes.Length - 1 - i))).File ?? added
            : added;

        FlockEdit With(IEnumerable<ImmutableArray<(string Key, FlockValue Value)>> ewes) => file.Apply(AddToList.Ewes(ewes.Select(lines => FlockValue.Section(lines))));
    }

    /// <summary>The same table with a heading that says which column holds the tags; one is put over a list that has none.</summary>
    private static string Pointed(ImmutableArray<ImmutableArray<CsvCell>> all, int tagColumn)
    {
        // A tag has a figure in it, and no heading over tags has one.
        var hasHeading = tagColumn < all[0].Length && !all[0][tagColumn].Text.Any(char.IsAsciiDigit);
        var width = all.Max(row => row.Length);
        var heading = Enumerable.Range(0, width).Select(i => i == tagColumn ? "tag" : hasHeading && i < all[0].Length && !IsTag(all[0][i].Text) ? all[0][i].Text : "");
        return Line(heading) + string.Concat(all.Skip(hasHeading ? 1 : 0).Select(row => Line(row.Select(c => c.Text))));
    }

    private static bool IsTag(string heading) => heading.Trim().Equals("tag", StringComparison.OrdinalIgnoreCase);

    private static string Line(IEnumerable<string> cells) =>
        string.Join(',', cells.Select(c => $"\"{c.Replace("\"", "\"\"", StringComparison.Ordinal)}\"")) + "\n";
}
