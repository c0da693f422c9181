namespace PaperFlock.Planning.Rounds;

internal static class RoundPlanner
{
    /// <summary>Most lambs come outside the busiest hours of the day: G. Alexander and others 1993, Australian Journal of Experimental Agriculture 33:557.</summary>
    private const int ByNight = 2;

    /// <summary>Every day from <paramref name="from"/> to <paramref name="to"/>, both included.</summary>
    /// <param name="lambing">From the first day on which any ewe may well lamb to the last; null when none is in lamb. Rounds stay heavy to its end, or to
    /// the last due date if that is later.</param>
    /// <param name="fedAt">When anybody is fed on a day.</param>
    public static ImmutableArray<RoundDay> Plan(
        Flock flock, SeasonDates dates, LocalDate from, LocalDate to, DateInterval? lambing, Func<LocalDate, ImmutableArray<FeedTime>> fedAt)
    {
        var checks = flock.Practice.ChecksPerDay;
        var heavyFrom = dates.FirstDue?.PlusDays(-7 * checks.HeavyFromWeeksBeforeLambing);
        var quiet = dates.FirstDue is null ? RoundReason.NoneInLamb : RoundReason.OutsideHeavyWeeks;
        var times = new RoundTimes(flock.Practice);
        var days = ImmutableArray.CreateBuilder<RoundDay>();
        for (var date = from; date <= to; date = date.PlusDays(1))
        {
            var sun = flock.Holding.Location is null ? null : SunDay.At(flock.Holding, date);
            var why = lambing?.Contains(date) == true ? RoundReason.Lambing
                : date >= heavyFrom && (date <= dates.LastDue || date <= lambing?.End) ? RoundReason.HeavyWeeks
                : quiet;
            var rounds = why switch { RoundReason.Lambing => checks.Lambing, RoundReason.HeavyWeeks => checks.Heavy, _ => checks.Normal };
            var nights = why == RoundReason.Lambing ? Math.Clamp(rounds - 2, 0, ByNight) : 0;
            days.Add(new(
                date,
                sun?.Dawn?.TimeOfDay,
                sun?.Sunrise?.TimeOfDay,
                sun?.Sunset?.TimeOfDay,
                sun?.Dusk?.TimeOfDay,
                times.For(date, sun, rounds - nights, fedAt(date), nights))
            {
                Why = why,
                IsByClock = sun is null,
            });
        }

        return days.ToImmutable();
    }
}
