using System.Collections.Immutable;
using NodaTime;

namespace PaperFlock.Sheets.Issues;

/// <summary>What a reader takes in as one thing: a row of a table, or a paragraph.</summary>
/// <param name="Key">What it is about, such as a ewe or a week; empty for a paragraph.</param>
/// <param name="Cells">Words cell by cell, empty for one to write in; a paragraph has one.</param>
/// <param name="Last">The last day it is of use; null for as long as the leaf is.</param>
public sealed record LeafRow(string Key, ImmutableArray<LeafCell> Cells, LocalDate? Last = null)
{
    /// <summary>Whether the two say the same to somebody who reads them on that day.</summary>
    public bool SaysOn(LocalDate day, LeafRow other)
    {
        if (Key != other.Key || Cells.Length != other.Cells.Length)
        {
            return false;
        }

        for (var i = 0; i < Cells.Length; i++)
        {
            if (Cells[i].On(day) != other.Cells[i].On(day))
            {
                return false;
            }
        }

        return true;
    }

    public bool IsOver(LocalDate day) => Last < day;
}

/// <param name="Last">The last day the words are of use; null for as long as the row is.</param>
public readonly record struct LeafCell(string Words, LocalDate? Last = null)
{
    /// <summary>What still counts on that day.</summary>
    public string On(LocalDate day) => Last < day ? string.Empty : Words;
}
