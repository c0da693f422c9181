namespace PaperFlock.Flocks;

/// <summary>One holding for one lambing season: everything the flock file says, defaults filled in.</summary>
/// <param name="Groups">Never empty. Without groups in the file there is one, unnamed, holding every ewe.</param>
/// <param name="Ewes">In the order of the file; no two tags have one <see cref="TagKey"/>.</param>
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
    public ImmutableArray<Breed> Breeds { get; init; } = Require.Unique(Breeds, b => b.Name);

    public ImmutableArray<TuppingGroup> Groups { get; init; } = Require.NotEmpty(Require.Unique(Groups, g => g.Name));

    public ImmutableArray<OwnJob> OwnJobs { get; init; } = Require.Made(OwnJobs);

    public ImmutableArray<Ewe> Ewes { get; init; } = EachInAGroup(Require.Unique(Ewes, e => TagKey.Of(e.Tag)), Groups);

    public ClassFields Fields { get; init; } = ClassFields.None;

    /// <summary>The weekday on which every ration changes.</summary>
    public IsoDayOfWeek ChangeDay => Feeds.ChangeDay ?? Print.WeekStarts;

    /// <summary>What lies outside is of another season.</summary>
    public DateInterval SeasonDays => Season.DaysOf(Groups);

    /// <summary>The group a ewe runs with. Every ewe has exactly one.</summary>
    public TuppingGroup GroupOf(Ewe ewe) => Groups.First(g => g.Name == ewe.Group);

    /// <summary>Her breed's own gestation length where the file gives one, else the season's, in days.</summary>
    public int GestationDaysOf(Ewe ewe) =>
        Breeds.FirstOrDefault(b => b.Name == ewe.Breed)?.GestationDays ?? Season.GestationDays;

    private static ImmutableArray<Ewe> EachInAGroup(ImmutableArray<Ewe> ewes, ImmutableArray<TuppingGroup> groups)
    {
        var names = groups.Select(g => g.Name).ToHashSet(StringComparer.Ordinal);
        var stray = ewes.FirstOrDefault(e => !names.Contains(e.Group));
        return stray is null ? ewes : throw new ArgumentException($"There is no group `{stray.Group}` for `{stray.Tag}`.", nameof(ewes));
    }
}
