namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>Work that no day of the season can hold.</summary>
internal static class WorkCheck
{
    /// <summary>A day less eight hours' sleep.</summary>
    private const int HoursInADay = 16;

    public static void Of(
        ImmutableArray<OwnJob> jobs, ImmutableArray<Ewe> ewes, KeeperDays days, SeasonDraft season, Practice practice, DiagnosticBag bag)
    {
        // Each group's ewes are gathered for themselves, so the largest is what a day must hold.
        var most = ewes.GroupBy(e => e.Group).Select(g => g.Count()).DefaultIfEmpty(0).Max();
        bool IsTooMuch(decimal? minutes) => minutes * most > HoursInADay * 60;
        foreach (var job in jobs.Where(j => IsTooMuch(j.MinutesPerEwe)))
        {
            bag.Add(FlockMessages.TooMuchWork(job.Span, job.Title, job.MinutesPerEwe!.Value, most));
        }

        foreach (var day in jobs.Where(j => j.On is not null && !IsTooMuch(j.MinutesPerEwe)).GroupBy(j => j.On!.Value).Where(d => IsTooMuch(d.Sum(j => j.MinutesPerEwe))))
        {
            bag.Add(FlockMessages.TooMuchOnOneDay(day.Last().Span, day.Key, day.Sum(j => j.MinutesPerEwe)!.Value * most));
        }

        if (season is not { TupIn: { } tupIn, TupOut: { } tupOut } || days.Away.IsEmpty)
        {
            return;
        }

        var (first, last) = (tupIn.PlusWeeks(-practice.TeethToesTeatsWeeksBeforeTupping), tupOut.PlusDays(season.GestationDays));
        if (new DateInterval(first, last).All(day => !days.IsFreeWeekday(day) || days.AbsenceOn(day) is not null))
        {
            bag.Add(FlockMessages.NoFreeDay(days.Away[0].Span, first, last));
        }
    }
}
