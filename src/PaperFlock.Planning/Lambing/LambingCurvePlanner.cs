namespace PaperFlock.Planning.Lambing;

/// <summary>Ewes lambing a day and lambing pens in use a night. Ewes lamb independently, so both are sums of unequal
/// yes/no chances, and exact.</summary>
internal static class LambingCurvePlanner
{
    private const int MostBusiestNights = 3;
    private const double Low = 0.1;
    private const double High = 0.9;

    public static LambingCurve Plan(Flock flock, IEnumerable<EwePlan> ewes)
    {
        var carrying = ewes.Where(e => e.Due is not null && e.IsCarrying)
            .Select(e => new LambingEwe(e.Due!.Chances, PenDays(flock, e)))
            .ToImmutableArray();
        if (carrying.IsEmpty)
        {
            return new LambingCurve(0, [], [], null);
        }

        var pens = flock.Housing.Lambing == LambingPlace.Indoors ? flock.Housing.LambingPens : null;
        var first = carrying.Min(e => e.Chances.First);
        var last = carrying.Max(e => e.Chances.First.PlusDays(e.Chances.Chances.Length - 1));
        var days = Enumerable.Range(0, Period.DaysBetween(first, last) + 1)
            .Select(i => Day(carrying, first.PlusDays(i), pens))
            .ToImmutableArray();

        var busiest = days.OrderByDescending(d => d.ExpectedEwes).ThenBy(d => d.Date)
            .Take(MostBusiestNights)
            .Select(d => d.Date)
            .Order()
            .ToImmutableArray();
        var worst = pens is null ? null : days.Max(d => d.ChanceOverPens);
        return new LambingCurve(carrying.Length, days, busiest, worst);
    }

    private static LambingDay Day(ImmutableArray<LambingEwe> ewes, LocalDate date, int? pens)
    {
        var lambing = PoissonBinomial.Of(ewes.Select(e => e.Chances.On(date)));
        var inPens = PoissonBinomial.Of(ewes.Select(e => e.ChanceInPen(date)));
        return new LambingDay(
            date,
            lambing.Mean,
            lambing.Quantile(Low),
            lambing.Quantile(High),
            inPens.Quantile(High),
            pens is { } there ? inPens.MoreThan(there) : null);
    }

    private static int PenDays(Flock flock, EwePlan ewe) =>
        flock.Housing.Lambing == LambingPlace.Indoors ? flock.Housing.DaysInLambingPen.For(ewe.Litter) : 0;

    /// <param name="PenDays">Whole days she and her lambs hold a lambing pen, the day she lambs included; 0 outdoors.</param>
    private readonly record struct LambingEwe(DayDistribution Chances, int PenDays)
    {
        /// <summary>She holds a pen if she lambed on this day or on one of the days before it that her litter stays in.
        /// She lambs once, so the chances of those days add.</summary>
        public double ChanceInPen(LocalDate night)
        {
            var sum = 0.0;
            for (var back = 0; back < PenDays; back++)
            {
                sum += Chances.On(night.PlusDays(-back));
            }

            return sum;
        }
    }
}
