using PaperFlock.Sheets.EweCards;

namespace PaperFlock.Packs;

/// <summary>The sheets and leaves of a pack by the words people ask for them with.</summary>
public static class SheetChoice
{
    /// <summary>Comes with an issue of changed leaves, and never alone.</summary>
    private const string ChangesCode = "CHG";

    /// <summary>In binding order.</summary>
    public static ImmutableArray<string> Names { get; } = [.. PackSheets.All.Select(s => s.Kind)];

    /// <summary>By name, or by the code at the foot of a page: of a kind of sheet, or of one leaf of many, such as CARD-00101; capitals do not matter.</summary>
    /// <returns>Kinds each once, in binding order; codes of single leaves, whether there are such or not; and what is wrong with any other word.</returns>
    public static (ImmutableArray<string> Sheets, ImmutableArray<string> Codes, ImmutableArray<string> Complaints) Read(IEnumerable<string> words)
    {
        var all = words.ToList();
        var kinds = all.Select(KindOf).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var others = all.Where(w => KindOf(w) is null).ToLookup(w => PackSheets.OfCode(w) is not null && w.Contains('-', StringComparison.Ordinal));
        return ([.. Names.Where(kinds.Contains)], [.. others[true].Distinct(StringComparer.OrdinalIgnoreCase)], [.. others[false].Select(Complaint)]);
    }

    /// <returns>Null where a pack for some days may hold all of them.</returns>
    public static string? WhyNotForDays(PackRequest request)
    {
        var others = PackSheets.All.Where(s => request.IsOfSome && (request with { Days = null }).Wants(s) && !s.IsForSitter).Select(s => s.Kind).ToList();
        return others.Count == 0 ? null
            : $"a pack for some days leaves out {ScreenText.List(others)}; it may hold {ScreenText.List(PackSheets.All.Where(s => s.IsForSitter).Select(s => s.Kind))}";
    }

    /// <summary>Cards by whatever somebody typed of a tag, as after any command; a code as it stands on a card is that card's before all others.</summary>
    /// <returns>The request with the codes of those cards. What is no tag of the flock stays as it was.</returns>
    /// <exception cref="SeveralTagsException">More than one ewe may be meant.</exception>
    internal static PackRequest WithCardsByTag(PackRequest request, SeasonPlan plan)
    {
        var codes = CardCodes.Of(plan.Ewes);
        var finder = new TagFinder(plan.Flock.Ewes);
        return request with { Codes = [.. request.Codes.Select(Code).Distinct(StringComparer.OrdinalIgnoreCase)] };

        string Code(string typed)
        {
            if (!typed.StartsWith(CardCodes.Start, StringComparison.OrdinalIgnoreCase) || codes.Values.Contains(typed, StringComparer.OrdinalIgnoreCase))
            {
                return typed;
            }

            var ewes = finder.Find(typed[CardCodes.Start.Length..]);
            return ewes.Length switch { 0 => typed, 1 => codes[ewes[0].Tag], _ => throw new SeveralTagsException(typed, ewes) };
        }
    }

    /// <summary>A line for each single leaf that was asked for and is not there.</summary>
    internal static string UnknownLeaves(ComposedIssue issue) => string.Join('\n', issue.Missing.Select(c => UnknownLeaf(c, issue.Alike)));

    private static string UnknownLeaf(string code, IEnumerable<string> there)
    {
        var alike = there.Where(t => PackSheets.OfCode(t) == PackSheets.OfCode(code)).ToList();
        var nearest = NearestWord.Find(code, alike);
        return $"there is no leaf '{code}' in this pack: {(nearest is not null ? $"did you mean '{nearest}'?" : alike.Count == 0 ? "none of that kind has anything to say" : $"of that kind there are {ScreenText.List(alike)}")}";
    }

    private static string? KindOf(string word) =>
        PackSheets.All.FirstOrDefault(s => s.Kind.Equals(word, StringComparison.OrdinalIgnoreCase) || s.Code.Equals(word, StringComparison.OrdinalIgnoreCase))?.Kind;

    private static string Complaint(string word) =>
        word.Equals(ChangesCode, StringComparison.OrdinalIgnoreCase) ? $"sheet {ChangesCode} comes with changed leaves only: type --changed instead"
        : NearestWord.Find(word, PackSheets.All.SelectMany(s => new[] { s.Kind, s.Code })) is { } nearest ? $"there is no sheet '{word}'; did you mean '{nearest}'?"
        : $"there is no sheet '{word}'; there are {ScreenText.List(Names)}";
}
