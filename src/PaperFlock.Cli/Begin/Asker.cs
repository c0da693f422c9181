namespace PaperFlock.Cli.Begin;

/// <summary>Puts questions: answers come from the command line where it has them, else from whoever sits at the keyboard or has filled the pipe.</summary>
/// <param name="given">What was typed after an option; null when it was not used.</param>
/// <param name="takeUsual">Ask nobody: what the command line leaves open has its usual answer.</param>
internal sealed class Asker(Func<string, string?> given, bool takeUsual, Host host)
{
    private readonly List<string> _complaints = [];
    private bool _hasAsked;

    /// <param name="option">The option that answers it, such as <c>--place</c>.</param>
    /// <param name="question">A line, or several.</param>
    /// <param name="usual">The answer of somebody who only presses Enter.</param>
    /// <param name="shownUsual">As it stands in the brackets behind the question; empty for none.</param>
    /// <param name="read">The answer that a text stands for, or else why it is none.</param>
    public T Ask<T>(string option, string question, T usual, string shownUsual, Func<string, (T? Answer, string? WhyNot)> read)
    {
        if (given(option) is { } typed)
        {
            var (answer, whyNot) = read(typed.Trim());
            if (whyNot is null)
            {
                return answer!;
            }

            Complain($"{option}: {whyNot}");
        }

        // Nobody wants to answer six questions to learn that the command line was wrong.
        return takeUsual || _complaints.Count > 0 ? usual : AskSomebody(option, question, usual, shownUsual, read);
    }

    /// <summary>Something else that is wrong with the command line.</summary>
    public void Complain(string complaint) => _complaints.Add(complaint);

    /// <exception cref="UsageException">Something after an option was no answer; all of it is named.</exception>
    public void ThrowIfWrong()
    {
        if (_complaints.Count > 0)
        {
            throw new UsageException(string.Join('\n', _complaints));
        }
    }

    private T AskSomebody<T>(string option, string question, T usual, string shownUsual, Func<string, (T? Answer, string? WhyNot)> read)
    {
        if (!_hasAsked)
        {
            host.Out.WriteLine(
                """
                A few questions, and your flock file is written. Press Enter to take what stands in [brackets].
                Nothing is written before the last answer, and everything can be changed in the file afterwards.
                """);
            _hasAsked = true;
        }

        while (true)
        {
            host.Out.WriteLine();
            host.Out.WriteLine(question);
            var typed = host.Ask(shownUsual.Length == 0 ? "> " : $"[{shownUsual}] > ")
                ?? throw new UsageException($"the answers end before the question of {option}: nothing was written; --yes takes the usual answers");
            if (typed.Length == 0)
            {
                return usual;
            }

            var (answer, whyNot) = read(typed);
            if (whyNot is null)
            {
                return answer!;
            }

            if (!host.InIsTerminal)
            {
                // Asking again would take the answer to the next question for this one's.
                throw new UsageException($"{option}: {whyNot}");
            }

            host.Out.WriteLine($"  {whyNot}");
        }
    }
}
