using Spectre.Console;

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

    public void Table(IReadOnlyList<string> heads, IEnumerable<string[]> rows)
    {
        var table = new Table { Border = _terminal ? TableBorder.Rounded : TableBorder.None, ShowRowSeparators = false };
        foreach (var head in heads)
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
            table.AddRow(row.Select(cell => new Text(cell)));
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
