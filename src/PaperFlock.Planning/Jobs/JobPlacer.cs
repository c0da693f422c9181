namespace PaperFlock.Planning.Jobs;

/// <summary>
/// Gives every job its day. Fixed jobs stand; handling jobs take the fewest gatherings that meet every window, sharing with
/// the fixed ones where those days are theirs to have; the rest go on the nearest day. A free day always beats one on which
/// the keeper is merely there, and no job is put into an absence.
/// </summary>
internal sealed class JobPlacer(KeeperCalendar calendar)
{
    /// <returns>In the order of <paramref name="jobs"/>.</returns>
    public ImmutableArray<Job> Place(ImmutableArray<Job> jobs)
    {
        var standing = jobs.Where(j => j is { Handled: true, IsFixed: true }).Select(j => j.Best).ToHashSet();
        var gathered = jobs
            .Where(j => j is { Handled: true, IsFixed: false })
            .Select(j => (Job: j, Choice: calendar.DaysFor(j)))
            .Where(j => !j.Choice.Days.IsEmpty)
            // A day is either free or not, so jobs that have free days never share one with jobs that have none.
            .GroupBy(j => j.Choice.Free)
            .SelectMany(same => Gather([.. same.Select(s => s.Job)], same.SelectMany(s => s.Choice.Days), standing))
            .ToDictionary<Job, LocalDate>(ReferenceEqualityComparer.Instance);
        return [.. jobs.Select(j => Placed(j, gathered))];
    }

    private Job Placed(Job job, Dictionary<Job, LocalDate> gathered)
    {
        if (job.IsFixed)
        {
            return job with { Date = job.Best, WhyThatDay = calendar.IsAway(job.Best) ? DayReason.StandsThoughAway : DayReason.Best };
        }

        var (free, days) = calendar.DaysFor(job);
        if (days.IsEmpty)
        {
            return job with { WhyThatDay = DayReason.NoDay, NearestDay = calendar.NearestFreeOutside(job) };
        }

        var nearest = days.MinBy(job.DaysOff);
        var day = job.Handled ? gathered[job] : nearest;
        return job with
        {
            Date = day,
            WhyThatDay = !free ? DayReason.NobodyFree
                : day == job.Best ? DayReason.Best
                : job.DaysOff(day) > job.DaysOff(nearest) ? DayReason.SavesGathering
                : calendar.IsAway(job.Best) ? DayReason.NearestFreeSinceAway
                : DayReason.NearestFree,
        };
    }

    private static IEnumerable<KeyValuePair<Job, LocalDate>> Gather(ImmutableArray<Job> jobs, IEnumerable<LocalDate> allowed, HashSet<LocalDate> standing)
    {
        var origin = jobs.Min(j => j.Earliest);
        var windows = jobs.Select(j => new JobWindow(Number(j.Earliest), Number(j.Best), Number(j.Latest)));
        var days = FewestDays.Choose([.. windows], [.. allowed.Distinct().Order().Select(Number)], standing.Select(Number).ToHashSet());
        return jobs.Zip(days, (job, day) => KeyValuePair.Create(job, origin.PlusDays(day)));

        int Number(LocalDate day) => Period.DaysBetween(origin, day);
    }
}
