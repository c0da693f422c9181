using System.Buffers;

namespace PaperFlock.Flocks.Editing;

/// <summary>Values as YAML text on one line, quoted only where they must be.</summary>
internal static class NodeText
{
    /// <summary>YAML 1.2.2, 5.3: what may not begin a plain scalar. A hyphen, a question mark and a colon may, but not before a space, and are quoted too.</summary>
    private static readonly SearchValues<char> Indicators = SearchValues.Create("-?:,[]{}#&*!|>'\"%@`");

    /// <summary>YAML 1.2.2, 7.3.3: what ends a plain scalar inside brackets.</summary>
    private static readonly SearchValues<char> FlowMarks = SearchValues.Create(",[]{}");

    private static readonly SearchValues<char> NumberMarks = SearchValues.Create("0123456789+-.:_eExXoO");

    /// <summary>What YAML 1.1 or 1.2 programs take for a truth or for nothing.</summary>
    private static readonly string[] TypedWords = ["true", "false", "yes", "no", "on", "off", "y", "n", "null", "~", "<<", "="];

    /// <summary>On one line, as it stands after a key's colon.</summary>
    public static string Block(Node node) => node is Scalar scalar ? Of(scalar, inFlow: false, quote: null) : Flow(node);

    /// <summary>On one line, for inside brackets.</summary>
    /// <param name="json">As JSON has it, for a file that is JSON so far.</param>
    public static string Flow(Node node, bool json = false) => node switch
    {
        Scalar scalar => Of(scalar, inFlow: true, json && !IsJsonCount(scalar) ? '"' : null),
        Sequence list => $"[{string.Join(", ", list.Items.Select(i => Flow(i, json)))}]",
        Mapping section => $"{{{string.Join(", ", section.Entries.Select(e => $"{Key(e.Key.Text, json)}: {Flow(e.Value, json)}"))}}}",
        _ => throw new ArgumentOutOfRangeException(nameof(node)),
    };

    public static string Key(string key, bool json = false) => json ? Double(key) : Of(new Scalar(key, IsPlain: true, default), inFlow: true, quote: null);

    /// <param name="quote">The quotes to keep to; null to use none where none are needed.</param>
    public static string Of(Scalar scalar, bool inFlow, char? quote)
    {
        var text = scalar.Text;
        return text.Length == 0 ? scalar.IsPlain ? "" : "''"
            : quote == '"' || text.AsSpan().ContainsAnyInRange('\0', '\u001F') ? Double(text)
            : quote == '\'' || !CanBePlain(text, inFlow) || (!scalar.IsPlain && LooksTyped(text)) ? $"'{text.Replace("'", "''", StringComparison.Ordinal)}'"
            : text;
    }

    private static bool CanBePlain(string text, bool inFlow) =>
        text.Trim(' ', '\t') == text
        && (!Indicators.Contains(text[0]) || IsNegativeNumber(text))
        && !PastedMarks.Quotes.Contains(text[0])
        && !text.Contains(": ", StringComparison.Ordinal)
        && !text.Contains(":\t", StringComparison.Ordinal)
        && !text.EndsWith(':')
        && !text.Contains(" #", StringComparison.Ordinal)
        && !text.Contains('\u0085', StringComparison.Ordinal)
        && !(inFlow && text.AsSpan().ContainsAny(FlowMarks));

    /// <summary>JSON has numbers without quotes, and a count of lambs is one.</summary>
    private static bool IsJsonCount(Scalar word) => word.IsPlain && word.Text.All(char.IsAsciiDigit) && (word.Text.Length == 1 || word.Text[0] != '0');

    private static bool IsNegativeNumber(string text) => text.Length > 1 && text[0] == '-' && char.IsAsciiDigit(text[1]);

    /// <summary>A spreadsheet's or another program's YAML reader would make a number, a date or a truth of it, and a tag must stay as it is.</summary>
    private static bool LooksTyped(string text) =>
        !text.AsSpan().ContainsAnyExcept(NumberMarks) || TypedWords.Contains(text, StringComparer.OrdinalIgnoreCase);

    private static string Double(string text) => $"\"{string.Concat(text.Select(Escaped))}\"";

    private static string Escaped(char c) => c switch
    {
        '"' => "\\\"",
        '\\' => "\\\\",
        '\n' => "\\n",
        '\r' => "\\r",
        '\t' => "\\t",
        < ' ' => $"\\u{((int)c).ToString("x4", CultureInfo.InvariantCulture)}",
        _ => c.ToString(),
    };
}
