namespace PaperFlock.Planning;

/// <summary>Where a figure comes from.</summary>
public enum FigureSource
{
    FlockFile,

    /// <summary>Gestation length and mating dates of the flock file.</summary>
    FlockFileMatings,

    /// <summary>Common practice of the trade, no source.</summary>
    CommonPractice,

    /// <summary>Otago Daily Times: 8 to 10 weeks before mating; Teagasc: sperm take 5 to 7 weeks to make.</summary>
    TupCheck,

    /// <summary>Teagasc: 8 to 10 weeks to gain a condition score.</summary>
    EweCondition,

    /// <summary>Sheep Canada, spring 2011: day 14 or 15; Raising Sheep: 17 days, range 14 to 19.</summary>
    RaddleChange,

    /// <summary>Teagasc: best 80 to 90 days after the ram is turned out.</summary>
    Scanning,

    /// <summary>RHET: 6 to 8 weeks before lambing.</summary>
    FeedingStart,

    /// <summary>Teagasc, reported by Agriland: 4 to 6 weeks before lambing.</summary>
    Booster,

    /// <summary>Teagasc, reported by Agriland: shorn ewes stay housed for at least 8 weeks.</summary>
    WinterShearing,

    /// <summary>Floor: DEFRA PB5162; trough: Teagasc, sheep housing space requirements.</summary>
    HousingRoom,
}
