using System.Runtime.InteropServices;
using NodaTime.TimeZones;
using Spectre.Console;

namespace PaperFlock.Cli;

/// <summary>What the computer and its terminal are set to: whether colour, borders and progress are wanted, and what time it keeps.</summary>
internal static class Terminals
{
    /// <summary>Plain text for a pipe, for <c>NO_COLOR</c> (no-color.org) and for a terminal that calls itself dumb.</summary>
    public static bool IsForPeople(bool redirected) =>
        !redirected
        && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
        && Environment.GetEnvironmentVariable("TERM") != "dumb";

    /// <summary>A console over a writer that leads to a screen; the process's own is never asked for.</summary>
    public static IAnsiConsole ConsoleFor(TextWriter writer)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(writer) });
        console.Profile.Capabilities.Unicode = true;
        return console;
    }

    /// <summary>Windows opens a window for a program that is double-clicked or dropped upon, and shuts it when it ends.</summary>
    /// <returns>What waits for the user to press Enter; null where the window belongs to a shell or there is nobody at the keys.</returns>
    public static Action? WaitBeforeClosing() =>
        // With a shell there would be two processes in it.
        OperatingSystem.IsWindows() && !Console.IsInputRedirected && !Console.IsOutputRedirected && GetConsoleProcessList(new uint[2], 2) == 1
            ? () => Console.ReadLine()
            : null;

    /// <returns>Null where the computer keeps a time that the tz database has no name for.</returns>
    public static string? HomeZone()
    {
        try
        {
            return DateTimeZoneProviders.Tzdb.GetSystemDefault().Id;
        }
        catch (DateTimeZoneNotFoundException)
        {
            return null;
        }
    }

    /// <summary>A key of the process's own terminal, unseen until it is written.</summary>
    /// <exception cref="OperationCanceledException">The user wants the program to end.</exception>
    public static ConsoleKeyInfo ReadKey(CancellationToken stop)
    {
        // Reading itself cannot be interrupted; a look every so often is too quick to be felt, and leaves the processor alone.
        while (!Console.KeyAvailable)
        {
            if (stop.WaitHandle.WaitOne(TimeSpan.FromMilliseconds(15)))
            {
                throw new OperationCanceledException(stop);
            }
        }

        return Console.ReadKey(intercept: true);
    }

    // The generated kind of import would open the whole project to unsafe code for one array of numbers.
    [DllImport("kernel32.dll")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static extern uint GetConsoleProcessList([Out] uint[] processes, uint room);
}
