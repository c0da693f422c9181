using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Lambing;

/// <summary>Ewes lambing a day and lambing pens in use a night. Ewes lamb independently, so both are sums of unequal
/// yes/no chances, and exact.</summary>
internal static class LambingCurvePlanner
{
    /// <summary>Nights that differ by less, in ewes expected, are not ranked.</summary>
    private const double TooCloseToRank = 0.1;

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

        var indoors = flock.Housing.Lambing == LambingPlace.Indoors;
        var pens = indoors ? flock.Housing.LambingPens : null;
        var first = carrying.Min(e => e.Chances.First);
        var last = carrying.Max(e => e.Chances.First.PlusDays(e.Chances.Chances.Length - 1));
        var days = Enumerable.Range(0, Period.DaysBetween(first, last) + 1)
            .Select(i => Day(carrying, first.PlusDays(i), pens))
            .ToImmutableArray();

        var most = days.Max(d => d.ExpectedEwes);
        ImmutableArray<LocalDate> busiest = [.. days.Where(d => d.ExpectedEwes > most - TooCloseToRank).Select(d => d.Date)];
        var fullest = indoors ? FullestNight.Of(carrying) : [];
        return new LambingCurve(carrying.Length, days, busiest, days.Max(d => d.ChanceOverPens))
        {
            ChanceTooFewPensOnSomeNight = pens is { } there ? fullest.Skip(there + 1).Sum() : null,
            PensForTheSeason = indoors ? Quantiles.Of([.. fullest], High) : 0,
        };
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
}
