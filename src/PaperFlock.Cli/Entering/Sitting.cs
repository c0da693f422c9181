using System.Collections.Immutable;
using PaperFlock.Cli.Dates;
using PaperFlock.Planning;
using Spectre.Console;

namespace PaperFlock.Cli.Entering;

/// <summary>Somebody with the sheet in one hand: asks ewe by ewe in its order, reads back what it understood, and writes it down at once.</summary>
internal sealed class Sitting(IPencilSheet sheet, AnswerBook book, SeasonPlan plan, ITyping typing, Surroundings surroundings)
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
            Say(EnterWords.AllAnswered);
        }
        else if (_at > 0)
        {
            Say(EnterWords.GoesOn(_at + 1, _ewes.Length));
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

        Say(EnterWords.AtTheEnd);
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
                new TableWriter(surroundings).Table(EnterWords.KeyHeads, sheet.Keys.Concat(EnterWords.CommonKeys).Select(k => new[] { k.Keys, k.Meaning }));
                return true;
            case "<" or "back":
                if (_at == 0)
                {
                    Say(EnterWords.First);
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
            throw new UsageException(EnterWords.Gone(ewe.Ewe.Tag));
        }

        switch (book.Enter((ewe.Ewe.Tag, answer)))
        {
            case null:
                return Refuse(who, EnterWords.Refused.Trim(' ', ':'));
            case false:
                _tally.Leave(ewe.Ewe.Tag);
                Echo(EnterWords.SameAgain(who, answer.Words));
                break;
            default:
                _tally.Enter(ewe.Ewe.Tag, hadAnswer);
                Echo(EnterWords.ReadBack(who, answer.Words));
                break;
        }

        _at++;
        return true;
    }

    private bool Refuse(string who, string why)
    {
        if (!typing.CanAskAgain)
        {
            surroundings.Error.WriteLine(Words.Complaint(EnterWords.PipeRefused(typing.Count, who, why)));
            return false;
        }

        Say($"{EnterWords.Refused} {why}");
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

        Say(EnterWords.NobodyFound(letters));

        bool Has(string text) => text.Contains(letters, StringComparison.OrdinalIgnoreCase);
    }

    private Asked Asked(EwePlan ewe) =>
        new(book.Flock, book.Find(ewe.Ewe.Tag) ?? throw new UsageException(EnterWords.Gone(ewe.Ewe.Tag)), plan.AsOf);

    private void Ask(Asked ewe)
    {
        var line = EnterWords.Ewe(_at + 1, _ewes.Length, ewe.Ewe.Name ?? "no name", ewe.Ewe.Tag, sheet.Known(ewe));
        if (surroundings.OutIsTerminal)
        {
            Consoles.For(surroundings.Out).WriteLine(line, new Style(decoration: Decoration.Bold));
        }
        else
        {
            Say(line);
        }

        surroundings.Out.Write("> ");
        surroundings.Out.Flush();
    }

    private void Echo(string line)
    {
        if (surroundings.OutIsTerminal)
        {
            Consoles.For(surroundings.Out).WriteLine(line, new Style(Color.Green));
        }
        else
        {
            Say(line);
        }

        surroundings.Out.Flush();
    }

    private void Say(string line) => surroundings.Out.WriteLine(line);
}
