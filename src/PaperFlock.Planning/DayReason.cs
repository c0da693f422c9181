namespace PaperFlock.Planning;

/// <summary>Why a job is on its day and no other.</summary>
public enum DayReason
{
    /// <summary>It is the best day, or the one it stands on.</summary>
    Best,

    /// <summary>It stands on a day on which the keeper is away.</summary>
    StandsThoughAway,

    NearestFree,

    /// <summary>The same, and the keeper is away on the best day.</summary>
    NearestFreeSinceAway,

    /// <summary>Ewes are gathered once for several jobs.</summary>
    SavesGathering,

    /// <summary>The keeper is there, but not free, on the days of its window.</summary>
    NobodyFree,

    /// <summary>It has none: the keeper is away for the whole of its window.</summary>
    NoDay,
}
