namespace PaperFlock.Flocks;

/// <summary>Ewes mated together.</summary>
/// <param name="Tup">His name; those of all of them where one took over from another.</param>
/// <param name="Name">Empty for the one group of a file without groups.</param>
/// <param name="TupIn">For artificial or hand mating this is the one day, and <paramref name="TupOut"/> the same day.</param>
/// <param name="TupOut">Never before <paramref name="TupIn"/>.</param>
/// <param name="Raddle">Crayon colours in order, light to dark; empty where no raddle is used or the mating is not natural.</param>
public sealed record TuppingGroup(
    string Name,
    string? Tup,
    Mating Mating,
    LocalDate TupIn,
    LocalDate TupOut,
    ImmutableArray<string> Raddle,
    SourceSpan Span)
{
    public LocalDate TupOut { get; init; } = Mating == Mating.Natural || TupOut == TupIn
        ? Require.NotBefore(TupOut, TupIn)
        : throw new ArgumentException("Artificial and hand mating have one day.", nameof(TupOut));

    public ImmutableArray<string> Raddle { get; init; } = Require.Made(Raddle);

    /// <summary>Where one tup took over from another, each in the order he came; else empty, and <see cref="Tup"/> was there all the time.</summary>
    public ImmutableArray<TupTurn> Tups { get; init; } = [];

    /// <summary>The field they run in until they are sorted, housed or lambed; null where the file does not say.</summary>
    public string? Field { get; init; }

    /// <summary>The days of each tup that is named, whether one took over from another or not.</summary>
    public ImmutableArray<TupTurn> Turns => !Tups.IsEmpty ? Tups : Tup is { } tup ? [new(tup, TupIn, TupOut)] : [];

    /// <summary>The days on which there was a tup with them, of each tup for himself: between two there may have been none.</summary>
    public ImmutableArray<DateInterval> Stays => Tups.IsEmpty ? [new(TupIn, TupOut)] : [.. Tups.Select(t => new DateInterval(t.In, t.Out))];

    /// <summary>Null where there is none by name, or more than one.</summary>
    public string? OneTup => Tups.Length > 1 ? null : Tup;

    /// <summary>The tup that was put in last by that day, or the first to come; null where there is none by name.</summary>
    public string? TupOn(LocalDate day) => (Turns.LastOrDefault(t => t.In <= day) ?? Turns.FirstOrDefault())?.Name;

    public bool IsOneDay => Mating != Mating.Natural;
}

public enum Mating
{
    Natural,
    Artificial,
    Hand,
}
