namespace PaperFlock.Planning.Feeding;

/// <summary>What a ewe gets once she has lambed, by lambs at foot and days since.</summary>
/// <remarks>The same ration for a day and a half and then up over a few days: Irish Farmers Journal 898977; out on grass within two
/// days she stays at what she had: the same, 677532. A tenth of a kilogram a day is this program's own.</remarks>
internal static class LambedRations
{
    /// <summary>The day she lambed and the next.</summary>
    private const int DaysAsBefore = 2;

    public static ImmutableArray<LambedRow> Of(Flock flock, ImmutableArray<FedEwe> ewes, ImmutableArray<FeedChart> charts) =>
        [.. Enumerable.Range(1, 3).SelectMany(lambs => Rows(flock, lambs, MostFor(flock, ewes, lambs), LowestBefore(ewes, charts, lambs)))];

    /// <summary>What the file asks for, held to what the lightest ewe that can have so many may have, kg a day.</summary>
    public static decimal MostFor(Flock flock, ImmutableArray<FedEwe> ewes, int lambs)
    {
        var asked = flock.Feeds.ForageOnly ? 0 : flock.Feeds.Lambed.For(lambs).Kilograms;
        var lightest = ewes.Where(e => !e.Plan.IsScanned || e.Carries >= lambs).Select(e => e.Weight).DefaultIfEmpty(EweWeights.Default).Min();
        var most = new FeedCaps(flock.Feeds).MostInMilk(lightest);
        return asked <= most ? asked : FeedCaps.Down(most);
    }

    private static IEnumerable<LambedRow> Rows(Flock flock, int lambs, decimal most, decimal before)
    {
        var turnout = flock.Housing.TurnoutDaysAfterLambing;
        if (flock.Feeds.ForageOnly || turnout <= DaysAsBefore)
        {
            return [new(lambs, 0, null, flock.Feeds.ForageOnly ? 0 : null, [], null)];
        }

        var rows = new List<LambedRow> { new(lambs, 0, DaysAsBefore - 1, null, [], null) };
        var given = Math.Min(most, FeedCaps.Down(before + FeedCaps.Step));
        for (var day = DaysAsBefore; given < most && day + 1 < turnout; day++)
        {
            rows.Add(Row(flock, lambs, day, day, given));
            given = Math.Min(most, given + FeedCaps.Step);
        }

        rows.Add(Row(flock, lambs, rows[^1].DayTo!.Value + 1, null, given));
        return rows;
    }

    private static LambedRow Row(Flock flock, int lambs, int from, int? to, decimal ration)
    {
        var times = FeedTimes.For(ration, new FeedCaps(flock.Feeds).Largest, 1);
        return new(lambs, from, to, ration, times, times.IsEmpty ? null : new TroughAmounts(flock.Feeds, flock.Print.Units).For(ration / times.Length, 1));
    }

    /// <summary>The least that a ewe with so many can have had on the day she lambs, counted from the first that is likely for her, kg a day.</summary>
    private static decimal LowestBefore(ImmutableArray<FedEwe> ewes, ImmutableArray<FeedChart> charts, int lambs)
    {
        bool Can(FedEwe e) => !e.Plan.IsScanned || Math.Min(3, e.Carries) == lambs;
        var those = ewes.Any(Can) ? ewes.Where(Can) : ewes;
        return those.Select(e => charts.First(c => c.Ewes.Any(o => o.Ewe.Tag == e.Tag)).On(e.Due.Earliest)?.KgPerEwePerDay ?? 0).DefaultIfEmpty(0).Min();
    }
}
