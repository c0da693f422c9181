namespace PaperFlock.Cli.Begin;

/// <summary>One thing to be known before a flock file can be written.</summary>
/// <param name="Option">The option that answers it, such as <c>--place</c>.</param>
/// <param name="Given">What was typed after that option; null when it was not used.</param>
/// <param name="Text">The question.</param>
/// <param name="Usual">The answer of somebody who only presses Enter.</param>
/// <param name="ShownUsual">As it stands in the brackets behind the question; empty for none.</param>
/// <param name="Read">The answer that a text stands for, or else why it is none.</param>
internal sealed record Question<T>(
    string Option, string? Given, string Text, T Usual, string ShownUsual, Func<string, (T? Answer, string? WhyNot)> Read);

/// <summary>Puts questions: from the command line where it has the answer, else to whoever sits at the keyboard or has filled the pipe.</summary>
/// <param name="takeUsual">Ask nobody: what the command line leaves open has its usual answer.</param>
internal sealed class Asker(Host host, bool takeUsual)
{
    private readonly List<string> _complaints = [];
    private bool _hasAsked;

    public T Ask<T>(Question<T> question)
    {
        if (question.Given is { } given)
        {
            var (answer, whyNot) = question.Read(given.Trim());
            if (whyNot is null)
            {
                return answer!;
            }

            _complaints.Add($"{question.Option}: {whyNot}");
        }

        // Nobody wants to answer six questions to learn that the command line was wrong.
        return takeUsual || _complaints.Count > 0 ? question.Usual : AskSomebody(question);
    }

    /// <summary>Something else that is wrong with the command line.</summary>
    public void Complain(string complaint) => _complaints.Add(complaint);

    /// <exception cref="UsageException">Something after an option was no answer; all of it is named.</exception>
    public void ThrowIfWrong()
    {
        if (_complaints.Count > 0)
        {
            throw new UsageException(string.Join($"\n{Messages.Complaint(string.Empty)}", _complaints));
        }
    }

    private T AskSomebody<T>(Question<T> question)
    {
        if (!_hasAsked)
        {
            host.Out.WriteLine(BeginMessages.Opening);
            _hasAsked = true;
        }

        while (true)
        {
            host.Out.WriteLine();
            host.Out.WriteLine(question.Text);
            host.Out.Write(question.ShownUsual.Length == 0 ? "> " : $"[{question.ShownUsual}] > ");
            host.Out.Flush();
            var typed = ReadLine() ?? throw new UsageException(BeginMessages.AnswersEnd(question.Option));
            if (!host.InIsTerminal)
            {
                // A terminal shows what is typed; a pipe's answers would be missing from the record.
                host.Out.WriteLine(typed);
            }

            if (string.IsNullOrWhiteSpace(typed))
            {
                return question.Usual;
            }

            var (answer, whyNot) = question.Read(typed.Trim());
            if (whyNot is null)
            {
                return answer!;
            }

            if (!host.InIsTerminal)
            {
                // Asking again would take the answer to the next question for this one's.
                throw new UsageException($"{question.Option}: {whyNot}");
            }

            host.Out.WriteLine($"  {whyNot}");
        }
    }

    /// <summary>Reading cannot be interrupted, but waiting for it can.</summary>
    private string? ReadLine()
    {
        host.Stop.ThrowIfCancellationRequested();
        var line = Task.Run(host.In.ReadLine);
        line.Wait(host.Stop);
        host.Stop.ThrowIfCancellationRequested();
        return line.Result;
    }
}
