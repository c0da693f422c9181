namespace PaperFlock.Sheets.EweCards;

/// <summary>
/// The page code of each card: the last group of her tag, which is what people call her by, as long as it is hers alone in the flock;
/// else the whole tag. It depends on the tags only, never on the order of the cards.
/// </summary>
public static class CardCodes
{
    public const string Start = "CARD-";

    public static ImmutableDictionary<string, string> Of(IEnumerable<EwePlan> ewes)
    {
        var tags = ewes.Select(e => e.Ewe.Tag).ToArray();
        var shared = tags.GroupBy(LastGroup, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => g.Key).ToHashSet(StringComparer.Ordinal);
        return tags.ToImmutableDictionary(
            t => t,
            t => Start + (shared.Contains(LastGroup(t)) ? t.Replace(' ', '-') : LastGroup(t)),
            StringComparer.Ordinal);
    }

    private static string LastGroup(string tag) => tag[(tag.LastIndexOf(' ') + 1)..];
}
