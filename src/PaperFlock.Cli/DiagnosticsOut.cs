using Spectre.Console;

namespace PaperFlock.Cli;

/// <summary>Diagnostics on their way to the user: plain in a pipe, coloured on a terminal, the words the same.</summary>
internal static class DiagnosticsOut
{
    private const string Margin = "    ";

    public static void Write(SourceText source, ImmutableArray<Diagnostic> diagnostics, Host host)
    {
        if (diagnostics.IsEmpty)
        {
            return;
        }

        if (!host.ErrorIsTerminal)
        {
            host.Error.Write(DiagnosticRenderer.Render(source, diagnostics));
            return;
        }

        var console = Terminals.ConsoleFor(host.Error);
        foreach (var diagnostic in DiagnosticRenderer.Shown(diagnostics))
        {
            var picture = DiagnosticRenderer.Draw(source, diagnostic);
            var colour = new Style(diagnostic.Severity == Severity.Error ? Color.Red : Color.Yellow);
            console.WriteLine(picture.Heading, new Style(decoration: Decoration.Bold));
            if (picture.SourceLine is not null)
            {
                console.WriteLine(Margin + picture.SourceLine);
                console.WriteLine(Margin + picture.CaretLine, colour);
            }

            console.WriteLine(Margin + picture.Advice);
            console.WriteLine();
        }

        foreach (var more in DiagnosticRenderer.More(diagnostics))
        {
            console.WriteLine(more);
        }

        console.WriteLine(DiagnosticRenderer.Summary(diagnostics));
    }
}
