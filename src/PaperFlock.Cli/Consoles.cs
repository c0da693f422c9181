using Spectre.Console;

namespace PaperFlock.Cli;

/// <summary>Consoles over the writers the program was given; the process's own are never asked for.</summary>
internal static class Consoles
{
    /// <summary>Wide enough that nothing written for a pipe is ever wrapped or cut.</summary>
    private const int Unbounded = 4096;

    public static IAnsiConsole For(TextWriter writer, bool terminal)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = terminal ? AnsiSupport.Detect : AnsiSupport.No,
            ColorSystem = terminal ? ColorSystemSupport.Detect : ColorSystemSupport.NoColors,
            Interactive = terminal ? InteractionSupport.Detect : InteractionSupport.No,
            Out = new AnsiConsoleOutput(writer),
        });
        console.Profile.Capabilities.Unicode = true;
        if (!terminal)
        {
            console.Profile.Width = Unbounded;
        }

        return console;
    }
}
