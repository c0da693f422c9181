namespace PaperFlock.Planning;

/// <summary>Why a job is done so long before or after its anchor.</summary>
public enum JobReason
{
    FlockFileGivesTheDay,
    FlockFileGivesTheWindow,
    ImmuneBeforeTupping,
    StrangerMayCarryDisease,
    TimeToReplaceTheTup,
    TimeToMendFeetAndCondition,
    ShornBeforeTupping,
    SecondColourShowsReturn,
    LambsCanBeCounted,
    ScanTellsLambs,
    AutumnFluke,
    CleanOfWormsWhenHoused,
    ConditionBeforeLambing,
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
    LocalRulesSetTheDay,
    LambsFitForGrass,
    LambsOnTheirFeet,
}
