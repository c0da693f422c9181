using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Feeding;

/// <summary>Ewes that can eat one ration: one litter size, due within a cycle of each other. Pens may split it further.</summary>
/// <param name="Scanned">False for ewes nobody has scanned.</param>
/// <param name="Cluster">0-based place among the classes of this litter, earliest due first.</param>
/// <param name="Clusters">How many classes this litter makes.</param>
/// <param name="Ewes">In the order of the flock file; never empty.</param>
internal sealed record FeedingClass(int Litter, bool Scanned, int Cluster, int Clusters, ImmutableArray<EwePlan> Ewes)
{
    private static readonly string[] LitterNames = ["Singles", "Twins", "Triplets", "Quads", "Fives"];
    private static readonly string[] Ordinals = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"];

    public LocalDate FirstDue => Ewes.Min(DueOf);

    /// <summary>Such as "Twins", or "Twins, early" where the litter makes more than one class.</summary>
    public string Name => LitterName + (Clusters, Cluster) switch
    {
        (1, _) => "",
        (2, 0) => ", early",
        (2, _) => ", late",
        _ when Cluster < Ordinals.Length => $", {Ordinals[Cluster]}",
        _ => $", {Cluster + 1}th",
    };

    private string LitterName => Scanned ? LitterNames[Math.Clamp(Litter, 1, LitterNames.Length) - 1] : "Not scanned";

    /// <summary>Fewest lambs first, the unscanned after the scanned singles they are fed as; then by due date.</summary>
    public static ImmutableArray<FeedingClass> Of(Flock flock, IEnumerable<EwePlan> ewes) =>
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
