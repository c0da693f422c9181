namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>What could be made out of the season; a null stands for what is wrong and reported, so that nothing is checked against it.</summary>
/// <param name="StatedTupOut">Only where the file states it.</param>
/// <param name="Span">Where the file says when the tup goes in.</param>
internal sealed record SeasonDraft(LocalDate? TupIn, LocalDate? TupOut, LocalDate? StatedTupOut, int GestationDays, SourceSpan Span)
{
    public string? Last { get; init; }

    /// <summary>Of all its groups; null until they are read.</summary>
    public DateInterval? Days { get; init; }

    public Season? Made => TupIn is { } tupIn && TupOut is { } tupOut ? new Season(tupIn, tupOut, GestationDays, Span) { Last = Last } : null;
}
