using PaperFlock.Planning;
using Spectre.Console;

namespace PaperFlock.Cli.Entering;

/// <summary>Somebody with the sheet in one hand: asks ewe by ewe in its order, reads back what it understood, and writes it down at once.</summary>
internal sealed class EntrySession(PencilSheet sheet, AnswerBook book, SeasonPlan plan, ITyping typing, Changes changes, Host host)
{
    private static readonly string[] KeyHeads = ["type", "and press Enter"];

    /// <summary>What means the same on every sheet. None of them begins an answer.</summary>
    private static readonly (string Keys, string Meaning)[] CommonKeys =
    [
        ("-", "take away what is written down"),
        ("<", "back to the ewe before: the up arrow does the same"),
        (">", "on to the next ewe: the down arrow does the same, and takes what has been typed"),
        ("/bra", "go to the ewe with these letters in her name, or at the end of her tag"),
        ("?", "show these keys"),
        ("q", "see what has changed, and leave; next time it goes on from here"),
    ];

    private readonly ImmutableArray<EwePlan> _ewes = sheet.Ewes(plan);
    private int _at;

    /// <returns>False when an answer was refused that cannot be asked for again.</returns>
    /// <exception cref="OperationCanceledException">The user wants the program to end.</exception>
    public bool Run()
    {
        _at = _ewes.ToList().FindIndex(e => sheet.Known(Asked(e)).Length == 0 && Asked(e).Ewe.Gone is null);
        if (_at < 0)
        {
            _at = 0;
            Say("Every ewe has an answer already; the arrow down leaves it as it is.");
        }
        else if (_at > 0)
        {
            Say(FormattableString.Invariant($"Going on at row {_at + 1} of {_ewes.Length}, the first without an answer."));
        }

        while (true)
        {
            if (!AskEwes())
            {
                return false;
            }

            if (!new Review(changes, typing, host).Run(mayAsk: true))
            {
                return true;
            }

            _at = Math.Min(_at, _ewes.Length - 1);
        }
    }

    /// <summary>Asks until the last ewe has been left, or somebody wants to leave.</summary>
    /// <returns>False when an answer was refused that cannot be asked for again.</returns>
    private bool AskEwes()
    {
        while (_at < _ewes.Length)
        {
            book.Refresh();
            var ewe = Asked(_ewes[_at]);
            Ask(ewe);
            if (typing.Read() is not { } typed || typed.Text is "q" or "Q" or "quit" or "stop")
            {
                Say("");
                return true;
            }

            if (!Answer(typed, ewe))
            {
                return false;
            }
        }

        Say("That was the last on the sheet.");
        return true;
    }

    /// <returns>False when it was refused and cannot be asked for again.</returns>
    private bool Answer(Typed typed, Asked ewe)
    {
        switch (typed.Text)
        {
            case "" when typed.Ending == Ending.Enter && typing.CanAskAgain:
                Say("  nothing typed, nothing changed; the arrow down, or >, goes on to the next ewe");
                return true;
            case "" when typed.Ending == Ending.Enter:
                // A pipe has a line a ewe.
                Say($"  nothing typed, nothing changed: {ewe.Ewe.CallName} is left as she is");
                Step(1);
                return true;
            case "" or ">" or "<" or "back":
                Step(typed is { Ending: Ending.Up } or { Text: "<" or "back" } ? -1 : 1);
                return true;
            case "?":
                new ReportWriter(host).Table(KeyHeads, sheet.Keys.Concat(CommonKeys).Select(k => new[] { k.Keys, k.Meaning }));
                return true;
            case ['/', .. var letters]:
                return GoTo(letters.Trim());
            default:
                return Take(typed, ewe);
        }
    }

