namespace PaperFlock.Flocks;

/// <param name="Tag">As on the ear, verbatim.</param>
/// <param name="Group">Name of her tupping group; always one of the flock's.</param>
/// <param name="Condition">Body condition score at tupping, 1 to 5.</param>
/// <param name="Marks">Days a fresh raddle mark was seen, in date order.</param>
/// <param name="Scan">Lambs counted, 0 to 5; null until scanned.</param>
/// <param name="Lambed">The day she lambed; closes her card.</param>
/// <param name="ToTup">What the keeper decided about putting her to the tup; null leaves it to the check of teeth, toes and teats.</param>
/// <param name="Span">Her tag in the file.</param>
public sealed record Ewe(
    string Tag,
    string? Name,
    string? Breed,
    string Group,
    int? Born,
    Mass? Weight,
    decimal? Condition,
    Teeth Teeth,
    Toes Toes,
    Teats Teats,
    ImmutableArray<LocalDate> Marks,
    int? Scan,
    ScanStage? ScanStage,
    LocalDate? Lambed,
    bool? ToTup,
    string? Note,
    SourceSpan Span)
{
    public string Tag { get; init; } = Require.Text(Tag);

    public Mass? Weight { get; init; } = Require.SomeIfGiven(Weight);

    public decimal? Condition { get; init; } = Require.WithinIfGiven(Condition, 1, 5);

    public ImmutableArray<LocalDate> Marks { get; init; } = Require.Ordered(Marks, day => day);

    public int? Scan { get; init; } = Require.WithinIfGiven(Scan, 0, 5);

    /// <summary>What is known of the lambing beside its day; nothing until she has lambed.</summary>
    public LambingResult Lambing { get; init; } = LambingResult.Unknown;

    /// <summary>What she is called in a sentence: her name, else her tag.</summary>
    public string CallName => Name ?? Tag;
}

public enum Teeth
{
    Unchecked,
    Sound,
    Worn,
    Broken,
}

public enum Toes
{
    Unchecked,
    Sound,
    Treated,
    Lame,
}

public enum Teats
{
    Unchecked,
    Sound,
    Lumpy,
    LostHalf,
}

public enum ScanStage
{
    Early,
    Late,
}
