namespace PaperFlock.Flocks;

/// <param name="Tag">As on the ear, verbatim.</param>
/// <param name="Group">Name of her tupping group; always one of the flock's.</param>
/// <param name="Span">Her tag in the file.</param>
public sealed record Ewe(string Tag, string Group, SourceSpan Span)
{
    public string Tag { get; init; } = Require.Text(Tag);

    public string? Name { get; init; }

    public string? Breed { get; init; }

    /// <summary>The year.</summary>
    public int? Born { get; init; }

    public Mass? Weight { get; init => field = Require.SomeIfGiven(value); }

    /// <summary>Body condition score at tupping, 1 to 5.</summary>
    public decimal? Condition { get; init => field = Require.WithinIfGiven(value, 1, 5); }

    public Teeth Teeth { get; init; }

    public Toes Toes { get; init; }

    public Teats Teats { get; init; }

    /// <summary>What she went through in earlier seasons, each once.</summary>
    public ImmutableArray<PastTrouble> History { get; init; } = [];

    /// <summary>What came of last season; null where nothing is known of it.</summary>
    public LastSeason? Was { get; init; }

    /// <summary>Days a fresh raddle mark was seen, in date order.</summary>
    public ImmutableArray<LocalDate> Marks { get; init => field = Require.Ordered(value, day => day); } = [];

    /// <summary>Lambs counted, 0 to 5; null until scanned.</summary>
    public int? Scan { get; init => field = Require.WithinIfGiven(value, 0, 5); }

    public ScanStage? ScanStage { get; init; }

    /// <summary>The day she lambed; closes her card.</summary>
    public LocalDate? Lambed { get; init; }

    /// <summary>What is known of the lambing beside its day; nothing until she has lambed.</summary>
    public LambingResult Lambing { get; init; } = LambingResult.Unknown;

    /// <summary>Lambs born alive, for the flock book; empty until they are written down.</summary>
    public ImmutableArray<Lamb> Lambs { get; init; } = [];

    /// <summary>Lambs born alive, by their number or else by how many are listed; null where nobody wrote either down.</summary>
    public int? BornAlive => Lambing.Alive ?? (Lambs.IsEmpty ? null : Lambs.Length);

    /// <summary>The day she was seen to have lost the lambs she carried; null when she has not.</summary>
    public LocalDate? LostLambs { get; init; }

    /// <summary>The day and reason she left the flock; null while she is in it.</summary>
    public Loss? Gone { get; init; }

    /// <summary>What the keeper decided about putting her to the tup; null leaves it to her history and the check of teeth, toes and teats.</summary>
    public bool? ToTup { get; init; }

    public string? Note { get; init; }

    /// <summary>What she is called in a sentence: her name, else her tag.</summary>
    public string CallName => Name ?? Tag;
}

public enum PastTrouble
{
    Caesarean,
    Prolapse,
    Mastitis,
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
