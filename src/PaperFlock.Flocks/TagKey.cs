namespace PaperFlock.Flocks;

/// <summary>
/// What is left of a tag when all that people and spreadsheets change in it is taken away: spaces of any kind, hyphens and
/// dashes of any width, capitals. Two tags of one key are one tag, wherever they are typed.
/// </summary>
public static class TagKey
{
    /// <returns>For comparing by ordinal, never for the paper. A tag of nothing but hyphens is its own key.</returns>
    public static string Of(string tag)
    {
        var key = string.Concat(ComposedText.Of(tag).Where(IsKept).Select(char.ToUpperInvariant));
        return key.Length > 0 ? key : tag;
    }

    private static bool IsKept(char c) =>
        !char.IsWhiteSpace(c) && char.GetUnicodeCategory(c) is not (UnicodeCategory.DashPunctuation or UnicodeCategory.Format) && c != MinusSign;

    private const char MinusSign = '\u2212';
}
