using PaperFlock.Sheets.Jobs;

namespace PaperFlock.Sheets.WallPlanner;

/// <summary>One day of the planner, as data.</summary>
/// <param name="Jobs">All that are shown on it, with a day or without.</param>
/// <param name="Away">The absence it is a day of; null when the keeper is there.</param>
/// <param name="Low">10 % point of ewes lambing.</param>
/// <param name="High">90 % point.</param>
internal sealed record PlannerDay(LocalDate Date, ImmutableArray<JobLine> Jobs, bool Free, Absence? Away, double ExpectedEwes, int Low, int High)
{
    public bool HasJob => !Jobs.IsEmpty;

    public bool SitterDay => Away is not null;

    public bool SitterBegins => Away?.From == Date;

    /// <summary>A line for its jobs, one that shouts for each job without a day, one for a sitter who starts.</summary>
    public IEnumerable<(string Day, string Words, bool Loud)> Lines()
    {
        var day = DateText.WeekdayNumber(Date);
        var placed = Jobs.Where(l => l.Job.Date is not null)
            .GroupBy(l => l.Groups)
            .Select(g => string.Join(", ", g.Select(l => l.Title)) + Bracketed(g.Key))
            .ToList();
        if (placed.Count > 0)
        {
            yield return (day, string.Join(" · ", placed), false);
        }

        foreach (var unplaced in Jobs.Where(l => l.Job.Date is null))
        {
            var nearest = unplaced.Job.NearestDay is { } n ? $"Nearest day: {DateText.Short(n)}." : "";
            yield return ("NO DAY", Block.Sentences($"for {unplaced.Title}{Bracketed(unplaced.Groups)}.", nearest), true);
        }

        if (Away is { } away && SitterBegins)
        {
            yield return (day, $"{away.Sitter ?? "Sitter"} has the pack, to {DateText.Short(away.To)}", true);
        }
    }

    private static string Bracketed(string groups) => groups.Length == 0 ? "" : $" ({groups})";
}
