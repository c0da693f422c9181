using Spectre.Console;
using Spectre.Console.Rendering;

namespace PaperFlock.Cli.Dates;

/// <summary>Tables for a screen, or plain columns for a pipe: there nothing is wrapped, cut, bordered or left trailing.</summary>
internal sealed class TableWriter(Surroundings surroundings)
{
    private readonly bool _terminal = surroundings.OutIsTerminal;
    private bool _begun;

    public void Heading(string text)
    {
        if (_begun)
        {
            surroundings.Out.WriteLine();
        }

        _begun = true;
        if (_terminal)
        {
            Consoles.For(surroundings.Out, terminal: true).WriteLine(text, new Style(decoration: Decoration.Bold));
        }
        else
        {
            surroundings.Out.WriteLine(text);
        }
    }

    /// <param name="rows">A line break in a cell is one on a screen and a blank in a pipe.</param>
    /// <param name="lastBelowSecond">The last column is long: a screen is too narrow for it, and shows it below the second.</param>
    public void Table(IReadOnlyList<string> heads, IEnumerable<string[]> rows, bool lastBelowSecond = false)
    {
        var folded = lastBelowSecond && _terminal;
        var table = new Table { Border = _terminal ? TableBorder.Rounded : TableBorder.None, ShowRowSeparators = folded };
        foreach (var head in folded ? heads.SkipLast(1) : heads)
        {
            // The first column holds a date or a tag, and neither reads well broken over lines.
            table.AddColumn(new TableColumn(new Text(head))
            {
                NoWrap = !_terminal || table.Columns.Count == 0,
                Padding = _terminal ? new Padding(1, 0) : new Padding(0, 0, 2, 0),
            });
        }

        foreach (var row in rows)
        {
            table.AddRow(folded ? Folded(row) : row.Select(Cell));
        }

        if (_terminal)
        {
            Consoles.For(surroundings.Out, terminal: true).Write(table);
        }
        else
        {
            WritePlain(table);
        }
    }

    private IEnumerable<IRenderable> Folded(string[] row) => row.SkipLast(1).Select((cell, i) => i == 1
        ? new Rows(new Text(cell, new Style(decoration: Decoration.Bold)), new Text(row[^1]))
        : Cell(cell));

    private IRenderable Cell(string text) => new Text(_terminal ? text : text.Replace('\n', ' '));

    private void WritePlain(Table table)
    {
        using var text = new StringWriter { NewLine = "\n" };
        Consoles.For(text, terminal: false).Write(table);
        foreach (var line in text.ToString().TrimEnd('\n').Split('\n'))
        {
            surroundings.Out.WriteLine(line.TrimEnd());
        }
    }
}
