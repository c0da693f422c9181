namespace PaperFlock.Planning.Jobs;

/// <summary>Which days the keeper's week and absences leave for jobs.</summary>
internal sealed class KeeperCalendar(KeeperDays days)
{
    /// <summary>How far outside a window a day that would do is looked for.</summary>
    private const int SearchDays = 366;

    public bool IsAway(LocalDate day) => days.AbsenceOn(day) is not null;

    /// <summary>The free days of its window; where it has none, the days the keeper is at least there; empty where there are none either.</summary>
    public (bool Free, ImmutableArray<LocalDate> Days) DaysFor(Job job)
    {
        var there = new DateInterval(job.Earliest, job.Latest).Where(d => !IsAway(d)).ToImmutableArray();
        var free = there.RemoveAll(d => !days.IsFree(d));
        return free.IsEmpty ? (false, there) : (true, free);
    }

    /// <summary>The last free day of a span, both ends in it; its last day where none is free.</summary>
    public LocalDate LastFree(LocalDate from, LocalDate to) =>
        new DateInterval(from, to).Reverse().Where(days.IsFree).Select(d => (LocalDate?)d).FirstOrDefault() ?? to;

    /// <summary>
    /// The free day nearest to its window from outside, the earlier of two as near; null when there is none within a year.
    /// No day after the window will do for a job kept out of the last six weeks.
    /// </summary>
    public LocalDate? NearestFreeOutside(Job job) => Enumerable.Range(1, SearchDays)
        .SelectMany(i => new LocalDate?[] { job.Earliest.PlusDays(-i), job.Rule.Late == LateHandling.KeptBefore ? null : job.Latest.PlusDays(i) })
        .FirstOrDefault(day => day is { } there && days.IsFree(there));
}
