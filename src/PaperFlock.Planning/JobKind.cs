namespace PaperFlock.Planning;

/// <summary>What is done, in the order of the year.</summary>
public enum JobKind
{
    AbortionVaccine,
    TeethToesTeats,
    TupCheck,
    BoughtTup,
    Shear,
    TupIn,
    RaddleChange,

    /// <summary>One tup takes over from another.</summary>
    TupChange,
    TupOut,
    FlukeAndWorms,
    Scan,
    Sort,
    LookOver,
    FeedFrom,
    BucketsOut,
    Booster,
    TwoFeeds,
    HeavyRounds,
    ShedReady,
    House,
    Dag,
    FirstDue,
    RingAndTag,
    Turnout,
    LastDue,

    /// <summary>The keeper's.</summary>
    Own,
}
