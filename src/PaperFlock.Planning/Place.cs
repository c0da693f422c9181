namespace PaperFlock.Planning;

/// <summary>Where a ewe stands.</summary>
/// <param name="Name">Of the field or pen, as the flock file has it; null where the file names none.</param>
public readonly record struct Place(PlaceKind Kind, string? Name);

public enum PlaceKind
{
    Field,
    Pen,

    /// <summary>Alone with her lambs.</summary>
    LambingPen,

    /// <summary>Among other ewes with lambs, in the shed until turnout and at grass after it.</summary>
    WithLambs,
    Gone,
}
