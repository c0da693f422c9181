namespace PaperFlock.Sheets.Issues;

/// <summary>Which rows say something else than before, found by the longest common subsequence of both, so that a row that only moved up or down is none of them.</summary>
internal static class RowDiff
{
    /// <param name="now">Rows that are over on <paramref name="day"/> are passed over, here and in <paramref name="before"/>.</param>
    /// <returns>In the order of <paramref name="now"/>, then those that are gone.</returns>
    public static ImmutableArray<RowChange> Between(ImmutableArray<LeafRow> before, ImmutableArray<LeafRow> now, LocalDate day)
    {
        var old = before.Where(r => !r.IsOver(day)).ToArray();
        var present = now.Select((row, index) => (Row: row, Index: index)).Where(p => !p.Row.IsOver(day)).ToArray();
        var common = Lengths(old, [.. present.Select(p => p.Row)], day);

        // The number of rows that stayed says between which of them another stands.
        var gone = new List<(LeafRow Row, int Stayed)>();
        var added = new List<(LeafRow Row, int Index, int Stayed)>();
        int i = 0, j = 0, stayed = 0;
        while (i < old.Length || j < present.Length)
        {
            if (i < old.Length && j < present.Length && old[i].SaysOn(day, present[j].Row))
            {
                i++;
                j++;
                stayed++;
            }
            else if (j == present.Length || (i < old.Length && common[i + 1, j] >= common[i, j + 1]))
            {
                gone.Add((old[i++], stayed));
            }
            else
            {
                added.Add((present[j].Row, present[j].Index, stayed));
                j++;
            }
        }

        return Pair(gone, added);
    }

    /// <summary>A new row replaces the old one about the same thing, wherever that stood; a paragraph one between the same two rows that stayed.</summary>
    private static ImmutableArray<RowChange> Pair(List<(LeafRow Row, int Stayed)> gone, List<(LeafRow Row, int Index, int Stayed)> added)
    {
        var changes = ImmutableArray.CreateBuilder<RowChange>(gone.Count + added.Count);
        foreach (var (row, index, stayed) in added)
        {
            var at = gone.FindIndex(old => old.Row.IsReplacedBy(row) && (old.Row.Key.Id.Length > 0 || old.Stayed == stayed));
            changes.Add(new RowChange(row, at < 0 ? null : gone[at].Row, index));
            if (at >= 0)
            {
                gone.RemoveAt(at);
            }
        }

        changes.AddRange(gone.Select(old => new RowChange(null, old.Row, -1)));
        return changes.ToImmutable();
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
