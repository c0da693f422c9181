using PaperFlock.Flocks.Drafting;

namespace PaperFlock.Flocks.Lists;

/// <summary>A list of ewes from a spreadsheet, a row a ewe.</summary>
/// <param name="Source">What the places in <paramref name="Found"/> are in.</param>
/// <param name="Rows">Every row with anything in it; none when the list as a whole is of no use.</param>
/// <param name="Found">What is wrong with it or left out.</param>
public sealed record EweList(SourceText Source, ImmutableArray<ListedEwe> Rows, ImmutableArray<Diagnostic> Found)
{
    /// <summary>The key of a ewe that each column fills, in the order of the columns; null for one that is left out.</summary>
    public ImmutableArray<string?> Keys { get; private init; } = [];

    public ImmutableArray<DraftEwe> Good => [.. Rows.Select(r => r.Ewe).OfType<DraftEwe>()];

    public bool HasErrors => Found.Any(d => d.Severity == Severity.Error);

    /// <param name="shownPath">As messages show it.</param>
    /// <param name="tupping">The year, for ages.</param>
    /// <param name="read">What the reader of flock files says of one with these ewes in it, and of which text: what it would refuse is refused at its cell.</param>
    public static EweList Read(string shownPath, byte[] bytes, int tupping, Func<IReadOnlyList<DraftEwe>, (SourceText Source, ImmutableArray<Diagnostic> Found)> read)
    {
        var bag = new DiagnosticBag();
        var table = CsvTable.Read(shownPath, bytes, bag);
        var rows = ListTrial.Of(new EweRows(table, tupping, bag).Read(), read, bag);
        var columns = EweColumn.Of(table.Headings);
        return new EweList(table.Source, rows, bag.ToSorted())
        {
            Keys = [.. table.Headings.Select((_, at) => columns.FirstOrDefault(c => c.At == at)?.Key switch { EweColumn.Age => "born", var key => key })],
        };
    }
}

/// <param name="Ewe">Null for a row that is refused.</param>
public sealed record ListedEwe(int Line, string Tag, string? Name, DraftEwe? Ewe, ImmutableDictionary<string, CsvCell> Cells);
