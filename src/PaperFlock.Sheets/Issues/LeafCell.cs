namespace PaperFlock.Sheets.Issues;

/// <param name="Words">As they are, or hidden (<see cref="HiddenWords"/>) in a record.</param>
/// <param name="Last">The last day they are of use; null for as long as the row is.</param>
public readonly record struct LeafCell(string Words, LocalDate? Last = null)
{
    /// <summary>What still counts on that day.</summary>
    public string On(LocalDate day) => Last < day ? string.Empty : Words;

    public bool SaysOn(LocalDate day, LeafCell other) => HiddenWords.AreSame(On(day), other.On(day));
}
