namespace PaperFlock.Sheets.Swap;

/// <summary>Why a leaf is printed again, in a sentence: the first row that differs, and how many more do.</summary>
internal static class LeafSentence
{
    private const int Longest = 90;

    /// <summary>More figures than a few days have are a table's.</summary>
    private const int MostDigits = 8;

    public static string Of(LeafOutcome leaf, SeasonPlan plan)
    {
        if (leaf.Fate == LeafFate.Added)
        {
            return "New.";
        }

        var said = leaf.Changes.OrderBy(Rank).Select(c => Of(c, plan, leaf.Leaf.Title)).Distinct().ToArray();
        return said.Length == 0 ? "Printed with the rest." : English.Sentence(said.Length == 1 ? said[0] : $"{said[0]}; {said.Length - 1} more, by the bars");
    }

    /// <summary>What is told of a ewe tells most, and a paragraph least.</summary>
    private static int Rank(RowChange change) => (change.Row ?? change.Old)!.Key.Kind switch { RowKind.Ewe => 0, RowKind.Job => 1, RowKind.Paragraph => 3, _ => 2 };

    private static string Of(RowChange change, SeasonPlan plan, string title)
    {
        var key = (change.Row ?? change.Old)!.Key;
        if (change.Row is not { } row)
        {
            return key.Name.Length == 0 ? "words are gone" : $"{key.Name} is gone";
        }

        var now = Shortened(string.Join(Strikes.Between, row.Cells.SelectMany((cell, i) => New(cell, change.Old is { } old && old.Cells.Length == row.Cells.Length ? old.Cells[i] : default))));
        var ewe = plan.Ewes.FirstOrDefault(e => key.Kind == RowKind.Ewe ? e.Ewe.Tag == key.Id : e.Ewe.CallName == title);
        return ewe is not null && Speaks(now, ewe) ? Fact(ewe)
            : change.Old is null && key.Name.Length > 0 ? $"{key.Name} is new"
            : now.Count(char.IsDigit) > MostDigits ? $"{(key.Name.Length > 0 ? key.Name : "there")}: other figures"
            : key.Name.Length > 0 ? $"{key.Name}: {now}"
            : $"now {now}";
    }

    /// <summary>What a cell tells that it did not tell before.</summary>
    private static IEnumerable<string> New(LeafCell now, LeafCell old) =>
        now.Words.Split(Strikes.Between, StringSplitOptions.RemoveEmptyEntries).Except((old.Words ?? "").Split(Strikes.Between), StringComparer.Ordinal);

    /// <summary>Whether the words tell what she carries, or when she is due.</summary>
    private static bool Speaks(string words, EwePlan ewe) =>
        words.Contains('\u2022', StringComparison.Ordinal) || words.Contains("lamb", StringComparison.OrdinalIgnoreCase) || (ewe.Due is { } due && words.Contains(DateText.Loose(due.Likely), StringComparison.Ordinal));

    private static string Fact(EwePlan ewe) => ewe.Ewe.CallName + ewe switch
    {
        { Standing: Standing.Lambed } => " has lambed",
        { Standing: Standing.LostLambs } => " has lost her lambs",
        { Standing: Standing.Gone } => " is gone",
        { Due: { } due, IsScanned: true } => $" now carries {Number(ewe.Litter)}, due {DateText.Short(due.Likely)}",
        { Due: { } due } => $" is now due {DateText.Short(due.Likely)}",
        _ => " is not in lamb",
    };

    private static string Number(int lambs) => lambs switch { 1 => "one", 2 => "two", 3 => "three", 4 => "four", _ => lambs.ToString(CultureInfo.InvariantCulture) };

    private static string Shortened(string words)
    {
        words = HiddenWords.Shown(words).TrimEnd('.');
        return words.Length <= Longest ? words : words[..Math.Max(words.LastIndexOf(' ', Longest), 1)].TrimEnd('.') + " \u2026";
    }
}
