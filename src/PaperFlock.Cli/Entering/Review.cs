using Spectre.Console;

namespace PaperFlock.Cli.Entering;

/// <summary>On leaving: what has changed, old beside new, and the undoing of any line of it.</summary>
internal sealed class Review(Changes changes, ITyping typing, Host host)
{
    private static readonly string[] Heads = ["line", "ewe", "tag", "before", "now"];

    /// <summary>Nobody who was not there reads more.</summary>
    private const int MostUnasked = 100;

    /// <param name="mayAsk">Lines may be undone.</param>
    /// <returns>Whether somebody wants to go back to the ewes.</returns>
    public bool Run(bool mayAsk)
    {
        var lines = changes.All;
        while (!lines.IsEmpty)
        {
            Show(lines, mayAsk ? lines.Length : MostUnasked);
            if (!mayAsk)
            {
                return false;
            }

            host.Out.WriteLine("Type - and the number of a line to undo it, such as -1; < to go back to the ewes; or press Enter to leave.");
            host.Out.Write("undo > ");
            host.Out.Flush();
            var typed = typing.Read();
            if (typed is { Ending: Ending.Up } or { Text: "<" or "back" })
            {
                return true;
            }

            if (typed is null or { Text: "" or "q" or "Q" })
            {
                return false;
            }

            // An answer too many, typed or piped, is not meant to undo another: so a number alone does not.
            if (typed.Text is ['-', .. var line])
            {
                Undo(line.Trim(), lines);
            }
            else
            {
                host.Out.WriteLine($"  `{typed.Text}` undoes nothing: every ewe of the sheet has been asked for, or left");
            }
        }

        return false;
    }

    private void Undo(string text, ImmutableArray<Change> lines)
    {
        if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var line) || line < 1 || line > lines.Length)
        {
            host.Out.WriteLine($"  there is no line `{text}`");
            return;
        }

        var change = lines[line - 1];
        host.Out.WriteLine(change.IsUndone ? $"  line {text} is undone already"
            : changes.Undo(change) is { } whyNot ? $"  not undone: {whyNot}"
            : $"  line {text} is undone");
    }

    private void Show(ImmutableArray<Change> lines, int most)
    {
        host.WriteLine("Changed in this sitting:", new Style(decoration: Decoration.Bold));
        new ReportWriter(host).Table(Heads, lines.Take(most).Select((change, at) =>
        {
            var ewe = changes.Ewe(change.Tag);
            var now = change.IsUndone ? "undone" : Or(changes.Known(change.Tag));
            return new[] { (at + 1).ToString(CultureInfo.InvariantCulture), ewe.Name ?? "no name", ewe.Tag, Or(change.Was), now };
        }));
        if (lines.Length > most)
        {
            host.Out.WriteLine($"and {lines.Length - most} more");
        }
    }

    private static string Or(string known) => known.Length == 0 ? EnterMessages.Nothing : known;
}
