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

    /// <summary>Whether a heading says what a column holds.</summary>
    public static bool IsKnown(string heading) => EweColumn.KeyOf(heading) is not null;

    /// <param name="table">Null where no column is known to have the tags.</param>
    /// <param name="tupping">The year, for ages.</param>
    /// <param name="read">What the reader of flock files says of one with these ewes after those it has, and of which text: what it would refuse is left out at its cell.</param>
    public static EweList Read(CsvTable csv, HeadedTable? table, int tupping, DiagnosticBag bag, Func<IReadOnlyList<DraftEwe>, (SourceText Source, ImmutableArray<Diagnostic> Found)> read)
    {
        HeadedTable.SayWhatIsMissing(csv, table, bag);
        var rows = table is null ? [] : ListTrial.Of(new EweRows(table, tupping, bag).Read(), read, bag);
        return new EweList(csv.Source, rows, bag.ToSorted()) { Keys = table is null ? [] : KeysOf(table) };
    }

    private static ImmutableArray<string?> KeysOf(HeadedTable table)
    {
        var columns = EweColumn.Of(table.Headings, table.Tag);
        return [.. Enumerable.Range(0, Math.Max(table.Tag + 1, table.Headings.Length)).Select(at =>
            at == table.Tag ? "tag" : columns.FirstOrDefault(c => c.At == at)?.Key is var key && key == EweColumn.Age ? "born" : key)];
    }
}

/// <param name="Ewe">Null for a row that is refused.</param>
/// <param name="LeftOut">Keys whose cells could not be taken.</param>
public sealed record ListedEwe(int Line, string Tag, string? Name, DraftEwe? Ewe, ImmutableDictionary<string, CsvCell> Cells, ImmutableArray<string> LeftOut);
