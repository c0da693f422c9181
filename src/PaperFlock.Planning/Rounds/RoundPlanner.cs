namespace PaperFlock.Planning.Rounds;

internal static class RoundPlanner
{
    /// <summary>Every day from <paramref name="from"/> to <paramref name="to"/>, both included.</summary>
    /// <param name="lastLambing">Until when a ewe may well be late; rounds stay heavy until then, or until the last due date if that is later.</param>
    public static ImmutableArray<RoundDay> Plan(Flock flock, SeasonDates dates, LocalDate from, LocalDate to, LocalDate? lastLambing, ImmutableArray<FeedChart> charts)
    {
        var heavyFrom = dates.FirstDue?.PlusDays(-7 * flock.Practice.ChecksPerDay.HeavyFromWeeksBeforeLambing);
        var quiet = dates.FirstDue is null ? RoundReason.NoneInLamb : RoundReason.OutsideHeavyWeeks;
        var times = new RoundTimes(flock.Practice);
        var days = ImmutableArray.CreateBuilder<RoundDay>();
        for (var date = from; date <= to; date = date.PlusDays(1))
        {
            var sun = SunDay.At(flock.Holding, date);
            var heavy = date >= heavyFrom && (date <= dates.LastDue || date <= lastLambing);
            // A feed is given on a round.
            var feeds = charts.Select(c => c.On(date)?.FedAt.Length ?? 0).DefaultIfEmpty(0).Max();
            var checks = heavy ? flock.Practice.ChecksPerDay.Heavy : flock.Practice.ChecksPerDay.Normal;
            days.Add(new(
                date,
                sun.Dawn?.TimeOfDay,
                sun.Sunrise?.TimeOfDay,
                sun.Sunset?.TimeOfDay,
                sun.Dusk?.TimeOfDay,
                times.For(date, sun, Math.Max(checks, feeds)))
            {
                Why = heavy ? RoundReason.HeavyWeeks : quiet,
            });
        }

        return days.ToImmutable();
    }
}
