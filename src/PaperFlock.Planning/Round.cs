namespace PaperFlock.Planning;

/// <summary>A walk round the flock.</summary>
/// <param name="Number">Of several in one part of the day, from 1.</param>
public readonly record struct Round(LocalTime At, PartOfDay Part, int Number = 1);

public enum PartOfDay
{
    /// <summary>Only where the place is known: without it nobody can say when that is, and the first round is one of the morning.</summary>
    FirstLight,
    Morning,
    Midday,
    Afternoon,
    Dusk,
    Evening,
    Late,

    /// <summary>Between late and first light, on whichever side of midnight.</summary>
    Night,
}
