using PaperFlock.Packs.Explain;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace PaperFlock.Cli;

/// <summary>Tables and explanations for a screen, or plain columns for a pipe: there nothing is wrapped, cut, bordered or left trailing.</summary>
internal sealed class ReportWriter(Host host)
{
    private const int LabelWidth = 14;

    private bool _begun;

    public void Write(IEnumerable<DatesTable> tables)
    {
        foreach (var table in tables)
        {
            Title(table.Title);
            Table(table.Heads, table.Rows.Cast<IReadOnlyList<string>>(), table.IsLastLong);
        }
    }

    public void Write(IEnumerable<Explanation> explanations)
    {
        foreach (var (title, lines) in explanations)
        {
            Title(title);
            if (!host.OutIsTerminal)
            {
                foreach (var (label, text) in lines)
                {
                    host.Out.WriteLine($"  {label.PadRight(LabelWidth)} {text}");
                }

                continue;
            }

            var grid = new Grid()
                .AddColumn(new GridColumn { NoWrap = true, Width = LabelWidth, Padding = new Padding(2, 0, 1, 0) })
                .AddColumn(new GridColumn { Padding = new Padding(0) });
            foreach (var (label, text) in lines)
            {
                grid.AddRow(new Text(label), new Text(text));
            }

            Terminals.ConsoleFor(host.Out).Write(grid);
        }
    }

    /// <param name="rows">A line break in a cell is one on a screen and a blank in a pipe.</param>
    /// <param name="lastBelowSecond">The last column is long: a screen is too narrow for it, and shows it below the second.</param>
    public void Table(IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string>> rows, bool lastBelowSecond = false)
    {
        if (!host.OutIsTerminal)
        {
            WritePlain([heads, .. rows]);
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

        Terminals.ConsoleFor(host.Out).Write(table);
    }

    private void Title(string text)
    {
        if (_begun)
        {
            host.Out.WriteLine();
        }

        _begun = true;
        host.WriteLine(text, new Style(decoration: Decoration.Bold));
    }

    private static IEnumerable<IRenderable> Folded(IReadOnlyList<string> row) => row.SkipLast(1).Select((cell, i) => i == 1
        ? (IRenderable)new Rows(new Text(cell, new Style(decoration: Decoration.Bold)), new Text(row[^1]))
        : new Text(cell));

    private void WritePlain(IEnumerable<IReadOnlyList<string>> rows)
    {
        var lines = rows.Select(row => row.Select(cell => cell.Replace('\n', ' ')).ToArray()).ToList();
        var widths = Enumerable.Range(0, lines[0].Length).Select(column => lines.Max(line => DisplayWidth.Of(line[column]))).ToArray();
        foreach (var line in lines)
        {
            var padded = line.Select((cell, column) => cell + new string(' ', widths[column] - DisplayWidth.Of(cell)));
            host.Out.WriteLine(string.Join("  ", padded).TrimEnd());
        }
    }
}