    private bool Take(Typed typed, Asked ewe)
    {
        var (who, tag) = (ewe.Ewe.CallName, ewe.Ewe.Tag);
        var understood = sheet.Understand(typed.Text, ewe);
        if (understood.Answer is not { } answer)
        {
            return Refuse(who, understood.WhyNot!);
        }

        // Whoever had the file open may have saved it while the question stood on the screen.
        book.Refresh();
        var change = changes.Before(tag, answer);
        if (book.Enter([(tag, answer)], out var warnings) is not { } edit)
        {
            Say(EnterMessages.ReadBack(who, $"{answer.Words}, as it was"));
        }
        else if (edit.File is null)
        {
            return Refuse(who, EnterMessages.Refused(edit));
        }
        else
        {
            changes.Note(change);
            host.WriteLine(EnterMessages.ReadBack(who, answer.Words), new Style(Color.Green));
            host.WriteBelow(warnings.Select(warning => $"  mind: {warning.Message}; {warning.Advice}"));
        }

        Step(typed.Ending == Ending.Up ? -1 : 1);
        return true;
    }

    /// <summary>On to the next row, or back to the one before.</summary>
    private void Step(int rows)
    {
        if (_at + rows < 0)
        {
            Say("  she is the first on the sheet");
        }

        _at = Math.Max(0, _at + rows);
    }

    private bool Refuse(string who, string why)
    {
        if (!typing.CanAskAgain)
        {
            host.Error.WriteLine(Messages.Complaint(FormattableString.Invariant(
                $"line {typing.Count} of what was typed, about {who}: {why}. Nothing after it was taken, since it may be about another ewe; what came before is in the file")));
            return false;
        }

        Say($"  not taken: {why}");
        return true;
    }

    /// <summary>The ewe of the sheet that is called so or whose tag it is or ends so; of several, the one somebody picks.</summary>
    private bool GoTo(string letters)
    {
        var tagged = new TagFinder(_ewes.Select(e => e.Ewe)).Find(letters);
        var rows = Enumerable.Range(0, _ewes.Length).ToList();
        var called = rows.FindAll(row => string.Equals(_ewes[row].Ewe.Name, letters, StringComparison.OrdinalIgnoreCase));
        var found = called.Count > 0 ? called : rows.FindAll(row =>
            tagged.Contains(_ewes[row].Ewe) || (letters.Length > 0 && _ewes[row].Ewe.Name?.Contains(letters, StringComparison.OrdinalIgnoreCase) is true));
        if (found.Count == 0)
        {
            return Refuse(letters, $"nobody on this sheet has `{letters}` in her name or at the end of her tag");
        }

        if (found.Count > 1 && !typing.CanAskAgain)
        {
            return Refuse(letters, $"`{letters}` may be {ScreenText.List(found.Select(row => Who(row)), "or")}");
        }

        _at = found.Count == 1 ? found[0] : Pick(letters, found) ?? _at;
        return true;
    }

    private int? Pick(string letters, List<int> rows)
    {
        Say($"  `{letters}` may be");
        host.WriteBelow(rows.Select(row => $"  {Who(row)}"));

        host.Out.Write("which row? > ");
        host.Out.Flush();
        var typed = typing.Read()?.Text;
        return rows.Cast<int?>().FirstOrDefault(row => (row + 1)?.ToString(CultureInfo.InvariantCulture) == typed);
    }

    private string Who(int row) => FormattableString.Invariant($"row {row + 1}, {_ewes[row].Ewe.Name ?? "no name"}, {_ewes[row].Ewe.Tag}");

    private Asked Asked(EwePlan ewe) => new(book.Flock, book.Ewe(ewe.Ewe.Tag), plan.AsOf);

    private void Ask(Asked ewe)
    {
        var known = sheet.Known(ewe) is { Length: > 0 } written ? written : ewe.Ewe.Gone is null ? EnterMessages.Nothing : "she has gone";
        host.WriteLine(
            FormattableString.Invariant($"row {_at + 1} of {_ewes.Length}  {ewe.Ewe.Name ?? "no name"}  {ewe.Ewe.Tag}  {known}"), new Style(decoration: Decoration.Bold));
        host.Out.Write("> ");
        host.Out.Flush();
    }

    private void Say(string line) => host.Out.WriteLine(line);
}
