namespace PaperFlock.Packs;

/// <summary>A table of dates for a screen.</summary>
/// <param name="Rows">A cell for each of <paramref name="Heads"/>; a line break in one may be shown as a blank.</param>
/// <param name="IsLastLong">The last column is sentences, too long to stand beside the others on a narrow screen.</param>
public sealed record DatesTable(string Title, ImmutableArray<string> Heads, ImmutableArray<ImmutableArray<string>> Rows, bool IsLastLong)
{
    /// <summary>The jobs by date, the days the ewes are handled, and when each ewe is due.</summary>
    internal static IEnumerable<DatesTable> Of(SeasonPlan plan)
    {
        yield return new DatesTable(
            $"{plan.Flock.Holding.Name}: jobs as planned on {ScreenText.Day(plan.AsOf)}",
            ["date", "job", "group", "any use", "why"],
            [.. plan.Jobs.Select(j => JobRow(j, plan))],
            IsLastLong: true);
        if (plan.Gatherings.Length > 0)
        {
            yield return new DatesTable(
                $"The ewes are handled on {ScreenText.Count(plan.Gatherings.Length, "day")}",
                ["date", "jobs"],
                [.. plan.Gatherings.Select(g => ImmutableArray.Create(ScreenText.Day(g.Date), string.Join(", ", g.Jobs.Select(j => JobText.Title(j, plan.Flock)))))],
                IsLastLong: false);
        }

        yield return new DatesTable(
            $"{ScreenText.Count(plan.Ewes.Length, "ewe")}, and when each is due",
            ["tag", "name", "likely", "9 in 10 between", "dated by"],
            [.. plan.Ewes.Select(EweRow)],
            IsLastLong: true);
    }

    private static ImmutableArray<string> JobRow(Job job, SeasonPlan plan) =>
    [
        ScreenText.JobDay(job),
        JobText.Title(job, plan.Flock),
        job.Group?.Name ?? "",
        job.IsFixed ? "that day" : Between(job.Earliest, job.Latest),
        JobText.Trouble(job) ?? JobText.Why(job, plan),
    ];

    private static ImmutableArray<string> EweRow(EwePlan ewe) =>
    [
        ewe.Ewe.Tag,
        ewe.Ewe.Name ?? "",
        ewe.Due is { } due ? ScreenText.Day(due.Likely) : "",
        ewe.Due is { } window ? Between(window.Earliest, window.Latest) : "",
        ewe.Due is { } dated ? EvidenceText.Of(dated.Evidence) : ewe.Standing switch
        {
            Standing.Empty => "empty",
            Standing.LeftOut => "left out of the tup",
            Standing.Lambed => "lambed",
            Standing.LostLambs => "lost her lambs",
            Standing.Gone => "gone",
            _ => "not known",
        },
    ];

    /// <summary>The year is plain from the dates beside it.</summary>
    private static string Between(LocalDate first, LocalDate last) =>
        first == last ? DateText.Loose(first) : $"{DateText.Loose(first)}\nto {DateText.Loose(last)}";
}
