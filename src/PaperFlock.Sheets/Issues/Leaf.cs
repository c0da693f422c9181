namespace PaperFlock.Sheets.Issues;

/// <summary>What is put into the pack and taken out of it in one piece: a leaf with both its sides, or a card.</summary>
/// <param name="Id">Page code and number of the first page, such as "JOBS 3": the same from issue to issue.</param>
/// <param name="Label">What stands on it: the code alone where the sheet has one page.</param>
/// <param name="Rows">All it says, front before back; place, issue and page count left out.</param>
/// <param name="Last">The last day it is of use; null for as long as the pack is.</param>
public sealed record Leaf(string Id, string Label, string Title, ImmutableArray<LeafRow> Rows, LocalDate? Last = null)
{
    /// <summary>Whether the two say the same to somebody who reads them on that day: what is over by then does not count.</summary>
    public bool SaysOn(LocalDate day, Leaf other)
    {
        var (mine, others) = (Rows.Where(r => !r.IsOver(day)), other.Rows.Where(r => !r.IsOver(day)));
        return mine.Zip(others).All(pair => pair.First.SaysOn(day, pair.Second)) && mine.Count() == others.Count();
    }

    public bool Equals(Leaf? other) =>
        other is not null && Id == other.Id && Label == other.Label && Title == other.Title && Last == other.Last && Rows.SequenceEqual(other.Rows);

    public override int GetHashCode() => Rows.Aggregate(HashCode.Combine(Id, Label, Title, Last), HashCode.Combine);

    public bool IsOver(LocalDate day) => Last < day;
}
