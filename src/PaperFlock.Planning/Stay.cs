namespace PaperFlock.Planning;

/// <summary>Days on which a ewe is in one place and one state; both ends are days of it.</summary>
public sealed record Stay(LocalDate From, LocalDate To, Place Place, EweState State);
