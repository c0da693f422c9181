using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Languages;

namespace PaperFlock.Planning.Jobs;

/// <summary>The keeper's own jobs: one day for the whole flock, or a window for each group.</summary>
internal static class OwnJobs
{
    public static IEnumerable<JobNeed> For(Flock flock, IReadOnlyList<GroupAnchors> groups, Language language)
    {
        foreach (var job in flock.OwnJobs)
        {
            if (job.On is { } day)
            {
                yield return OnDay(job, day, groups, language);
                continue;
            }

            foreach (var group in groups)
            {
                if (InWindow(job, group, flock.Practice, language) is { } need)
                {
                    yield return need;
                }
            }
        }
    }

    private static JobNeed OnDay(OwnJob job, LocalDate day, IReadOnlyList<GroupAnchors> groups, Language language)
    {
        var heavy = job.Handled && groups.Any(g => LastSixWeeks.Of(g.Due)?.Overlaps(day, day) == true);
        return Need(job, null, day, day, day, groups.Sum(g => g.Ewes), JobSources.FileGivesTheDay(language), language) with
        {
            Fixed = true,
            Remark = heavy ? LastSixWeeks.Must(language) : null,
        };
    }

    private static JobNeed? InWindow(OwnJob job, GroupAnchors group, Practice practice, Language language)
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
                remark = LastSixWeeks.KeptOut(language);
            }
            else
            {
                remark = LastSixWeeks.Must(language);
            }
        }

        var middle = earliest.PlusDays(Period.DaysBetween(earliest, latest) / 2);
        return Need(job, group.Group, earliest, middle, latest, group.Ewes, Words(window, language), language) with
        {
            Remark = remark,
            NotAfter = notAfter,
            Basis = group.BasisOf(window.Anchor, practice, language),
        };
    }

    private static JobNeed Need(OwnJob job, TuppingGroup? group, LocalDate earliest, LocalDate best, LocalDate latest, int ewes, string reason, Language language) => new(
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
        JobSources.FlockFile(language),
        RidesWith: null,
        Remark: null,
        NotAfter: null,
        job.Span);

    private static string Words(OwnJobWindow window, Language language) => window switch
    {
        { FirstDay: 0, LastDay: 0 } => SameDay(window.Anchor, language),
        { LastDay: <= 0 } => Before(window.Anchor, Range(-window.FirstDay, -window.LastDay, language), language),
        { FirstDay: >= 0 } => After(window.Anchor, Range(window.FirstDay, window.LastDay, language), language),
        _ => Around(
            window.Anchor, language.CountLoose(-window.FirstDay, "day", "days"), language.CountLoose(window.LastDay, "day", "days"), language),
    };

    private static string Range(int from, int to, Language language) =>
        from == to ? language.CountLoose(from, "day", "days") : language.Say($"{from} to {language.CountLoose(to, "day", "days")}");

    // Whole sentences for each anchor: few languages have one word order for "before the first is due" and "before housing".
    private static string SameDay(JobAnchor anchor, Language language) => anchor switch
    {
        JobAnchor.TupIn => language.Say("the flock file asks for it on the same day as the tup goes in"),
        JobAnchor.TupOut => language.Say("the flock file asks for it on the same day as the tup comes out"),
        JobAnchor.Scan => language.Say("the flock file asks for it on the same day as scanning"),
        JobAnchor.Feeding => language.Say("the flock file asks for it on the same day as feeding starts"),
        JobAnchor.Housing => language.Say("the flock file asks for it on the same day as housing"),
        JobAnchor.FirstDue => language.Say("the flock file asks for it on the same day as the first is due"),
        JobAnchor.LastDue => language.Say("the flock file asks for it on the same day as the last is due"),
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };

    private static string Before(JobAnchor anchor, string days, Language language) => anchor switch
    {
        JobAnchor.TupIn => language.Say($"the flock file asks for it {days} before the tup goes in"),
        JobAnchor.TupOut => language.Say($"the flock file asks for it {days} before the tup comes out"),
        JobAnchor.Scan => language.Say($"the flock file asks for it {days} before scanning"),
        JobAnchor.Feeding => language.Say($"the flock file asks for it {days} before feeding starts"),
        JobAnchor.Housing => language.Say($"the flock file asks for it {days} before housing"),
        JobAnchor.FirstDue => language.Say($"the flock file asks for it {days} before the first is due"),
        JobAnchor.LastDue => language.Say($"the flock file asks for it {days} before the last is due"),
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };

    private static string After(JobAnchor anchor, string days, Language language) => anchor switch
    {
        JobAnchor.TupIn => language.Say($"the flock file asks for it {days} after the tup goes in"),
        JobAnchor.TupOut => language.Say($"the flock file asks for it {days} after the tup comes out"),
        JobAnchor.Scan => language.Say($"the flock file asks for it {days} after scanning"),
        JobAnchor.Feeding => language.Say($"the flock file asks for it {days} after feeding starts"),
        JobAnchor.Housing => language.Say($"the flock file asks for it {days} after housing"),
        JobAnchor.FirstDue => language.Say($"the flock file asks for it {days} after the first is due"),
        JobAnchor.LastDue => language.Say($"the flock file asks for it {days} after the last is due"),
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };

    private static string Around(JobAnchor anchor, string before, string after, Language language) => anchor switch
    {
        JobAnchor.TupIn => language.Say($"the flock file asks for it from {before} before to {after} after the tup goes in"),
        JobAnchor.TupOut => language.Say($"the flock file asks for it from {before} before to {after} after the tup comes out"),
        JobAnchor.Scan => language.Say($"the flock file asks for it from {before} before to {after} after scanning"),
        JobAnchor.Feeding => language.Say($"the flock file asks for it from {before} before to {after} after feeding starts"),
        JobAnchor.Housing => language.Say($"the flock file asks for it from {before} before to {after} after housing"),
        JobAnchor.FirstDue => language.Say($"the flock file asks for it from {before} before to {after} after the first is due"),
        JobAnchor.LastDue => language.Say($"the flock file asks for it from {before} before to {after} after the last is due"),
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };
}
