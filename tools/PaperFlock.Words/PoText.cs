using System.Collections.Immutable;
using System.Text;

namespace PaperFlock.Words;

/// <summary>Writes catalogues in the PO format.</summary>
public static class PoText
{
    public static string Template(ImmutableArray<SaidWords> said)
    {
        var text = new StringBuilder();
        Line(text, "# Every word PaperFlock prints. Copy this file to NAME.po and translate each msgid into its msgstr.");
        Line(text, "# {0}, {1} and so on are figures and names that are put in: keep each of them, in any order.");
        Line(text, "# What stands between backquotes is typed by the reader: leave it as it is. So are page codes in capitals, such as CALL.");
        Header(text, "", "nplurals=2; plural=(n != 1);");
        foreach (var words in said)
        {
            Entry(text, words, _ => "");
        }

        return text.ToString();
    }

    /// <param name="tag">Of the language.</param>
    /// <param name="forms">Its <c>Plural-Forms</c>; two of them, as in English.</param>
    /// <param name="say">The translation of a text.</param>
    public static string Translated(ImmutableArray<SaidWords> said, string tag, string forms, Func<string, string> say)
    {
        var text = new StringBuilder();
        Header(text, tag, forms);
        foreach (var words in said)
        {
            Entry(text, words with { Notes = [], Places = [] }, say);
        }

        return text.ToString();
    }

    private static void Header(StringBuilder text, string tag, string forms)
    {
        Line(text, "msgid \"\"");
        Line(text, "msgstr \"\"");
        foreach (var line in (ReadOnlySpan<string>)["Project-Id-Version: PaperFlock", $"Language: {tag}", "MIME-Version: 1.0", "Content-Type: text/plain; charset=UTF-8", "Content-Transfer-Encoding: 8bit", $"Plural-Forms: {forms}"])
        {
            Line(text, $"\"{line}\\n\"");
        }
    }

    private static void Entry(StringBuilder text, SaidWords words, Func<string, string> say)
    {
        Line(text, "");
        foreach (var note in words.Notes)
        {
            Line(text, $"#. {note}");
        }

        foreach (var place in words.Places)
        {
            Line(text, $"#: {place}");
        }

        if (words.Context is { } context)
        {
            Line(text, $"msgctxt {Quoted(context)}");
        }

        Line(text, $"msgid {Quoted(words.One)}");
        if (words.Many is { } many)
        {
            Line(text, $"msgid_plural {Quoted(many)}");
            Line(text, $"msgstr[0] {Quoted(say(words.One))}");
            Line(text, $"msgstr[1] {Quoted(say(many))}");
        }
        else
        {
            Line(text, $"msgstr {Quoted(say(words.One))}");
        }
    }

    private static string Quoted(string words)
    {
        var text = new StringBuilder(words.Length + 2).Append('"');
        foreach (var c in words)
        {
            _ = c switch
            {
                '"' => text.Append("\\\""),
                '\\' => text.Append("\\\\"),
                '\n' => text.Append("\\n"),
                '\t' => text.Append("\\t"),
                _ => text.Append(c),
            };
        }

        return text.Append('"').ToString();
    }

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
