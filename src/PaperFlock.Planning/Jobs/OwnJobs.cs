using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Text;

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
        return Need(job, null, day, day, day, groups.Sum(g => g.Ewes), JobSources.FileGivesTheDay()) with
        {
            Fixed = true,
            Remark = heavy ? LastSixWeeks.Must() : null,
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
                remark = LastSixWeeks.KeptOut();
            }
            else
            {
                remark = LastSixWeeks.Must();
            }
        }

        var middle = earliest.PlusDays(Period.DaysBetween(earliest, latest) / 2);
        return Need(job, group.Group, earliest, middle, latest, group.Ewes, Words(window)) with
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
        JobSources.FlockFile(),
        RidesWith: null,
        Remark: null,
        NotAfter: null,
        job.Span);

    private static string Words(OwnJobWindow window) => window switch
    {
        { FirstDay: 0, LastDay: 0 } => SameDay(window.Anchor),
        { LastDay: <= 0 } => Before(window.Anchor, Range(-window.FirstDay, -window.LastDay)),
        { FirstDay: >= 0 } => After(window.Anchor, Range(window.FirstDay, window.LastDay)),
        _ => Around(
            window.Anchor, English.CountLoose(-window.FirstDay, "day", "days"), English.CountLoose(window.LastDay, "day", "days")),
    };

    private static string Range(int from, int to) =>
        from == to ? English.CountLoose(from, "day", "days") : $"{from} to {English.CountLoose(to, "day", "days")}";

    // Whole sentences for each anchor: few languages have one word order for "before the first is due" and "before housing".
    private static string SameDay(JobAnchor anchor) => anchor switch
    {
        JobAnchor.TupIn => "the flock file asks for it on the same day as the tup goes in",
        JobAnchor.TupOut => "the flock file asks for it on the same day as the tup comes out",
        JobAnchor.Scan => "the flock file asks for it on the same day as scanning",
        JobAnchor.Feeding => "the flock file asks for it on the same day as feeding starts",
        JobAnchor.Housing => "the flock file asks for it on the same day as housing",
        JobAnchor.FirstDue => "the flock file asks for it on the same day as the first is due",
        JobAnchor.LastDue => "the flock file asks for it on the same day as the last is due",
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };

    private static string Before(JobAnchor anchor, string days) => anchor switch
    {
        JobAnchor.TupIn => $"the flock file asks for it {days} before the tup goes in",
        JobAnchor.TupOut => $"the flock file asks for it {days} before the tup comes out",
        JobAnchor.Scan => $"the flock file asks for it {days} before scanning",
        JobAnchor.Feeding => $"the flock file asks for it {days} before feeding starts",
        JobAnchor.Housing => $"the flock file asks for it {days} before housing",
        JobAnchor.FirstDue => $"the flock file asks for it {days} before the first is due",
        JobAnchor.LastDue => $"the flock file asks for it {days} before the last is due",
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };

    private static string After(JobAnchor anchor, string days) => anchor switch
    {
        JobAnchor.TupIn => $"the flock file asks for it {days} after the tup goes in",
        JobAnchor.TupOut => $"the flock file asks for it {days} after the tup comes out",
        JobAnchor.Scan => $"the flock file asks for it {days} after scanning",
        JobAnchor.Feeding => $"the flock file asks for it {days} after feeding starts",
        JobAnchor.Housing => $"the flock file asks for it {days} after housing",
        JobAnchor.FirstDue => $"the flock file asks for it {days} after the first is due",
        JobAnchor.LastDue => $"the flock file asks for it {days} after the last is due",
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };

    private static string Around(JobAnchor anchor, string before, string after) => anchor switch
    {
        JobAnchor.TupIn => $"the flock file asks for it from {before} before to {after} after the tup goes in",
        JobAnchor.TupOut => $"the flock file asks for it from {before} before to {after} after the tup comes out",
        JobAnchor.Scan => $"the flock file asks for it from {before} before to {after} after scanning",
        JobAnchor.Feeding => $"the flock file asks for it from {before} before to {after} after feeding starts",
        JobAnchor.Housing => $"the flock file asks for it from {before} before to {after} after housing",
        JobAnchor.FirstDue => $"the flock file asks for it from {before} before to {after} after the first is due",
        JobAnchor.LastDue => $"the flock file asks for it from {before} before to {after} after the last is due",
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };
}
