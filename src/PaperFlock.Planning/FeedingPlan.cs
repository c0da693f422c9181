namespace PaperFlock.Planning;

/// <param name="Charts">By kind, then by number.</param>
/// <param name="Troughs">By first day, then by place; the ewes of all troughs of a day are all ewes fed that day, once each.</param>
/// <param name="Lambed">For one, two and three lambs at foot, by days since lambing.</param>
/// <param name="NotInLamb">Ewes that get forage alone: left out, empty, lost their lambs, or lambed with no lamb alive.</param>
/// <param name="Sorts">By day, then by field.</param>
public sealed record FeedingPlan(
    ImmutableArray<FeedChart> Charts,
    ImmutableArray<Trough> Troughs,
    ImmutableArray<LambedRow> Lambed,
    ImmutableArray<EwePlan> NotInLamb,
    ImmutableArray<FieldSort> Sorts,
    ImmutableArray<FeedWarning> Warnings)
{
    /// <returns>Null for a ewe that carries nothing as far as anyone knows.</returns>
    public FeedChart? ChartOf(EwePlan ewe) => Charts.FirstOrDefault(c => c.Code == ewe.Chart);

    /// <returns>Null for a ewe that was not to lamb this season.</returns>
    public string? CodeOf(Ewe ewe) => Charts.FirstOrDefault(c => c.Ewes.Any(e => e.Ewe.Tag == ewe.Tag))?.Code;

    /// <summary>Who eats where on a day.</summary>
    public IEnumerable<Trough> On(LocalDate day) => Troughs.Where(t => t.From <= day && day <= t.To);

    /// <summary>When such a chart has something weighed out on a day; for ewes with lambs at any stage of their ration.</summary>
    /// <param name="chart">Its code.</param>
    public IEnumerable<FeedTime> FedAt(string chart, LocalDate day) => chart == FeedCodes.Lambed
        ? Lambed.SelectMany(row => row.FedAt).Distinct().Order()
        : Charts.FirstOrDefault(c => c.Code == chart)?.On(day)?.FedAt ?? [];

    /// <summary>When anybody is fed on a day.</summary>
    public ImmutableArray<FeedTime> FedAt(LocalDate day) => [.. On(day).Select(t => t.Chart).Distinct().SelectMany(c => FedAt(c, day)).Distinct().Order()];
}

/// <summary>Ewes that eat together in one place, over days on which nobody comes or goes; both ends are days of it.</summary>
/// <param name="Chart">Code of the chart they are fed by.</param>
/// <param name="Kind">Whose ration it is; null for ewes with lambs and ewes not in lamb.</param>
/// <param name="LambsAtFoot">For ewes that have lambed; otherwise null.</param>
/// <param name="Ewes">In the order of the flock file.</param>
public sealed record Trough(
    Place Place, string Chart, FeedKind? Kind, int? LambsAtFoot, LocalDate From, LocalDate To, ImmutableArray<Ewe> Ewes);

/// <summary>One step of the ration of a ewe with lambs.</summary>
/// <param name="Lambs">At foot; more than three count as three.</param>
/// <param name="DayFrom">Days since she lambed, the day itself being 0.</param>
/// <param name="DayTo">Included; null until turnout.</param>
/// <param name="KgPerDay">Null where she goes on with what she had before.</param>
/// <param name="FedAt">Empty with the ration she had before.</param>
/// <param name="KgPerFeed">Rounded to what can be measured; null with the ration she had before.</param>
public sealed record LambedRow(int Lambs, int DayFrom, int? DayTo, decimal? KgPerDay, ImmutableArray<FeedTime> FedAt, decimal? KgPerFeed);
