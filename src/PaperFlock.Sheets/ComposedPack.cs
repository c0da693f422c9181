namespace PaperFlock.Sheets;

/// <summary>A whole pack, ready to print.</summary>
/// <param name="Id">Such as "HB-2027".</param>
/// <param name="Sheets">In binding order, all on the paper the printer holds.</param>
/// <param name="WholePlanner">The planner on larger paper, for a printer that takes it; null where it was not asked for.</param>
public sealed record ComposedPack(string Id, string Title, ImmutableArray<Sheet> Sheets, Sheet? WholePlanner)
{
    /// <summary>Which set of leaves it is, such as "27DEC-02JAN" for a sitter's days or "issue-2"; empty for the whole pack.</summary>
    public string Set { get; init; } = "";

    public int Leaves => Sheets.Sum(s => s.Leaves);
}
