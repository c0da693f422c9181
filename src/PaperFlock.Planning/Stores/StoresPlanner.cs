using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Stores;

/// <summary>What has to be in the store, how much, and by when to order it.</summary>
internal static class StoresPlanner
{
    /// <param name="housed">The day a ewe goes in; null when she stays out.</param>
    /// <returns>In the order concentrate, forage, buckets, bedding, water; without what is not needed.</returns>
    public static ImmutableArray<StoreItem> Plan(
        Flock flock, ImmutableArray<TroughGroup> groups, Func<EwePlan, LocalDate?> housed)
    {
        if (groups.IsEmpty)
        {
            return [];
        }

        var closed = flock.OwnJobs.Where(j => j is { Closed: true, On: not null }).Select(j => j.On!.Value).ToHashSet();
        var order = new OrderRule(flock.Feeds.OrderLeadDays, flock.Feeds.Margin, closed);
        StoreItem?[] items =
        [
            Concentrate(flock, groups, order),
            ForageOf(flock, groups, order),
            BucketsOf(flock, groups, order),
            Bedding(flock, groups, housed, order),
            WaterOf(flock, groups),
        ];
        return [.. items.OfType<StoreItem>()];
    }

    private static StoreItem? Concentrate(Flock flock, ImmutableArray<TroughGroup> groups, OrderRule order)
    {
        var use = new DailyUse(flock.Print.WeekStarts);
        foreach (var group in groups)
        {
            foreach (var week in group.Weeks)
            {
                use.AddEachDay(week.WeekBeginning, LastDay(group, week), week.KgPerDayForGroup);
            }
        }

        return order.Weighed(flock.Feeds.Concentrate.Name, use, StoreItem.Bag, flock.Feeds.Concentrate.Bag,
            flock.Feeds.Method == FeedMethod.PerLamb
                ? "the feed charts added up, so much for each lamb carried, from the feed week to each group's last due date"
                : "the feed charts added up, energy balance, from the feed week to each group's last due date");
    }

    private static StoreItem? ForageOf(Flock flock, ImmutableArray<TroughGroup> groups, OrderRule order)
    {
        var forage = flock.Feeds.Forage;
        if (forage.Kind == ForageKind.Grass)
        {
            return null;
        }

        var use = new DailyUse(flock.Print.WeekStarts);
        foreach (var group in groups)
        {
            foreach (var week in group.Weeks)
            {
                var concentrate = (double)(week.KgPerEwePerDay * flock.Feeds.Concentrate.DryMatter);
                var dryMatter = group.Ewes.Sum(e => ForageIntake.Beside(
                    forage, ForageIntake.Capacity(forage, (double)EweWeights.Of(flock, e.Ewe)), concentrate));
                use.AddEachDay(week.WeekBeginning, LastDay(group, week), (decimal)dryMatter / forage.DryMatter);
            }
        }

        var share = (forage.Intake ?? ForageIntake.Usual(forage.Kind)) * 100;
        var name = forage.Kind switch
        {
            ForageKind.Hay => "Hay",
            ForageKind.Haylage => "Haylage",
            ForageKind.Silage => "Silage",
            _ => "Feeding straw",
        };
        return order.Weighed(name, use, forage.Bale is null ? "" : StoreItem.Bale, forage.Bale,
            $"{share:0.##} % of live weight a day as dry matter, from the feed week to each group's last due date; waste is for the margin");
    }

    private static StoreItem? BucketsOf(Flock flock, ImmutableArray<TroughGroup> groups, OrderRule order)
    {
        if (flock.Feeds.Buckets is not { } buckets)
        {
            return null;
        }

        var ewes = groups.Sum(g => g.Ewes.Length);
        var atOnce = (ewes + buckets.EwesPerBucket - 1) / buckets.EwesPerBucket;
        var (from, to) = Span(groups);
        var use = new DailyUse(flock.Print.WeekStarts);
        for (var day = from; day <= to; day = day.PlusDays(buckets.Days))
        {
            use.Add(day, atOnce);
        }

        return order.Counted(buckets.Name, use, to, StoreItem.Bucket, buckets.Weight,
            $"1 for every {buckets.EwesPerBucket} ewes, new every {buckets.Days} days, by the maker's figures in the flock file");
    }

    private static StoreItem? Bedding(
        Flock flock, ImmutableArray<TroughGroup> groups, Func<EwePlan, LocalDate?> housed, OrderRule order)
    {
        if (flock.Housing.Lambing == LambingPlace.Outdoors)
        {
            return null;
        }

        var perWeek = Straw.KgAWeek(flock.Feeds.Ground);
        var use = new DailyUse(flock.Print.WeekStarts);
        foreach (var group in groups)
        {
            foreach (var ewe in group.Ewes)
            {
                if (housed(ewe) is { } day)
                {
                    use.AddEachDay(day, group.LastDue, perWeek / NodaConstants.DaysPerWeek);
                }
            }
        }

        return order.Weighed("Bedding straw", use, "", null,
            $"{perWeek:0} kg a ewe a week from housing to her group's last due date (Irish Farmers Journal)");
    }

    private static StoreItem WaterOf(Flock flock, ImmutableArray<TroughGroup> groups)
    {
        var use = new DailyUse(flock.Print.WeekStarts);
        foreach (var group in groups)
        {
            var litres = group.Ewes.Sum(e => Water.LitresADay(EweWeights.Of(flock, e.Ewe)));
            use.AddEachDay(group.Weeks[0].WeekBeginning, group.LastDue, litres);
        }

        return new StoreItem("Water", null, null, "", null, use.First, use.Last, null, use.Weeks(),
            $"up to {use.MostInADay:0} litres a day, the upper end for pregnant ewes of their weight (NRC 2007)");
    }

    private static LocalDate LastDay(TroughGroup group, FeedWeek week) =>
        LocalDate.Min(week.WeekBeginning.PlusDays(NodaConstants.DaysPerWeek - 1), group.LastDue);

    private static (LocalDate From, LocalDate To) Span(ImmutableArray<TroughGroup> groups) =>
        (groups.Min(g => g.Weeks[0].WeekBeginning), groups.Max(g => g.LastDue));
}
