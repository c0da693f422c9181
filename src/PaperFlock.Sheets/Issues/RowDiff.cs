using System.Collections.Immutable;
using NodaTime;

namespace PaperFlock.Sheets.Issues;

/// <summary>Which rows say something else than before, found by the longest common subsequence of both, so that a row that only moved up or down is none of them.</summary>
internal static class RowDiff
{
    /// <param name="now">Rows that are over on <paramref name="day"/> are passed over, here and in <paramref name="before"/>.</param>
    /// <returns>In the order of <paramref name="now"/>, each old row that is gone before the row that follows it.</returns>
    public static ImmutableArray<RowChange> Between(ImmutableArray<LeafRow> before, ImmutableArray<LeafRow> now, LocalDate day)
    {
        var old = before.Where(r => !r.IsOver(day)).ToArray();
        var present = now.Select((row, index) => (Row: row, Index: index)).Where(p => !p.Row.IsOver(day)).ToArray();
        var common = Lengths(old, [.. present.Select(p => p.Row)], day);

        var changes = ImmutableArray.CreateBuilder<RowChange>();
        var gone = new List<LeafRow>();
        var added = new List<(LeafRow Row, int Index)>();
        int i = 0, j = 0;
        while (i < old.Length || j < present.Length)
        {
            if (i < old.Length && j < present.Length && old[i].SaysOn(day, present[j].Row))
            {
                Pair(gone, added, changes);
                i++;
                j++;
            }
            else if (j == present.Length || (i < old.Length && common[i + 1, j] >= common[i, j + 1]))
            {
                gone.Add(old[i++]);
            }
            else
            {
                added.Add(present[j++]);
            }
        }

        Pair(gone, added, changes);
        return changes.ToImmutable();
    }

    /// <summary>Between two rows that stayed, a new row replaces the old one about the same thing; paragraphs replace each other in order.</summary>
    private static void Pair(List<LeafRow> gone, List<(LeafRow Row, int Index)> added, ImmutableArray<RowChange>.Builder changes)
    {
        foreach (var (row, index) in added)
        {
            var at = gone.FindIndex(old => old.Key == row.Key);
            changes.Add(new RowChange(row, at < 0 ? null : gone[at], index));
            if (at >= 0)
            {
                gone.RemoveAt(at);
            }
        }

        changes.AddRange(gone.Select(old => new RowChange(null, old, -1)));
        gone.Clear();
        added.Clear();
    }

    /// <summary>Lengths of the longest common subsequences of all tails.</summary>
    private static int[,] Lengths(LeafRow[] old, LeafRow[] now, LocalDate day)
    {
        var lengths = new int[old.Length + 1, now.Length + 1];
        for (var i = old.Length - 1; i >= 0; i--)
        {
            for (var j = now.Length - 1; j >= 0; j--)
            {
                lengths[i, j] = old[i].SaysOn(day, now[j]) ? lengths[i + 1, j + 1] + 1 : Math.Max(lengths[i + 1, j], lengths[i, j + 1]);
            }
        }

        return lengths;
    }
}
