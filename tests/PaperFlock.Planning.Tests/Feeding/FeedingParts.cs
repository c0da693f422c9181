using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>What no ration, trough or place may break, whatever the flock file says. The limits are written out here and not taken from the code.</summary>
internal static class FeedingParts
{
    private const decimal Grain = 0.000001m;

    public static void Agree(SeasonPlan plan)
    {
        EveryEweIsSomewhereOnEveryDay(plan);
        EveryEweOfTheSeasonHasOneChart(plan);
        Assert.All(plan.Feeding.Charts, c => RowsKeepTheCaps(plan, c));
        Assert.All(plan.Feeding.Charts, c => RowsRiseInSteps(plan, c));
        LambedRationsKeepTheCaps(plan);
        EveryEweIsFedOnce(plan);
        NobodyIsPartedAlone(plan);
    }

    private static void EveryEweIsSomewhereOnEveryDay(SeasonPlan plan) => Assert.All(plan.Whereabouts.Ewes, e =>
    {
        Assert.Equal((plan.Whereabouts.From, plan.Whereabouts.To), (e.Stays[0].From, e.Stays[^1].To));
        Assert.All(e.Stays, s => Assert.True(s.From <= s.To));
        Assert.All(e.Stays.Zip(e.Stays.Skip(1)), s => Assert.Equal(s.First.To.PlusDays(1), s.Second.From));
        Assert.All(e.Stays.Where(s => s.State == EweState.Lambed), s => Assert.True(e.Ewe.Lambed <= s.From));
    });

    private static void EveryEweOfTheSeasonHasOneChart(SeasonPlan plan)
    {
        var fed = plan.Feeding.Charts.SelectMany(c => c.Ewes.Select(e => (e.Ewe.Tag, c.Code))).ToList();
        Assert.Distinct(fed.Select(f => f.Tag));
        Assert.Distinct(plan.Feeding.Charts.Select(c => c.Code));
        Assert.All(plan.Ewes, e => Assert.Equal(e.Chart, fed.FirstOrDefault(f => f.Tag == e.Ewe.Tag).Code));
        Assert.All(plan.Ewes.Where(e => e.IsCarrying), e => Assert.NotNull(e.Chart));
    }

    private static void RowsKeepTheCaps(SeasonPlan plan, FeedChart chart)
    {
        var feeds = plan.Flock.Feeds;
        var largest = Math.Min(0.5m, feeds.LargestFeed.Kilograms);
        foreach (var row in chart.Rows)
        {
            Assert.InRange(row.FedAt.Length, 0, 4);
            Assert.Equal(row.KgPerEwePerDay == 0, row.FedAt.IsEmpty);
            Assert.True(row.KgPerEwePerDay <= (row.FedAt.Length * largest) + Grain, chart.Code);
            Assert.Equal(row.FedAt.IsEmpty ? 0 : chart.MostHeads, row.KgPerFeedByHeads.Length);
            Assert.All(row.KgPerFeedByHeads, (kilograms, i) => AmountIsTrue(plan, row, kilograms, i + 1));
            foreach (var ewe in chart.Ewes)
            {
                var weight = WeightOf(plan.Flock, ewe.Ewe);
                var concentrate = row.KgPerEwePerDay * feeds.Concentrate.DryMatter;
                var appetite = weight * (feeds.Forage.Intake ?? UsualShare(feeds.Forage.Kind)) - (feeds.Forage.SubstitutionRate * concentrate);
                var forage = Math.Max(0, Math.Min(appetite, (0.025m * weight) - concentrate));
                Assert.True(concentrate + forage <= (0.025m * weight) + Grain, $"{chart.Code} dry matter");
                Assert.True(concentrate <= (0.6m * (concentrate + forage)) + Grain, $"{chart.Code} concentrate");
            }
        }
    }

    private static decimal WeightOf(Flock flock, Ewe ewe) =>
        (ewe.Weight ?? flock.Breeds.FirstOrDefault(b => b.Name == ewe.Breed)?.MatureWeight ?? new Mass(70)).Kilograms;

    private static decimal UsualShare(ForageKind kind) => kind switch { ForageKind.Silage => 0.014m, ForageKind.Straw => 0.010m, _ => 0.015m };

    private static void AmountIsTrue(SeasonPlan plan, FeedRow row, decimal kilograms, int heads)
    {
        var meant = row.KgPerEwePerDay / row.FedAt.Length * heads;
        Assert.True(kilograms > 0, "an amount of nothing");
        Assert.True(kilograms <= meant + Grain, "rounded up");
        Assert.True(!plan.Flock.Feeds.Scales || meant - kilograms < Math.Max(meant / 10, 0.05m) + Grain, $"{kilograms} for {meant}");
    }

