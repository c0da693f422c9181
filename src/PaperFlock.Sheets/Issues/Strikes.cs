namespace PaperFlock.Sheets.Issues;

/// <summary>What is struck through by hand on a leaf that stays: ewes that are gone from it, and nothing else that differs.</summary>
internal static class Strikes
{
    /// <summary>Between things that are told one after another in a cell.</summary>
    public const string Between = " · ";

    /// <returns>The words to strike through; empty where the leaf has to be printed again.</returns>
    public static ImmutableArray<string> Of(ImmutableArray<RowChange> changes)
    {
        var struck = ImmutableArray.CreateBuilder<string>();
        foreach (var change in changes)
        {
            if (change is { Row: null, Old.Key: { Kind: RowKind.Ewe, Name: var name } })
            {
                struck.Add(name);
            }
            else if (change is { Row: { } row, Old: { } old } && row.Cells.Length == old.Cells.Length && Gone(old, row) is { Length: > 0 } gone)
            {
                struck.AddRange(gone);
            }
            else
            {
                return [];
            }
        }

        return [.. struck.Distinct(StringComparer.Ordinal)];
    }

    /// <returns>What the old row told and the new one does not; empty where that is not all there is to it.</returns>
    private static string[] Gone(LeafRow old, LeafRow now)
    {
        var gone = new List<string>();
        foreach (var (before, after) in old.Cells.Zip(now.Cells))
        {
            var left = after.Words.Split(Between, StringSplitOptions.RemoveEmptyEntries).AsSpan();
            foreach (var told in before.Words.Split(Between, StringSplitOptions.RemoveEmptyEntries))
            {
                if (!left.IsEmpty && left[0] == told)
                {
                    left = left[1..];
                }
                else
                {
                    gone.Add(told);
                }
            }

            if (!left.IsEmpty)
            {
                return [];
            }
        }

        return [.. gone];
    }
}
