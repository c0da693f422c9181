using Spectre.Console;

namespace PaperFlock.Cli;

/// <summary>All that the program knows of the world outside: where words go, what day it is, where files are.</summary>
/// <param name="Out">Results.</param>
/// <param name="Error">Diagnostics, progress and complaints.</param>
/// <param name="Clock">Asked once, by a command that was given no <c>--as-of</c>.</param>
/// <param name="Folder">Full path that relative paths start from.</param>
/// <param name="TempFolder">Where details of a fault of the program are put.</param>
/// <param name="OutIsTerminal">Somebody reads <paramref name="Out"/> on a screen: borders and wrapping are welcome.</param>
/// <param name="ErrorIsTerminal">Somebody watches <paramref name="Error"/>: progress is welcome.</param>
/// <param name="Stop">Cancelled when the user wants the program to end.</param>
internal sealed record Host(
    TextWriter Out,
    TextWriter Error,
    IClock Clock,
    string Folder,
    string TempFolder,
    bool OutIsTerminal,
    bool ErrorIsTerminal,
    CancellationToken Stop)
{
    /// <summary>
    /// Waits for the user to have read what happened, where the window the program writes into is its own and goes with it;
    /// null where it outlives the program.
    /// </summary>
    public Action? WaitBeforeClosing { get; init; }

    /// <summary>Answers to questions. Nothing, where nobody is to be asked.</summary>
    public TextReader In { get; init; } = TextReader.Null;

    /// <summary>Somebody sits at <see cref="In"/> and can be asked again.</summary>
    public bool InIsTerminal { get; init; }

    /// <summary>Single keys, as they are pressed; null where answers come a line at a time.</summary>
    /// <exception cref="OperationCanceledException">Thrown by it when the user wants the program to end.</exception>
    public Func<CancellationToken, ConsoleKeyInfo>? ReadKey { get; init; }

    /// <summary>Measures how long work takes, for <see cref="Progress"/> alone.</summary>
    public TimeProvider Watch { get; init; } = TimeProvider.System;

    /// <summary>The IANA time zone this computer is set to; null when it does not say. Looked up when asked for, which takes longer than checking a flock.</summary>
    public Func<string?> HomeZone { get; init; } = () => null;

    /// <exception cref="UsageException">The clock stands at a day before this program was thought of: it was never set, or its battery is empty.</exception>
    public LocalDate Today(DateTimeZone zone)
    {
        var day = Clock.GetCurrentInstant().InZone(zone).Date;
        return day.Year >= 2020
            ? day
            : throw new UsageException($"this computer's clock says {LocalDatePattern.Iso.Format(day)}: set it, or say what day it is, such as --as-of 2026-11-25");
    }

    /// <summary>A line of results, in a style where somebody reads them on a screen.</summary>
    public void WriteLine(string line, Style style)
    {
        if (OutIsTerminal)
        {
            Terminals.ConsoleFor(Out).WriteLine(line, style);
        }
        else
        {
            Out.WriteLine(line);
        }
    }

    /// <summary>Lines of results that belong to the one above.</summary>
    public void WriteBelow(IEnumerable<string> lines)
    {
        foreach (var line in lines)
        {
            Out.WriteLine($"  {line}");
        }
    }

    /// <summary>Asks, and waits for the answer.</summary>
    /// <param name="prompt">The answer is typed behind it, on its line.</param>
    /// <returns>Without the blanks round it; null where there are no more.</returns>
    /// <exception cref="OperationCanceledException">The user wants the program to end.</exception>
    public string? Ask(string prompt)
    {
        Out.Write(prompt);
        Out.Flush();
        return ReadLine()?.Trim();
    }

    /// <summary>Asks until there is an answer.</summary>
    /// <param name="read">What a text stands for; null where it stands for nothing.</param>
    /// <param name="refusal">What is said of such a text.</param>
    /// <returns>Null where Enter alone is pressed, or there are no more answers.</returns>
    public T? Ask<T>(string prompt, Func<string, T?> read, Func<string, string> refusal)
        where T : class
    {
        while (Ask(prompt) is { Length: > 0 } typed)
        {
            if (read(typed) is { } answer)
            {
                return answer;
            }

            Out.WriteLine($"  {refusal(typed)}");
        }

        return null;
    }

    /// <summary>An answer. Reading cannot be interrupted, but waiting for it can.</summary>
    /// <returns>Null where there are no more.</returns>
    /// <exception cref="OperationCanceledException">The user wants the program to end.</exception>
    public string? ReadLine()
    {
        Stop.ThrowIfCancellationRequested();
        var reading = Task.Run(In.ReadLine);
        reading.Wait(Stop);
        Stop.ThrowIfCancellationRequested();
        if (!InIsTerminal && reading.Result is { } typed)
        {
            // A terminal shows what is typed; a pipe's answers would be missing from the record.
            Out.WriteLine(typed);
        }

        return reading.Result;
    }

    /// <exception cref="UsageException">The name is empty.</exception>
    public string FullPath(string path) =>
        string.IsNullOrWhiteSpace(path) ? throw new UsageException("the name of a file or folder is empty: type its name") : Path.GetFullPath(path, Folder);
}
