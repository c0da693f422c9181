namespace PaperFlock.Packs;

/// <summary>When the season after another begins, and what its file is called.</summary>
public static class SeasonAfter
{
    /// <summary>The same day of the week, a year on.</summary>
    private const int UsualDays = 52 * 7;

    /// <summary>A year may be left out; after two, little of what the old file says of the ewes is true.</summary>
    private const int MostMonths = 30;

    public static LocalDate UsualTupIn(Flock last) => last.Season.TupIn.PlusDays(UsualDays);

    /// <returns>Why the tup cannot go in on that day; null where it can.</returns>
    public static string? WhyNot(Flock last, LocalDate tupIn)
    {
        var lastLambs = last.Groups.Max(g => g.TupOut).PlusDays(last.Season.GestationDays);
        return tupIn <= last.Season.TupIn ? $"the tup went in on {ScreenText.Day(last.Season.TupIn)} last season: the next season's day comes after it"
            : tupIn <= lastLambs ? $"on {ScreenText.Day(tupIn)} ewes may still be in lamb, the last of them due on {ScreenText.Day(lastLambs)}: the next season's day comes after it"
            : tupIn > last.Season.TupIn.PlusMonths(MostMonths) ? $"{ScreenText.Day(tupIn)} is more than {ScreenText.Count(MostMonths, "month")} after {ScreenText.Day(last.Season.TupIn)}, when the tup went in last: check the year"
            : null;
    }

    /// <returns><c>hollin-bank-2027.yaml</c> after <c>hollin-bank.yaml</c> or <c>hollin-bank-2026.yaml</c>, in the same folder if one is given.</returns>
    public static string FileName(string last, LocalDate tupIn)
    {
        var name = Path.GetFileNameWithoutExtension(last);
        var plain = name.Length > 5 && name[^5] == '-' && name[^4..].All(char.IsAsciiDigit) ? name[..^5] : name;
        return Path.Combine(Path.GetDirectoryName(last) ?? "", string.Create(CultureInfo.InvariantCulture, $"{plain}-{tupIn.Year}{Path.GetExtension(last)}"));
    }
}
