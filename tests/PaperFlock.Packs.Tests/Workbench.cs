using System.Text;
using NodaTime;
using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests;

/// <summary>A folder of its own, a stopped clock, and the program to run in them. What the program says is kept.</summary>
internal sealed class Workbench : IDisposable
{
    private readonly CancellationTokenSource _stop = new();

    public Workbench() => Folder = Directory.CreateTempSubdirectory("paperflock-test-").FullName;

    public string Folder { get; }

    public Instant Now { get; set; } = Instant.FromUtc(2026, 11, 25, 9, 0);

    /// <summary>Done whenever the program asks what day it is, before it plans: here a test can put a spanner in.</summary>
    public Action WhenAskedTheDay { get; init; } = () => { };

    public bool OnATerminal { get; init; }

    /// <summary>In place of what keeps the results.</summary>
    public TextWriter? Results { get; init; }

    /// <summary>In place of what keeps the complaints.</summary>
    public TextWriter? Complaints { get; init; }

    public Action? WaitBeforeClosing { get; init; }

    public TimeProvider Watch { get; init; } = TimeProvider.System;

    /// <summary>What is typed, or piped in; null where nobody can answer.</summary>
    public string? Answers { get; set; }

    /// <summary>The answers come from a keyboard, and a wrong one can be put right.</summary>
    public bool AtAKeyboard { get; init; }

    /// <summary>Keys as they are pressed, a line break for Enter, \u2191 and \u2193 for arrows; null where answers come in lines. After the last, Ctrl-C.</summary>
    public string? Keys { get; init; }

    public string? HomeZone { get; init; } = "Europe/London";

    public Outcome Run(params string[] args)
    {
        using var output = new StringWriter();
        return RunInto(output, args);
    }

    /// <summary>As <see cref="Run"/>, with a writer of the test's own for the results.</summary>
    public Outcome RunInto(StringWriter output, params string[] args)
    {
        output.NewLine = "\n";
        // Never closed: the thread of a bar of progress may write once more when the work is done.
        var error = new StringWriter { NewLine = "\n" };
        var host = new Host(
            Results ?? output, Complaints ?? error, new StoppedClock(Now, WhenAskedTheDay), Folder, Folder, OutIsTerminal: OnATerminal, ErrorIsTerminal: OnATerminal, _stop.Token)
        {
            WaitBeforeClosing = WaitBeforeClosing,
            In = Answers is null ? TextReader.Null : new StringReader(Answers),
            InIsTerminal = AtAKeyboard,
            ReadKey = Keys is null ? null : new PressedKeys(Keys, Stop).Read,
            HomeZone = () => HomeZone,
            Watch = Watch,
        };
        var status = App.Run(args, host);
        return new Outcome(status, output.ToString(), error.ToString());
    }

    /// <summary>As if the user had pressed Ctrl-C.</summary>
    public void Stop() => _stop.Cancel();

    /// <summary>Writes a file and gives back its name.</summary>
    public string Write(string name, string text)
    {
        File.WriteAllText(PathOf(name), text, new UTF8Encoding(false));
        return name;
    }

    public string PathOf(string name) => Path.Combine(Folder, name);

    /// <summary>Every file and folder there is, as paths from the folder, in order.</summary>
    public string[] Everything() =>
    [
        .. Directory.EnumerateFileSystemEntries(Folder, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 })
            .Select(p => Path.GetRelativePath(Folder, p).Replace('\\', '/'))
            .Order(StringComparer.Ordinal),
    ];

    public void Dispose()
    {
        _stop.Dispose();
        Directory.Delete(Folder, recursive: true);
    }

    private sealed class PressedKeys(string keys, Action thenStop)
    {
        private int _next;

        public ConsoleKeyInfo Read(CancellationToken stop)
        {
            if (_next == keys.Length)
            {
                thenStop();
            }

            stop.ThrowIfCancellationRequested();
            var c = keys[_next++];
            var key = c switch { '\n' => ConsoleKey.Enter, '\b' => ConsoleKey.Backspace, '\x1b' => ConsoleKey.Escape, '\u2191' => ConsoleKey.UpArrow, '\u2193' => ConsoleKey.DownArrow, _ => ConsoleKey.NoName };
            return new ConsoleKeyInfo(c, key, shift: false, alt: false, control: false);
        }
    }

    private sealed class StoppedClock(Instant now, Action whenAsked) : IClock
    {
        public Instant GetCurrentInstant()
        {
            whenAsked();
            return now;
        }
    }
}

internal sealed record Outcome(int Status, string Out, string Error);
