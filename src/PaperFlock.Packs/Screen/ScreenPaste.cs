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
        var bag = new DiagnosticBag();
        var csv = CsvTable.Read("what you pasted", Encoding.UTF8.GetBytes(pasted), bag);
        var all = csv.Rows;
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

        var table = all.IsEmpty ? null : HeadedTable.Of(csv, EweList.IsKnown, tagColumn < 0 ? null : (tagColumn + 1).ToString(CultureInfo.InvariantCulture));
        var list = EweList.Read(csv, table, flock.Season.TupIn.Year, bag, ewes =>
        {
            var edit = With(ewes.Select(e => e.Lines));
            return (edit.Source, edit.Diagnostics);
        });
        shown["ask"] = tagColumn < 0 && table is null && !all.IsEmpty;
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
}
