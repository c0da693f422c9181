namespace PaperFlock.Flocks;

/// <summary>A lamb born alive, as the flock book has it.</summary>
/// <param name="Tag">As on the ear, verbatim; null until it is tagged.</param>
/// <param name="Weight">At birth; null when it was not weighed.</param>
public sealed record Lamb(LambSex Sex, string? Tag, Mass? Weight);

public enum LambSex
{
    Ewe,
    Ram,
    Wether,
}
