namespace PaperFlock.Planning;

/// <summary>A walk round the flock.</summary>
/// <param name="Number">Of several in one part of the day, from 1.</param>
public readonly record struct Round(LocalTime At, PartOfDay Part, int Number = 1);

public enum PartOfDay
{
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
