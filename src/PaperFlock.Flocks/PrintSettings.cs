namespace PaperFlock.Flocks;

/// <param name="Gloves">True sizes every write-in box for gloved hands.</param>
public sealed record PrintSettings(
    Paper Paper,
    PlannerPaper Planner,
    UnitSystem Units,
    IsoDayOfWeek WeekStarts,
    bool Gloves,
    Binding Binding,
    Duplex Duplex)
{
    /// <summary>How far ahead the round log is printed.</summary>
    public int LogWeeks { get; init; } = 8;
}

public enum Paper
{
    A4,
    Letter,
}

public enum PlannerPaper
{
    A4,
    A3,
    A2,
    Letter,
    Tabloid,
}

public enum UnitSystem
{
    Metric,
    Imperial,
    Both,
}

public enum Binding
{
    TwoHole,
    FourHole,
    ThreeHole,
    None,
}

public enum Duplex
{
    LongEdge,
    ShortEdge,
    SingleSided,
}
