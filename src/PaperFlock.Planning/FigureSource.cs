namespace PaperFlock.Planning;

/// <summary>Where a figure comes from.</summary>
public enum FigureSource
{
    FlockFile,

    /// <summary>Gestation length and mating dates of the flock file.</summary>
    FlockFileMatings,

    /// <summary>Common practice of the trade, no source.</summary>
    CommonPractice,

    // Publications, by what they are followed in; the words for the paper name them.
    AbortionVaccine,
    TupCheck,
    EweCondition,
    RaddleChange,
    Scanning,
    LookOver,
    Booster,
    WinterShearing,
    HousingRoom,
}
