namespace PaperFlock.Flocks;

/// <param name="TupIn">First day with the tup. Worked back from <c>lambing-from</c> where the file gives that instead.</param>
/// <param name="TupOut">Day the tup leaves; never before <paramref name="TupIn"/>.</param>
/// <param name="GestationDays">Where a breed gives no figure of its own; 130 to 165.</param>
/// <param name="Span">Where the file says when the tup goes in.</param>
public sealed record Season(LocalDate TupIn, LocalDate TupOut, int GestationDays, SourceSpan Span)
{
    public LocalDate TupOut { get; init; } = Require.NotBefore(TupOut, TupIn);

    public int GestationDays { get; init; } = Require.Within(GestationDays, 130, 165);

    /// <summary>The file of the season before; only said, never opened.</summary>
    public string? Last { get; init; }

    /// <summary>From half a year before the first tup goes in, when ewes are vaccinated and tups bought, to four months after the last lambs, when they are weaned: common practice, no source.</summary>
    public DateInterval DaysOf(IReadOnlyCollection<TuppingGroup> groups) => new(
        groups.Select(g => g.TupIn).Append(TupIn).Min().PlusMonths(-6),
        groups.Select(g => g.TupOut).Append(TupOut).Max().PlusDays(GestationDays).PlusMonths(4));
}

/// <param name="GestationDays">130 to 165; null: the season's figure.</param>
public sealed record Breed(string Name, int? GestationDays, Mass? MatureWeight)
{
    public string Name { get; init; } = Require.Text(Name);

    public int? GestationDays { get; init; } = Require.WithinIfGiven(GestationDays, 130, 165);

    public Mass? MatureWeight { get; init; } = Require.SomeIfGiven(MatureWeight);
}
