using PaperFlock.Cli.Explain;

namespace PaperFlock.Cli.Commands;

/// <summary>Says why the plan says what it says of a day, a job or a ewe.</summary>
internal static class ExplainCommand
{
    /// <param name="words">As typed, a tag in several words without quotes among them.</param>
    /// <exception cref="UsageException">Nothing of the plan is meant, or too much.</exception>
    public static int Run(FlockLoader loader, IEnumerable<string> words, Host host)
    {
        if (loader.Plan(forPaper: false) is not { } planned)
        {
            return ExitStatus.FlockErrors;
        }

        var plan = planned.Plan;
        var meant = Meant.By(string.Join(' ', words).Trim(), plan);
        ExplanationWriter.Write(
            [
                .. meant.Days.Select(d => DayExplainer.Of(d, plan)),
                .. meant.Jobs.Select(j => JobExplainer.Of(j, plan)),
                .. meant.Ewes.Select(e => EweExplainer.Of(e, plan)),
            ],
            host);
        return ExitStatus.Clean;
    }
}
