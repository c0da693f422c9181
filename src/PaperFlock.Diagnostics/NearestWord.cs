namespace PaperFlock.Diagnostics;

/// <summary>Finds the word somebody probably meant.</summary>
/// <remarks>
/// Our own, and not a library: the words number a few dozen, and the distance that knows a slip of two neighbouring
/// letters (<c>tpu-in</c> for <c>tup-in</c>) is twenty lines.
/// </remarks>
public static class NearestWord
{
    /// <summary>
    /// The candidate with the fewest slips, if they are few enough for its length: one in a word of up to four
    /// letters, two up to eight, three beyond. The first of equals wins. Case, and spaces or underscores for hyphens, are no slip.
    /// </summary>
    /// <returns>Null when nothing is near.</returns>
    public static string? Find(string word, IEnumerable<string> candidates)
    {
        var typed = Plain(word);
        return candidates
            .Select(candidate => (Candidate: candidate, Meant: Plain(candidate)))
            .Select(c => (c.Candidate, c.Meant, Allowed: Allowed(Math.Max(typed.Length, c.Meant.Length))))
            // The difference in length is a lower bound, and keeps a very long word from costing anything.
            .Where(c => Math.Abs(typed.Length - c.Meant.Length) <= c.Allowed)
            .Select(c => (c.Candidate, c.Allowed, Slips: Distance(typed, c.Meant)))
            .Where(c => c.Slips <= c.Allowed)
            .OrderBy(c => c.Slips)
            .Select(c => c.Candidate)
            .FirstOrDefault();
    }

    /// <summary>
    /// Letters inserted, left out, changed, or swapped with a neighbour, the fewest that turn one word into the other,
    /// no stretch edited twice (the optimal string alignment distance).
    /// </summary>
    internal static int Distance(string from, string to)
    {
        var twoBack = new int[to.Length + 1];
        var last = new int[to.Length + 1];
        var row = new int[to.Length + 1];
        for (var j = 0; j <= to.Length; j++)
        {
            last[j] = j;
        }

        for (var i = 1; i <= from.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= to.Length; j++)
            {
                var changed = last[j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1);
                row[j] = Math.Min(changed, 1 + Math.Min(last[j], row[j - 1]));
                if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1])
                {
                    row[j] = Math.Min(row[j], 1 + twoBack[j - 2]);
                }
            }

            (twoBack, last, row) = (last, row, twoBack);
        }

        return last[to.Length];
    }

    private static int Allowed(int length) => length switch { <= 4 => 1, <= 8 => 2, _ => 3 };

    private static string Plain(string word) => word.Trim().Replace('_', '-').Replace(' ', '-').ToLowerInvariant();
}
