namespace PaperFlock.Planning.Dates;

/// <summary>Which tup was with a ewe on the day she conceived, by the chances of each day.</summary>
internal static class SireChances
{
    /// <returns>Likeliest first; empty where no tup is named.</returns>
    public static ImmutableArray<Sire> Of(Flock flock, Ewe ewe)
    {
        var group = flock.GroupOf(ewe);
        if (group.Turns is [] or [_])
        {
            return [.. group.Turns.Select(only => new Sire(only.Name, 1))];
        }

        var days = Conceived(flock, ewe, group);
        var chances = new Dictionary<string, double>(StringComparer.Ordinal);
        for (var i = 0; i < days.Chances.Length; i++)
        {
            var day = days.First.PlusDays(i);
            var with = group.Tups.Where(t => t.In <= day && day <= t.Out).ToList();
            foreach (var tup in with)
            {
                chances[tup.Name] = chances.GetValueOrDefault(tup.Name) + (days.Chances[i] / with.Count);
            }
        }

        var all = chances.Values.Sum();
        return [.. chances.Where(c => c.Value > 0).Select(c => new Sire(c.Key, c.Value / all)).OrderByDescending(s => s.Chance)];
    }

    private static DayDistribution Conceived(Flock flock, Ewe ewe, TuppingGroup group)
    {
        if (ewe.Lambed is not { } lambed)
        {
            return ConceptionDays.Given(MatingEvidence.Of(ewe, group, flock.Practice), group, flock.Practice);
        }

        var before = BeforeLambing(flock, ewe, group);
        var spread = Gestation.Spread(flock.Practice.GestationSpreadDays);
        var shortest = Gestation.MeanDays(flock, ewe) - (spread.Length / 2);
        var weights = before.Chances.Select((chance, i) =>
        {
            var carried = Period.DaysBetween(before.First.PlusDays(i), lambed) - shortest;
            return carried >= 0 && carried < spread.Length ? chance * spread[carried] : 0;
        }).ToArray();

        // A lambing that no day of conception explains says nothing of the tup.
        return weights.Sum() > 0 ? DayChances.FromWeights(before.First, weights) : before;
    }

    /// <summary>Once she has lambed, each heat she was seen in may have been the one that held: the later the less likely, by the share that comes back.</summary>
    private static DayDistribution BeforeLambing(Flock flock, Ewe ewe, TuppingGroup group)
    {
        var practice = flock.Practice;
        var heats = Heats.Of(ewe.Marks, practice.ChangeoverDays);
        if (heats.Length < 2)
        {
            return ConceptionDays.Given(MatingEvidence.Of(ewe, group, practice), group, practice);
        }

        var weights = new double[Period.DaysBetween(heats[0], heats[^1]) + 1];
        foreach (var (i, heat) in heats.Index())
        {
            weights[Period.DaysBetween(heats[0], heat)] = Math.Pow(1 - (double)practice.ConceptionPerCycle, i);
        }

        return DayChances.FromWeights(heats[0], weights);
    }
}
