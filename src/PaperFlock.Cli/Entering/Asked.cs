namespace PaperFlock.Cli.Entering;

/// <summary>A ewe as the file has her at this moment, and what bounds an answer about her.</summary>
/// <param name="Today">Nothing can have been seen after it.</param>
internal sealed record Asked(Flock Flock, Ewe Ewe, LocalDate Today)
{
    public TuppingGroup Group => Flock.GroupOf(Ewe);
}
