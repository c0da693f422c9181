using System.Collections.Immutable;
using PaperFlock.Diagnostics;

namespace PaperFlock.Cli.Lists;

/// <summary>Tells what became of each row.</summary>
internal static class ListReport
{
    /// <returns>Whether the ewes may be taken: every row is right, or the good ones are wanted alone and there are some.</returns>
    public static bool Write(string file, SourceText source, ImmutableArray<ListedEwe> rows, DiagnosticBag found, bool goodRows, Host host)
    {
        DiagnosticsOut.Write(source, found.ToSorted(), host);
        var taken = rows.Count(r => r.Ewe is not null);
        var may = taken > 0 && (!found.HasErrors || goodRows);
        host.Out.WriteLine(ListMessages.Report(file, may ? taken : 0, rows.Length - taken));
        foreach (var row in rows)
        {
            host.Out.WriteLine(row.Ewe is null ? ListMessages.RowRefused(row.Line, row.Tag) : ListMessages.Row(row.Line, row.Tag, row.Name, may));
        }

        return may;
    }
}
