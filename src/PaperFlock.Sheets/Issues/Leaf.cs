using System.Collections.Immutable;
using System.IO.Hashing;
using System.Text;
using NodaTime;
using NodaTime.Text;

namespace PaperFlock.Sheets.Issues;

/// <summary>What is put into the pack and taken out of it in one piece: a leaf with both its sides, a card, a planner with all its tiles.</summary>
/// <param name="Id">Page code and number of the first page, such as "JOBS 3": the same from issue to issue.</param>
/// <param name="Label">What stands on it: the code alone where the sheet has one page.</param>
/// <param name="Last">The last day it is of use; null for as long as the pack is.</param>
/// <param name="Rows">All its words, front before back.</param>
public sealed record Leaf(string Id, string Label, string Title, LocalDate? Last, ImmutableArray<LeafRow> Rows)
{
    /// <summary>
    /// Of all it says, place, issue and page count left out: two leaves that say the same have
    /// the same, wherever they stand.
    /// </summary>
    public string Fingerprint { get; } = FingerprintOf(Rows);

    /// <summary>Whether the two say the same to somebody who reads them on that day: what is over by then does not count.</summary>
    public bool SaysOn(LocalDate day, Leaf other)
    {
        if (Fingerprint == other.Fingerprint)
        {
            return true;
        }

        var (mine, others) = (Rows.Where(r => !r.IsOver(day)), other.Rows.Where(r => !r.IsOver(day)));
        return mine.Zip(others).All(pair => pair.First.SaysOn(day, pair.Second)) && mine.Count() == others.Count();
    }

    public bool IsOver(LocalDate day) => Last < day;

    private static string FingerprintOf(ImmutableArray<LeafRow> rows)
    {
        var hash = new XxHash128();
        foreach (var row in rows)
        {
            Add(row.Key);
            Add("\u001d");
            Add(Iso(row.Last));
            foreach (var cell in row.Cells)
            {
                Add("\u001f");
                Add(cell.Words);
                Add("\u001d");
                Add(Iso(cell.Last));
            }

            Add("\u001e");
        }

        return Convert.ToHexString(hash.GetCurrentHash());

        void Add(string text) => hash.Append(Encoding.UTF8.GetBytes(text));

        static string Iso(LocalDate? day) => day is { } d ? LocalDatePattern.Iso.Format(d) : string.Empty;
    }
}
