using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Feeding;

/// <summary>Ewes that can eat one ration: one litter size, due within a cycle of each other. Pens may split it further.</summary>
/// <param name="Scanned">False for ewes nobody has scanned.</param>
/// <param name="Cluster">0-based place among the classes of this litter, earliest due first.</param>
/// <param name="Clusters">How many classes this litter makes.</param>
/// <param name="Ewes">In the order of the flock file; never empty.</param>
public sealed record FeedingClass(int Litter, bool Scanned, int Cluster, int Clusters, ImmutableArray<EwePlan> Ewes)
{
    private const int MostLambsNamed = 5;

    /// <summary>Such as "Twins", or "Twins, early" where the litter makes more than one class.</summary>
    public string NameIn()
    {
        var litter = LitterName();
        return (Clusters, Cluster) switch
        {
            (1, _) => litter,
            (2, 0) => $"{litter}, early",
            (2, _) => $"{litter}, late",
            (_, 0) => $"{litter}, first",
            (_, 1) => $"{litter}, second",
            (_, 2) => $"{litter}, third",
            (_, 3) => $"{litter}, fourth",
            (_, 4) => $"{litter}, fifth",
            (_, 5) => $"{litter}, sixth",
            (_, 6) => $"{litter}, seventh",
            (_, 7) => $"{litter}, eighth",
            _ => $"{litter}, {Cluster + 1}th",
        };
    }

    private string LitterName() => (Scanned, Math.Clamp(Litter, 1, MostLambsNamed)) switch
    {
        (false, _) => "Not scanned",
        (_, 1) => "Singles",
        (_, 2) => "Twins",
        (_, 3) => "Triplets",
        (_, 4) => "Quads",
        _ => "Fives",
    };

    /// <summary>Fewest lambs first, the unscanned after the scanned singles they are fed as; then by due date.</summary>
    internal static ImmutableArray<FeedingClass> Of(Flock flock, IEnumerable<EwePlan> ewes) =>
    [
        .. ewes.Where(e => e.IsCarrying)
            .GroupBy(e => (e.Litter, e.IsScanned))
            .OrderBy(g => g.Key.Litter)
            .ThenBy(g => g.Key.IsScanned ? 0 : 1)
            .SelectMany(g => Split(g.Key.Litter, g.Key.IsScanned, [.. g], flock.Practice.ChangeoverDays)),
    ];

    private static IEnumerable<FeedingClass> Split(int litter, bool scanned, ImmutableArray<EwePlan> ewes, int changeoverDays)
    {
        var starts = new List<LocalDate>();
        foreach (var due in ewes.Select(DueOf).Order())
        {
            if (starts.Count == 0 || Period.DaysBetween(starts[^1], due) > changeoverDays)
            {
                starts.Add(due);
            }
        }

        return starts.Select((start, i) => new FeedingClass(litter, scanned, i, starts.Count,
            [.. ewes.Where(e => DueOf(e) >= start && (i + 1 == starts.Count || DueOf(e) < starts[i + 1]))]));
    }

    private static LocalDate DueOf(EwePlan ewe) => ewe.DueOrThrow().FirstPossible;
}