    private static void RowsRiseInSteps(SeasonPlan plan, FeedChart chart)
    {
        var given = 0m;
        var lastRise = LocalDate.MinIsoValue;
        Assert.Equal(plan.Flock.ChangeDay, chart.Start.DayOfWeek);
        foreach (var (row, i) in chart.Rows.Select((r, i) => (r, i)))
        {
            Assert.Equal(i == 0 ? chart.Start : chart.Rows[i - 1].To.PlusDays(1), row.From);
            Assert.InRange(row.KgPerEwePerDay - given, 0, 0.1m);
            if (row.KgPerEwePerDay > given)
            {
                Assert.True(Period.DaysBetween(lastRise, row.From) >= 3 || lastRise == LocalDate.MinIsoValue);
                lastRise = row.From;
            }

            given = row.KgPerEwePerDay;
        }

        Assert.Equal(plan.To, chart.Rows[^1].To);
        // Where feeding begins so late that she never comes to her ration there is nothing to be brought on to.
        if (!chart.Rows[^1].IsStep && chart.Rows.Max(r => r.KgPerEwePerDay) is > 0.05m and var most)
        {
            var first = chart.Rows.First(r => r.KgPerEwePerDay > 0).From;
            var full = chart.Rows.First(r => r.KgPerEwePerDay == most).From;
            Assert.True(Period.DaysBetween(first, full) >= 10, $"{chart.Code} is brought on in {Period.DaysBetween(first, full)} days");
        }
    }

    private static void LambedRationsKeepTheCaps(SeasonPlan plan)
    {
        var largest = Math.Min(0.5m, plan.Flock.Feeds.LargestFeed.Kilograms);
        foreach (var lambs in Enumerable.Range(1, 3))
        {
            var rows = plan.Feeding.Lambed.Where(r => r.Lambs == lambs).ToList();
            Assert.Equal(0, rows[0].DayFrom);
            Assert.Null(rows[^1].DayTo);
            Assert.All(rows.Zip(rows.Skip(1)), r => Assert.Equal(r.First.DayTo + 1, r.Second.DayFrom));
            Assert.All(rows.Skip(1).Zip(rows.Skip(2)), r => Assert.InRange(r.Second.KgPerDay!.Value - r.First.KgPerDay!.Value, 0, 0.1m));
            foreach (var row in rows.Where(r => r.KgPerDay > 0))
            {
                Assert.InRange(row.FedAt.Length, 1, 4);
                Assert.True(row.KgPerDay <= (row.FedAt.Length * largest) + Grain);
                Assert.True(row.KgPerFeed > 0 && row.KgPerFeed <= (row.KgPerDay / row.FedAt.Length) + Grain);
                Assert.All(
                    plan.Ewes.Where(e => e.Ewe.Scan >= lambs && e.Standing is (Standing.ToLamb or Standing.Lambed)),
                    e => Assert.True(row.KgPerDay * plan.Flock.Feeds.Concentrate.DryMatter <= (0.6m * 0.035m * WeightOf(plan.Flock, e.Ewe)) + Grain));
            }
        }
    }

    /// <summary>Every ewe whose ration has begun stands at exactly one trough, where she is, and it has room in its chart.</summary>
    private static void EveryEweIsFedOnce(SeasonPlan plan)
    {
        for (var day = plan.Whereabouts.From; day <= plan.To; day = day.PlusDays(1))
        {
            var troughs = plan.Feeding.On(day).ToList();
            Assert.Distinct(troughs.SelectMany(t => t.Ewes.Select(e => e.Tag)));
            foreach (var trough in troughs)
            {
                Assert.All(trough.Ewes, e => Assert.Equal(trough.Place, plan.Whereabouts.On(e, day)!.Place));
            }

            var due = plan.Ewes.Where(e => plan.Whereabouts.On(e.Ewe, day)!.State == EweState.InLamb && plan.Feeding.ChartOf(e)!.On(day) is not null).Select(e => (e.Ewe.Tag, e.Chart)).Order();
            Assert.Equal(due, troughs.Where(t => t.Kind is not null).SelectMany(t => t.Ewes.Select(e => (e.Tag, (string?)t.Chart))).Order());
            Assert.All(troughs.Where(t => t.Kind is not null), t => Assert.True(t.Ewes.Length <= plan.Feeding.Charts.Single(c => c.Code == t.Chart).MostHeads));
        }
    }

    /// <summary>But where the others of her trough have lambed: a chart that changed then would change a ewe's ration in her last days.</summary>
    private static void NobodyIsPartedAlone(SeasonPlan plan)
    {
        if (plan.Flock.Ewes.Any(e => e.Lambed is not null))
        {
            return;
        }

        foreach (var alone in plan.Feeding.Troughs.Where(t => t.Kind is not null && t.Ewes.Length == 1))
        {
            Assert.DoesNotContain(plan.Feeding.Troughs, t => t.Kind is not null && t != alone && t.Place == alone.Place && t.From <= alone.To && alone.From <= t.To);
        }
    }
}
