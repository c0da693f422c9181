namespace PaperFlock.Planning.Jobs;

/// <summary>
/// No ewe is turned over in the last six weeks unless a job says it must (common practice, no source). A handling job of
/// the keeper's own keeps to the part of its window before them; one that lies wholly inside them says it must.
/// </summary>
internal readonly record struct LastSixWeeks(LocalDate From, LocalDate To)
{
    public const int Days = 42;

    /// <summary>Null when the group has no ewe in lamb.</summary>
    public static LastSixWeeks? Of(GroupDueDates? due) => due is null ? null : new(due.First.Day.PlusDays(-Days), due.Last.Day);

    public bool Overlaps(LocalDate earliest, LocalDate latest) => earliest <= To && latest >= From;
}
