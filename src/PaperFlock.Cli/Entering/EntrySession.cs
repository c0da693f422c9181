using System.Collections.Immutable;
using PaperFlock.Cli.Dates;
using PaperFlock.Planning;
using Spectre.Console;

namespace PaperFlock.Cli.Entering;

/// <summary>Somebody with the sheet in one hand: asks ewe by ewe in its order, reads back what it understood, and writes it down at once.</summary>
internal sealed class EntrySession(IPencilSheet sheet, AnswerBook book, SeasonPlan plan, ITyping typing, Host host)
{
    private readonly ImmutableArray<EwePlan> _ewes = sheet.Ewes(plan);
    private readonly Tally _tally = new();
    private int _at;

    public Tally Tally => _tally;

    /// <returns>False when an answer was refused that cannot be asked for again.</returns>
    /// <exception cref="OperationCanceledException">The user wants the program to end.</exception>
    public bool Run()
    {
        _at = _ewes.ToList().FindIndex(e => sheet.Known(Asked(e)).Length == 0);
        if (_at < 0)
        {
            _at = 0;
            Say(EnterMessages.AllAnswered);
        }
        else if (_at > 0)
        {
            Say(EnterMessages.GoesOn(_at + 1, _ewes.Length));
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

        Say(EnterMessages.AtTheEnd);
        return true;
    }

    /// <returns>False when it was refused and cannot be asked for again.</returns>
    private bool Answer(string typed, Asked ewe)
    {
        switch (typed)
        {
            case "":
                _tally.Leave(ewe.Ewe.Tag);
                _at++;
                return true;
            case "?":
                new TableWriter(host).Table(EnterMessages.KeyHeads, sheet.Keys.Concat(EnterMessages.CommonKeys).Select(k => new[] { k.Keys, k.Meaning }));
                return true;
            case "<" or "back":
                if (_at == 0)
                {
                    Say(EnterMessages.First);
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
                return Refuse(who, EnterMessages.Refused.Trim(' ', ':'));
            case false:
                _tally.Leave(ewe.Ewe.Tag);
                Echo(EnterMessages.SameAgain(who, answer.Words));
                break;
            default:
                _tally.Enter(ewe.Ewe.Tag, hadAnswer);
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
            host.Error.WriteLine(Messages.Complaint(EnterMessages.PipeRefused(typing.Count, who, why)));
            return false;
        }

        Say($"{EnterMessages.Refused} {why}");
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

        Say(EnterMessages.NobodyFound(letters));

        bool Has(string text) => text.Contains(letters, StringComparison.OrdinalIgnoreCase);
    }

    private Asked Asked(EwePlan ewe) =>
        new(book.Flock, book.Find(ewe.Ewe.Tag) ?? throw new UsageException(EnterMessages.Gone(ewe.Ewe.Tag)), plan.AsOf);

    private void Ask(Asked ewe)
    {
        var line = EnterMessages.Ewe(_at + 1, _ewes.Length, ewe.Ewe.Name ?? "no name", ewe.Ewe.Tag, sheet.Known(ewe));
        if (host.OutIsTerminal)
        {
            Consoles.For(host.Out).WriteLine(line, new Style(decoration: Decoration.Bold));
        }
        else
        {
            Say(line);
        }

        host.Out.Write("> ");
        host.Out.Flush();
    }

    private void Echo(string line)
    {
        if (host.OutIsTerminal)
        {
            Consoles.For(host.Out).WriteLine(line, new Style(Color.Green));
        }
        else
        {
            Say(line);
        }

        host.Out.Flush();
    }

    private void Say(string line) => host.Out.WriteLine(line);
}
