using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Jobs;

/// <summary>The keeper's own jobs: one day for the whole flock, or a window for each group.</summary>
internal static class OwnJobs
{
    public static IEnumerable<JobNeed> For(Flock flock, IReadOnlyList<GroupAnchors> groups)
    {
        foreach (var job in flock.OwnJobs)
        {
            if (job.On is { } day)
            {
                yield return OnDay(job, day, groups);
                continue;
            }

            foreach (var group in groups)
            {
                if (InWindow(job, group, flock.Practice) is { } need)
                {
                    yield return need;
                }
            }
        }
    }

    private static JobNeed OnDay(OwnJob job, LocalDate day, IReadOnlyList<GroupAnchors> groups)
    {
        var heavy = job.Handled && groups.Any(g => LastSixWeeks.Of(g.Due)?.Overlaps(day, day) == true);
        return Need(job, null, day, day, day, groups.Sum(g => g.Ewes), "the day the flock file gives") with
        {
            Fixed = true,
            Remark = heavy ? LastSixWeeks.Must : null,
        };
    }

    private static JobNeed? InWindow(OwnJob job, GroupAnchors group, Practice practice)
    {
        if (job.Window is not { } window || group.DayOf(window.Anchor, practice) is not { } anchor)
        {
            return null;
        }

        var earliest = anchor.PlusDays(window.FirstDay);
        var latest = anchor.PlusDays(window.LastDay);
        string? remark = null;
        LocalDate? notAfter = null;
        if (job.Handled && LastSixWeeks.Of(group.Due) is { } heavy && heavy.Overlaps(earliest, latest))
        {
            if (earliest < heavy.From)
            {
                latest = heavy.From.PlusDays(-1);
                notAfter = latest;
                remark = LastSixWeeks.KeptOut;
            }
            else
            {
                remark = LastSixWeeks.Must;
            }
        }

        var middle = earliest.PlusDays(Period.DaysBetween(earliest, latest) / 2);
        return Need(job, group.Group, earliest, middle, latest, group.Ewes, $"the flock file asks for it {Words(window)}") with
        {
            Remark = remark,
            NotAfter = notAfter,
            Basis = group.BasisOf(window.Anchor, practice),
        };
    }

    private static JobNeed Need(OwnJob job, TuppingGroup? group, LocalDate earliest, LocalDate best, LocalDate latest, int ewes, string reason) => new(
        JobIds.Own,
        job.Title,
        group,
        earliest,
        best,
        latest,
        job.Handled,
        Fixed: false,
        job.MinutesPerEwe is { } minutes ? (int)decimal.Ceiling(minutes * ewes) : null,
        reason,
        JobSources.FlockFile,
        RidesWith: null,
        Remark: null,
        NotAfter: null,
        job.Span);

    private static string Words(OwnJobWindow window)
    {
        var anchor = GroupAnchors.Words(window.Anchor);
        return window switch
        {
            { FirstDay: 0, LastDay: 0 } => $"on the same day as {anchor}",
            { LastDay: <= 0 } => $"{Range(-window.FirstDay, -window.LastDay)} before {anchor}",
            { FirstDay: >= 0 } => $"{Range(window.FirstDay, window.LastDay)} after {anchor}",
            _ => $"from {DateWords.Count(-window.FirstDay, "day")} before to {DateWords.Count(window.LastDay, "day")} after {anchor}",
        };

        static string Range(int from, int to) => from == to ? DateWords.Count(from, "day") : $"{from} to {DateWords.Count(to, "day")}";
    }
}
