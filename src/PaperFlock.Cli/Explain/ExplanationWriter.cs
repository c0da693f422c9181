using Spectre.Console;

namespace PaperFlock.Cli.Explain;

/// <summary>Explanations on a screen, wrapped behind their labels; in a pipe each on one line.</summary>
internal static class ExplanationWriter
{
    private const int LabelWidth = 14;

    public static void Write(IEnumerable<Explanation> explanations, Host host)
    {
        var begun = false;
        foreach (var explanation in explanations)
        {
            if (begun)
            {
                host.Out.WriteLine();
            }

            begun = true;
            if (host.OutIsTerminal)
            {
                WriteToScreen(explanation, Consoles.For(host.Out));
            }
            else
            {
                WritePlain(explanation, host.Out);
            }
        }
    }

    private static void WriteToScreen(Explanation explanation, IAnsiConsole console)
    {
        console.WriteLine(explanation.Title, new Style(decoration: Decoration.Bold));
        var grid = new Grid()
            .AddColumn(new GridColumn { NoWrap = true, Width = LabelWidth, Padding = new Padding(2, 0, 1, 0) })
            .AddColumn(new GridColumn { Padding = new Padding(0) });
        foreach (var (label, text) in explanation.Lines)
        {
            grid.AddRow(new Text(label), new Text(text));
        }

        console.Write(grid);
    }

    private static void WritePlain(Explanation explanation, TextWriter output)
    {
        output.WriteLine(explanation.Title);
        foreach (var (label, text) in explanation.Lines)
        {
            output.WriteLine($"  {label.PadRight(LabelWidth)} {text}");
        }
    }
}
