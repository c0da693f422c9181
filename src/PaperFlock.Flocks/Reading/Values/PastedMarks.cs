namespace PaperFlock.Flocks.Reading.Values;

/// <summary>What word processors, spreadsheets and web pages make of the hyphens, spaces and quotes that were typed.</summary>
internal static class PastedMarks
{
    /// <summary>Curly and angled quotes.</summary>
    public static readonly char[] Quotes = ['\u2018', '\u2019', '\u201A', '\u201B', '\u201C', '\u201D', '\u201E', '\u201F', '\u00AB', '\u00BB', '\u2039', '\u203A'];

    /// <summary>Hyphens and dashes of every width, and the minus sign.</summary>
    public static bool IsDash(char c) => c is (>= '\u2010' and <= '\u2015') or '\u2212';

    /// <summary>Spaces that do not break, or are of another width.</summary>
    public static bool IsSpace(char c) => c is '\u00A0' or '\u1680' or (>= '\u2000' and <= '\u200A') or '\u202F' or '\u205F' or '\u3000';

    /// <summary>Takes no room and leaves no mark: soft hyphens, marks of direction, joiners.</summary>
    public static bool IsUnseen(char c) => c is '\u00AD' or (>= '\u200B' and <= '\u200F') or '\u2060';

    /// <summary>The text without what word processors and web pages make of quotes, hyphens and spaces.</summary>
    public static string AsTyped(string text) => string.Concat(text.Select(c => c switch
    {
        _ when IsDash(c) => "-",
        _ when IsSpace(c) => " ",
        _ when Quotes.Contains(c) || IsUnseen(c) => "",
        _ => c.ToString(),
    })).Trim(' ');
}
