namespace PaperFlock.Planning;

/// <summary>What is done, in the order of the year.</summary>
public enum JobKind
{
    TeethToesTeats,
    TupCheck,
    Shear,
    TupIn,
    RaddleChange,
    TupOut,
    Scan,
    Sort,
    FeedFrom,
    BucketsOut,
    Booster,
    TwoFeeds,
    HeavyRounds,
    ShedReady,
    House,
    Dag,
    FirstDue,
    LastDue,

    /// <summary>The keeper's.</summary>
    Own,
}
