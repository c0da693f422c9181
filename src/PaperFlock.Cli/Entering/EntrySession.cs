using PaperFlock.Planning;
using Spectre.Console;

namespace PaperFlock.Cli.Entering;

/// <summary>Somebody with the sheet in one hand: asks ewe by ewe in its order, reads back what it understood, and writes it down at once.</summary>
internal sealed class EntrySession(IPencilSheet sheet, AnswerBook book, SeasonPlan plan, ITyping typing, Host host)
{
    private static readonly string[] KeyHeads = ["key", "what it does"];

    /// <summary>Keys that mean the same on every sheet. None of them begins an answer.</summary>
    private static readonly (string Keys, string Meaning)[] CommonKeys =
    [
        ("Enter", "leave her as she is"),
        ("-", "take away what is written down"),
        ("<", "step back to the ewe before"),
        ("/bra", "go to the ewe whose name or tag has these letters"),
        ("?", "show these keys"),
        ("q", "leave; begin again at any time and it goes on from here"),
    ];

    private readonly ImmutableArray<EwePlan> _ewes = sheet.Ewes(plan);
    private int _at;

    public Tally Tally { get; } = new();

    /// <returns>False when an answer was refused that cannot be asked for again.</returns>
    /// <exception cref="OperationCanceledException">The user wants the program to end.</exception>
    public bool Run()
    {
        _at = _ewes.ToList().FindIndex(e => sheet.Known(Asked(e)).Length == 0);
        if (_at < 0)
        {
            _at = 0;
            Say("Every ewe has an answer already; Enter leaves it as it is.");
        }
        else if (_at > 0)
        {
            Say(FormattableString.Invariant($"Going on at ewe {_at + 1} of {_ewes.Length}, the first without an answer."));
        }

        while (_at < _ewes.Length)
        {
            book.Refresh();
            var ewe = Asked(_ewes[_at]);
            Ask(ewe);
            if (typing.Read(sheet.IsWhole) is not { } typed || typed is "q" or "Q" or "quit" or "stop")
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
    private bool Answer(string typed, Asked ewe)
    {
        switch (typed)
        {
            case "":
                Tally.Leave(ewe.Ewe.Tag);
                _at++;
                return true;
            case "?":
                new ReportWriter(host).Table(KeyHeads, sheet.Keys.Concat(CommonKeys).Select(k => new[] { k.Keys, k.Meaning }));
                return true;
            case "<" or "back":
                if (_at == 0)
                {
                    Say("  she is the first on the sheet");
                }

                _at = Math.Max(0, _at - 1);
                return true;
            case ['/', .. var letters]:
                GoTo(letters.Trim());
                return true;
            default:
                return Take(typed, ewe);
        }
    }

    private bool Take(string typed, Asked ewe)
    {
        var who = ewe.Ewe.CallName;
        var understood = sheet.Understand(typed, ewe);
        if (understood.Answer is not { } answer)
        {
            return Refuse(who, understood.WhyNot!);
        }

        var hadAnswer = sheet.Known(ewe).Length > 0;
        // Whoever had the file open may have saved it while the question stood on the screen.
        book.Refresh();
        if (book.Find(ewe.Ewe.Tag) is null)
        {
            throw new UsageException(EnterMessages.Gone(ewe.Ewe.Tag));
        }

        switch (book.Enter((ewe.Ewe.Tag, answer)))
        {
            case null:
                return Refuse(who, "not taken");
            case false:
                Tally.Leave(ewe.Ewe.Tag);
                Echo(EnterMessages.SameAgain(who, answer.Words));
                break;
            default:
                Tally.Enter(ewe.Ewe.Tag, hadAnswer);
                Echo(EnterMessages.ReadBack(who, answer.Words));
                break;
        }

        _at++;
        return true;
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

    /// <summary>The next ewe on the sheet, from the top again after the last, with the letters in her name or tag.</summary>
    private void GoTo(string letters)
    {
        for (var step = 1; step <= _ewes.Length && letters.Length > 0; step++)
        {
            var next = (_at + step) % _ewes.Length;
            var ewe = _ewes[next].Ewe;
            if (Has(ewe.Name ?? "") || Has(ewe.Tag) || Has(ewe.Tag.Replace(" ", "", StringComparison.Ordinal)))
            {
                _at = next;
                return;
            }
        }

        Say($"  nobody on this sheet has `{letters}` in her name or tag");

        bool Has(string text) => text.Contains(letters, StringComparison.OrdinalIgnoreCase);
    }

    private Asked Asked(EwePlan ewe) =>
        new(book.Flock, book.Find(ewe.Ewe.Tag) ?? throw new UsageException(EnterMessages.Gone(ewe.Ewe.Tag)), plan.AsOf);

    private void Ask(Asked ewe)
    {
        var known = sheet.Known(ewe) is { Length: > 0 } written ? written : "nothing written down";
        host.WriteLine(
            FormattableString.Invariant($"{_at + 1}/{_ewes.Length}  {ewe.Ewe.Name ?? "no name"}  {ewe.Ewe.Tag}  {known}"), new Style(decoration: Decoration.Bold));
        host.Out.Write("> ");
        host.Out.Flush();
    }

    private void Echo(string line)
    {
        host.WriteLine(line, new Style(Color.Green));
        host.Out.Flush();
    }

    private void Say(string line) => host.Out.WriteLine(line);
}
