namespace PaperFlock.Sheets.Issues;

/// <summary>What a reader takes in as one thing: a row of a table, or a paragraph.</summary>
/// <param name="Cells">What each says, empty for one to write in; a paragraph has one.</param>
public sealed record LeafRow(RowKey Key, ImmutableArray<LeafCell> Cells)
{
    /// <summary>Whether the two say the same to somebody who reads them on that day.</summary>
    public bool SaysOn(LocalDate day, LeafRow other)
    {
        if (Cells.Length != other.Cells.Length)
        {
            return false;
        }

        for (var i = 0; i < Cells.Length; i++)
        {
            if (!Cells[i].SaysOn(day, other.Cells[i]))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether the other may stand in the place of this one. One that an earlier format had no name for is known by its cells.</summary>
    public bool IsReplacedBy(LeafRow other) =>
        Key is { Kind: RowKind.Earlier, Name.Length: 0 } ? Cells.Length == other.Cells.Length : Key.IsAbout(other.Key);

    public bool Equals(LeafRow? other) => other is not null && Key == other.Key && Cells.SequenceEqual(other.Cells);

    public override int GetHashCode() => Cells.Aggregate(Key.GetHashCode(), HashCode.Combine);

    public bool IsOver(LocalDate day) => Key.Last < day;
}
