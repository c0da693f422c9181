using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Stores;

/// <summary>Day by day what one ewe of the season eats, from the first row of her chart until she is turned out with her lambs.</summary>
/// <remarks>A ewe still to lamb is fed for until the last day she is likely to, and as with lambs after it: stores must not run short for one that is late.</remarks>
internal sealed class EweDays(Flock flock, FeedingPlan feeding, FedEwe ewe)
{
    private readonly FeedChart _chart = feeding.Charts.First(c => c.Ewes.Any(e => e.Ewe.Tag == ewe.Tag));
    private readonly FeedCaps _caps = new(flock.Feeds);

    /// <summary>The first row of her chart, or the day she lambed if that was before it.</summary>
    public LocalDate From => LocalDate.Min(_chart.Start, Lambs);

    public LocalDate Lambs => ewe.Plan.Ewe.Lambed ?? LocalDate.Max(ewe.Due.Latest, _chart.Start).PlusDays(1);

    /// <summary>Included; the day before she lost her lambs, had them dead or had gone, if that was sooner: from then on she is one of those not in lamb.</summary>
    public LocalDate To
    {
        get
        {
            var turnedOut = Lambs.PlusDays(ewe.Plan.LambsAtFoot == 0 ? -1 : Math.Max(0, flock.Housing.TurnoutDaysAfterLambing - 1));
            var lost = LocalDate.Min(ewe.Plan.Ewe.Gone?.On ?? LocalDate.MaxIsoValue, ewe.Plan.Ewe.LostLambs ?? LocalDate.MaxIsoValue);
            return LocalDate.Min(turnedOut, lost.PlusDays(-1));
        }
    }

    public decimal Weight => ewe.Weight;

    public LocalDate? Housed => ewe.Housed;

    /// <summary>Concentrate, kg as it comes out of the bag.</summary>
    public decimal Concentrate(LocalDate day) => day < Lambs ? _chart.On(day)?.KgPerEwePerDay ?? 0 : WithLambs(day);

    /// <summary>Forage dry matter, kg.</summary>
    public decimal Forage(LocalDate day)
    {
        var concentrate = Concentrate(day);
        return day >= Lambs
            ? _caps.ForageInMilk(concentrate, ewe.Weight)
            : (decimal)ForageIntake.Beside(
                flock.Feeds.Forage, ForageIntake.Capacity(flock.Feeds.Forage, (double)ewe.Weight), (double)(concentrate * flock.Feeds.Concentrate.DryMatter));
    }

    private decimal WithLambs(LocalDate day)
    {
        var since = Period.DaysBetween(Lambs, day);
        var lambs = Math.Min(ewe.Plan.LambsAtFoot, 3);
        var row = feeding.Lambed.First(r => r.Lambs == lambs && r.DayFrom <= since && (r.DayTo is not { } to || since <= to));
        return row.KgPerDay ?? _chart.On(Lambs.PlusDays(-1))?.KgPerEwePerDay ?? 0;
    }
}
