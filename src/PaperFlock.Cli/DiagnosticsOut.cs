using Spectre.Console;

namespace PaperFlock.Cli;

/// <summary>Diagnostics on their way to the user: plain in a pipe, coloured on a terminal, the words the same.</summary>
internal static class DiagnosticsOut
{
    public static void Write(SourceText source, ImmutableArray<Diagnostic> diagnostics, Host host)
    {
        if (!host.ErrorIsTerminal)
        {
            host.Error.Write(DiagnosticRenderer.Render(source, diagnostics));
            return;
        }

        var console = Terminals.ConsoleFor(host.Error);
        foreach (var line in DiagnosticRenderer.Lines(source, diagnostics))
        {
            console.WriteLine(line.Text, line switch
            {
                { IsHeading: true } => new Style(decoration: Decoration.Bold),
                { CaretsOf: Severity.Error } => new Style(Color.Red),
                { CaretsOf: Severity.Warning } => new Style(Color.Yellow),
                _ => Style.Plain,
            });
        }
    }
}
