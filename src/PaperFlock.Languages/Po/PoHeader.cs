using PaperFlock.Diagnostics;

namespace PaperFlock.Languages.Po;

/// <summary>The first entry of a catalogue: lines of <c>Key: value</c>.</summary>
internal static class PoHeader
{
    /// <param name="plurals">The catalogue has entries with several forms, so that it must say how they are chosen.</param>
    /// <returns>A BCP 47 tag: PO files write <c>pt_BR</c> for pt-BR.</returns>
    public static (string Tag, PluralRule Plurals) Read(PoEntry? header, bool plurals, DiagnosticBag found)
    {
        if (header is null)
        {
            found.Add(PoMessages.NoHeader());
            return ("", PluralRule.OneAndMany);
        }

        var span = header.Said[0].Span;
        var lines = header.Said[0].Words.Split('\n', StringSplitOptions.TrimEntries);
        string? Value(string key) => lines.FirstOrDefault(l => l.StartsWith(key + ":", StringComparison.OrdinalIgnoreCase))?[(key.Length + 1)..].Trim();

        var tag = Value("Language")?.Split('@', '.')[0].Replace('_', '-') ?? "";
        if (!IsTag(tag))
        {
            found.Add(PoMessages.NoLanguage(span));
        }

        if (Value("Content-Type") is { } type && type.Contains("charset=", StringComparison.OrdinalIgnoreCase) && !type.Contains("utf-8", StringComparison.OrdinalIgnoreCase))
        {
            found.Add(PoMessages.NotUnicode(span));
        }

        var rule = Value("Plural-Forms") is { } forms ? PluralRule.Read(forms) : null;
        if (rule is null && plurals)
        {
            found.Add(PoMessages.NoPluralRule(span));
        }

        return (tag, rule ?? PluralRule.OneAndMany);
    }

    /// <summary>Letters and figures in groups of at most eight, the first of letters alone (BCP 47, section 2.1).</summary>
    private static bool IsTag(string tag)
    {
        var groups = tag.Split('-');
        return groups[0].Length >= 2 && groups[0].All(char.IsAsciiLetter) && groups.All(g => g.Length is >= 1 and <= 8 && g.All(char.IsAsciiLetterOrDigit));
    }
}
