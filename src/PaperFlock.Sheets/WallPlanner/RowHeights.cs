namespace PaperFlock.Sheets.WallPlanner;

/// <summary>Shares out spare height among rows.</summary>
internal static class RowHeights
{
    /// <summary>
    /// Stretches rows so that together they are exactly <paramref name="room"/> high. Busy rows take the most, up to half as much again
    /// as they need; then all alike.
    /// </summary>
    /// <param name="natural">The least each can do with, in points; their sum is at most <paramref name="room"/>.</param>
    public static ImmutableArray<double> Fill(ImmutableArray<double> natural, ImmutableArray<bool> busy, double room)
    {
        var spare = room - natural.Sum();
        if (spare <= 0 || natural.IsEmpty)
        {
            return natural;
        }

        var busyRoom = natural.Where((_, i) => busy[i]).Sum() * 0.5;
        var toBusy = Math.Min(spare * 0.7, busyRoom);
        var busyStretch = busyRoom > 0 ? 1 + (toBusy / busyRoom * 0.5) : 1;
        var each = (spare - toBusy) / natural.Length;
        return [.. natural.Select((h, i) => (busy[i] ? h * busyStretch : h) + each)];
    }

    /// <summary>
    /// Fills two halves of a planner that is cut across, so that the cut falls between two rows.
    /// </summary>
    /// <param name="upper">Height for rows above the cut.</param>
    /// <param name="lower">Height for rows below it.</param>
    /// <returns>Null when the rows cannot be divided so.</returns>
    public static ImmutableArray<double>? FillHalves(ImmutableArray<double> natural, ImmutableArray<bool> busy, double upper, double lower)
    {
        var total = natural.Sum();
        var sum = 0.0;
        var best = -1;
        var bestMiss = double.MaxValue;
        for (var i = 0; i < natural.Length; i++)
        {
            sum += natural[i];
            if (sum > upper || total - sum > lower)
            {
                continue;
            }

            // The fairest cut stretches both halves alike.
            var miss = Math.Abs((upper / sum) - (lower / Math.Max(total - sum, 1)));
            if (miss < bestMiss)
            {
                (best, bestMiss) = (i + 1, miss);
            }
        }

        return best < 0 ? null : [.. Fill(natural[..best], busy[..best], upper), .. Fill(natural[best..], busy[best..], lower)];
    }
}
