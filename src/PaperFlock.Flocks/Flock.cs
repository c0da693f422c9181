using System.Collections.Immutable;

namespace PaperFlock.Flocks;

/// <summary>One holding for one lambing season: everything the flock file says, defaults filled in.</summary>
/// <param name="Groups">Never empty. Without groups in the file there is one, unnamed, holding every ewe.</param>
/// <param name="Ewes">In the order of the file; tags are unique.</param>
public sealed record Flock(
    Holding Holding,
    PrintSettings Print,
    Season Season,
    ImmutableArray<Breed> Breeds,
    ImmutableArray<TuppingGroup> Groups,
    KeeperDays KeeperDays,
    Practice Practice,
    ImmutableArray<OwnJob> OwnJobs,
    Feeds Feeds,
    Housing Housing,
    ImmutableArray<Ewe> Ewes)
{
    /// <summary>The group a ewe runs with. Every ewe has exactly one.</summary>
    public TuppingGroup GroupOf(Ewe ewe) => Groups.First(g => g.Name == ewe.Group);

    /// <summary>Her breed's own gestation length where the file gives one, else the season's, in days.</summary>
    public int GestationDaysOf(Ewe ewe) =>
        Breeds.FirstOrDefault(b => b.Name == ewe.Breed)?.GestationDays ?? Season.GestationDays;
}
