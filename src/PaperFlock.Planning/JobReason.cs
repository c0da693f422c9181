namespace PaperFlock.Planning;

/// <summary>Why a job is done so long before or after its anchor.</summary>
public enum JobReason
{
    FlockFileGivesTheDay,
    FlockFileGivesTheWindow,
    TimeToReplaceTheTup,
    TimeToMendFeetAndCondition,
    ShornBeforeTupping,
    SecondColourShowsReturn,
    LambsCanBeCounted,
    ScanTellsLambs,
    FeedChartSaysSo,
    WithTheFeeding,
    HeavyEweOnHerBack,
    FirstMilkProtectsLambs,
    EarlyLambs,
    SettledBeforeLambing,
    GatheredOnceWithHousing,
    CleanWhenHoused,
    CleanTeat,
    Gestation,
    LambsOnTheirFeet,
}
