using System.Collections.Immutable;
using PaperFlock.Diagnostics;

namespace PaperFlock.Cli.Lists;

/// <summary>Tells what became of each row.</summary>
internal static class ListReport
{
    /// <returns>Whether the ewes may be taken: every row is right, or the good ones are wanted alone and there are some.</returns>
    public static bool Write(string file, SourceText source, ImmutableArray<ListedEwe> rows, DiagnosticBag found, bool goodRows, Surroundings surroundings)
    {
        DiagnosticsOut.Write(source, found.ToSorted(), surroundings);
        var taken = rows.Count(r => r.Ewe is not null);
        var may = taken > 0 && (!found.HasErrors || goodRows);
        surroundings.Out.WriteLine(ListWords.Report(file, may ? taken : 0, rows.Length - taken));
        foreach (var row in rows)
        {
            surroundings.Out.WriteLine(row.Ewe is null ? ListWords.RowRefused(row.Line, row.Tag) : ListWords.Row(row.Line, row.Tag, row.Name, may));
        }

        return may;
    }
}
