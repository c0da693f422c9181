namespace PaperFlock.Packs;

/// <summary>The sheets of a pack by the words people ask for them with.</summary>
public static class SheetChoice
{
    /// <summary>In binding order.</summary>
    public static ImmutableArray<string> Names { get; } = [.. PackSheets.All.Select(s => s.Kind)];

    /// <summary>By name, or by the page code they are printed with; capitals do not matter.</summary>
    /// <returns>Each once, in binding order, and what is wrong with any other word.</returns>
    public static (ImmutableArray<string> Sheets, ImmutableArray<string> Complaints) Read(IEnumerable<string> words)
    {
        var kinds = words.Select(word => (Word: word, Kind: KindOf(word))).ToList();
        return ([.. Names.Where(name => kinds.Exists(k => k.Kind == name))], [.. kinds.Where(k => k.Kind is null).Select(k => Complaint(k.Word))]);
    }

    /// <returns>Null where a pack for some days may hold all of them.</returns>
    public static string? WhyNotForDays(IEnumerable<string> sheets)
    {
        var others = PackSheets.All.Where(s => sheets.Contains(s.Kind) && !s.IsForSitter).Select(s => s.Kind).ToList();
        return others.Count == 0 ? null
            : $"a pack for some days leaves out {ScreenText.List(others)}; it may hold {ScreenText.List(PackSheets.All.Where(s => s.IsForSitter).Select(s => s.Kind))}";
    }

    private static string? KindOf(string word) =>
        PackSheets.All.FirstOrDefault(s => s.Kind.Equals(word, StringComparison.OrdinalIgnoreCase) || s.Code.Equals(word, StringComparison.OrdinalIgnoreCase))?.Kind;

    /// <param name="word">FEED-2 and CARD-00101 are codes of one leaf of many.</param>
    private static string Complaint(string word) =>
        PackSheets.OfCode(word) is { } many ? $"'{word}' is one leaf of several: --sheets {many.Code} prints them all"
        : NearestWord.Find(word, PackSheets.All.SelectMany(s => new[] { s.Kind, s.Code })) is { } nearest ? $"there is no sheet '{word}'; did you mean '{nearest}'?"
        : $"there is no sheet '{word}'; there are {ScreenText.List(Names)}";
}
