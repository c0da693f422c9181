namespace PaperFlock.Flocks.Reading.Yaml;

/// <summary>The usual slips that make a text no YAML, each looked for where the parser says the trouble is, or above it. Null where it is not that one.</summary>
internal static class SyntaxSlips
{
    public static Diagnostic? Tab(SourceText source, int firstLine, int lastLine, bool parserSaysSo)
    {
        for (var line = firstLine; line <= (parserSaysSo ? source.LineCount : Math.Min(lastLine, firstLine + 1)); line++)
        {
            var text = source.Line(line);
            var at = text.IndexOf('\t', StringComparison.Ordinal);
            if (at >= 0 && at < text.Length - text.TrimStart().Length)
            {
                return FlockMessages.TabIndent(new SourceSpan(line, at + 1, 1));
            }
        }

        return null;
    }

    public static Diagnostic? Unclosed(SourceText source, int lastLine)
    {
        var scan = new OpenScan();
        for (var line = 1; line <= lastLine; line++)
        {
            scan.Read(source.Line(line), line);
            if (scan.OpenQuote is { } quote)
            {
                return FlockMessages.UnclosedQuote(quote with { Length = source.Line(line).Length - quote.Column + 1 }, lastLine);
            }

            if (scan.OutgrownBracket is { } bracket)
            {
                return FlockMessages.UnclosedBracket(bracket, source.TextOf(bracket));
            }
        }

        return lastLine == source.LineCount && scan.OpenBracket is { } left
            ? FlockMessages.UnclosedBracket(left, source.TextOf(left))
            : null;
    }

    /// <summary><c>name:Bracken</c> is one word to YAML, and the complaint comes on that line or the next.</summary>
    public static Diagnostic? Glued(SourceText source, int faultLine)
    {
        for (var line = faultLine; line >= Math.Max(1, faultLine - 1); line--)
        {
            var text = source.Line(line);
            var word = text.TrimStart(' ', '-');
            var colon = word.IndexOf(':', StringComparison.Ordinal);
            if (colon > 0 && colon + 1 < word.Length && word[colon + 1] != ' ' && word[..colon].All(c => char.IsAsciiLetter(c) || c == '-'))
            {
                var at = text.Length - word.Length;
                return FlockMessages.Syntax(
                    new SourceSpan(line, at + 1, colon + 1),
                    "there is no space after the colon",
                    $"put a space after the colon: `{word[..(colon + 1)]} {word[(colon + 1)..]}`");
            }
        }

        return null;
    }

    /// <summary>Marks that look like a dash or a colon of YAML, and are none.</summary>
    public static Diagnostic? OddMark(SourceText source, SourceSpan fault)
    {
        for (var line = fault.Line; line >= Math.Max(1, fault.Line - 1); line--)
        {
            var text = source.Line(line);
            var wide = text.IndexOf('\uFF1A', StringComparison.Ordinal);
            if (wide > 0 && FlockKeys.WordOf(text.TrimStart(' ', '-')).Length == text[..wide].TrimStart(' ', '-').Length)
            {
                return FlockMessages.Syntax(new SourceSpan(line, wide + 1, 1), "this is a wide colon, of another kind than the keyboard's", "write `:` and a space");
            }

            var star = text.Length - text.TrimStart(' ').Length;
            if (line == fault.Line && text.AsSpan(star).StartsWith("* "))
            {
                return FlockMessages.Syntax(new SourceSpan(line, star + 1, 1), "a star does not begin an entry of a list", "begin each entry with a dash and a space: `- `");
            }
        }

        return null;
    }

    /// <summary><c>tag ZZ 1</c>, or <c>season</c> alone: the complaint comes at the next colon, a line or more below.</summary>
    public static Diagnostic? NoColon(SourceText source, SourceSpan fault)
    {
        for (var line = fault.Line; line >= Math.Max(1, fault.Line - 1); line--)
        {
            var text = source.Line(line).TrimEnd(' ', '\t', '\r');
            var bare = text.TrimStart(' ', '-');
            var word = FlockKeys.WordOf(bare);
            if (word.Length > 0 && FlockKeys.All.Any(t => t.Has(word)) && (bare.Length == word.Length || bare[word.Length] is ' ' or '='))
            {
                var rest = bare[word.Length..].TrimStart(' ', '=', ':');
                return FlockMessages.Syntax(
                    new SourceSpan(line, text.Length - bare.Length + 1, word.Length),
                    $"there is no colon after `{word}`",
                    $"write `{word}:{(rest.Length > 0 ? " " : "")}{rest}`");
            }
        }

        return null;
    }

    /// <summary>A key further in than the one above it, which has its value already.</summary>
    public static Diagnostic? TooFarIn(SourceText source, SourceSpan fault)
    {
        var text = source.Line(fault.Line);
        var word = FlockKeys.WordOf(text.TrimStart(' '));
        var indent = text.Length - text.TrimStart(' ').Length;
        if (fault.Line == 1 || word.Length == 0 || !text.AsSpan(indent + word.Length).StartsWith(":") || fault.Column > indent + word.Length + 1)
        {
            return null;
        }

        var above = source.Line(fault.Line - 1).TrimEnd(' ');
        var key = above.Length - above.TrimStart(' ', '-').Length;
        return key < indent && above.IndexOf(": ", StringComparison.Ordinal) > 0
            ? FlockMessages.Syntax(
                new SourceSpan(fault.Line, indent + 1, word.Length),
                "this line is indented further than the one above, which has its value already",
                $"begin `{word}` straight below the first letter of the line above")
            : null;
    }

    /// <summary><c>'the lamb's mother'</c> ends after its second word.</summary>
    public static Diagnostic? Apostrophe(SourceText source, SourceSpan fault)
    {
        var text = source.Line(fault.Line);
        var at = Math.Min(fault.Column - 1, text.Length);
        var quote = at < 1 ? -1 : text.LastIndexOf('\'', at - 1);
        return quote > 0 && at - quote <= 1 && char.IsLetter(text[quote - 1]) && text.IndexOf('\'', StringComparison.Ordinal) < quote
            ? FlockMessages.Syntax(new SourceSpan(fault.Line, quote + 1, 1), "this apostrophe ends the quoted text", "put double quotes round text that holds an apostrophe")
            : null;
    }
}
