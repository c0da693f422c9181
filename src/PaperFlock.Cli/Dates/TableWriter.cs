using PaperFlock.Diagnostics;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace PaperFlock.Cli.Dates;

/// <summary>Tables for a screen, or plain columns for a pipe: there nothing is wrapped, cut, bordered or left trailing.</summary>
internal sealed class TableWriter(Host host)
{
    private readonly bool _terminal = host.OutIsTerminal;
    private bool _begun;

    public void Heading(string text)
    {
        if (_begun)
        {
            host.Out.WriteLine();
        }

        _begun = true;
        if (_terminal)
        {
            Consoles.For(host.Out).WriteLine(text, new Style(decoration: Decoration.Bold));
        }
        else
        {
            host.Out.WriteLine(text);
        }
    }

    /// <param name="rows">A line break in a cell is one on a screen and a blank in a pipe.</param>
    /// <param name="lastBelowSecond">The last column is long: a screen is too narrow for it, and shows it below the second.</param>
    public void Table(IReadOnlyList<string> heads, IEnumerable<string[]> rows, bool lastBelowSecond = false)
    {
        if (!_terminal)
        {
            WritePlain([.. heads], rows);
            return;
        }

        var table = new Table { Border = TableBorder.Rounded, ShowRowSeparators = lastBelowSecond };
        foreach (var head in lastBelowSecond ? heads.SkipLast(1) : heads)
        {
            // The first column holds a date or a tag, and neither reads well broken over lines.
            table.AddColumn(new TableColumn(new Text(head)) { NoWrap = table.Columns.Count == 0, Padding = new Padding(1, 0) });
        }

        foreach (var row in rows)
        {
            table.AddRow(lastBelowSecond ? Folded(row) : row.Select(cell => new Text(cell)));
        }

        Consoles.For(host.Out).Write(table);
    }

    private static IEnumerable<IRenderable> Folded(string[] row) => row.SkipLast(1).Select((cell, i) => i == 1
        ? (IRenderable)new Rows(new Text(cell, new Style(decoration: Decoration.Bold)), new Text(row[^1]))
        : new Text(cell));

    private void WritePlain(string[] heads, IEnumerable<string[]> rows)
    {
        string[][] lines = [heads, .. rows.Select(row => row.Select(cell => cell.Replace('\n', ' ')).ToArray())];
        var widths = heads.Select((_, column) => lines.Max(line => DisplayWidth.Of(line[column]))).ToArray();
        foreach (var line in lines)
        {
            var padded = line.Select((cell, column) => cell + new string(' ', widths[column] - DisplayWidth.Of(cell)));
            host.Out.WriteLine(string.Join("  ", padded).TrimEnd());
        }
    }
}
