namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>Work that no day of the season can hold.</summary>
internal static class WorkCheck
{
    /// <summary>A day less eight hours' sleep.</summary>
    private const int HoursInADay = 16;

    public static void Of(
        ImmutableArray<OwnJob> jobs, ImmutableArray<Ewe> ewes, KeeperDays keeper, SeasonDraft season, Practice practice, DiagnosticBag bag)
    {
        // Each group's ewes are gathered for themselves, so the largest is what a day must hold.
        var most = ewes.GroupBy(e => e.Group).Select(g => g.Count()).DefaultIfEmpty(0).Max();
        bool IsTooMuch(decimal? minutes) => minutes * most > HoursInADay * 60;
        bag.AddRange(jobs.Where(j => IsTooMuch(j.MinutesPerEwe)).Select(j => FlockMessages.TooMuchWork(j.Span, j.Title, j.MinutesPerEwe!.Value, most)));
        var days = jobs.Where(j => j.On is not null && !IsTooMuch(j.MinutesPerEwe)).GroupBy(j => j.On!.Value).Where(d => IsTooMuch(d.Sum(j => j.MinutesPerEwe)));
        bag.AddRange(days.Select(d => FlockMessages.TooMuchOnOneDay(d.Last().Span, d.Key, d.Sum(j => j.MinutesPerEwe)!.Value * most)));

        if (season is not { TupIn: { } tupIn, TupOut: { } tupOut } || keeper.Away.IsEmpty)
        {
            return;
        }

        var (first, last) = (tupIn.PlusWeeks(-practice.TeethToesTeatsWeeksBeforeTupping), tupOut.PlusDays(season.GestationDays));
        bag.Add(new DateInterval(first, last).Any(keeper.IsFree) ? null : FlockMessages.NoFreeDay(keeper.Away[0].Span, first, last));
    }
}
