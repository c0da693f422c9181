using Spectre.Console;

namespace PaperFlock.Cli;

/// <summary>Consoles over the writers the program was given, for a screen; the process's own are never asked for.</summary>
internal static class Consoles
{
    public static IAnsiConsole For(TextWriter writer)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.Detect,
            ColorSystem = ColorSystemSupport.Detect,
            Interactive = InteractionSupport.Detect,
            Out = new AnsiConsoleOutput(writer),
        });
        console.Profile.Capabilities.Unicode = true;
        return console;
    }
}
