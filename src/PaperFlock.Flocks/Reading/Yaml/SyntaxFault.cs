namespace PaperFlock.Flocks.Reading.Yaml;

/// <summary>
/// Says what is wrong with a text that is not YAML. A parser stops where the text ceases to make sense, which may be far
/// below the slip: an open quote swallows lines until the next quote. So the usual slips are looked for first (<see cref="SyntaxSlips"/>).
/// </summary>
internal static class SyntaxFault
{
    /// <param name="start">Where the parser says the trouble begins, 0-based.</param>
    /// <param name="end">Where it gave up.</param>
    /// <param name="reason">In the parser's words.</param>
    public static Diagnostic Explain(SourceText source, int start, int end, string reason)
    {
        start = Math.Clamp(start, 0, source.Text.Length);
        end = Math.Clamp(end, start, source.Text.Length);
        var first = source.SpanAt(start, end - start);
        var lastLine = source.SpanAt(end, 0).Line;
        return SyntaxSlips.Tab(source, first.Line, lastLine, reason.Contains("tab", StringComparison.Ordinal))
            ?? SyntaxSlips.Unclosed(source, lastLine)
            ?? SyntaxSlips.Glued(source, first.Line)
            ?? SyntaxSlips.OddMark(source, first)
            ?? SyntaxSlips.NoColon(source, first)
            ?? SyntaxSlips.TooFarIn(source, first)
            ?? SyntaxSlips.Apostrophe(source, first)
            ?? Other(source, first, reason);
    }

    /// <summary>A place between words says little: take in the word that follows.</summary>
    private static SourceSpan AtWord(SourceText source, SourceSpan span)
    {
        var rest = source.Line(span.Line)[Math.Min(span.Column - 1, source.Line(span.Line).Length)..];
        var word = rest.TakeWhile(c => c is not (' ' or '\t' or ',' or ']' or '}')).Count();
        return span with { Length = Math.Max(1, Math.Max(span.Length, word)) };
    }

    /// <summary>The parser's commonest complaints in plainer words; the rest in its own.</summary>
    private static Diagnostic Other(SourceText source, SourceSpan span, string reason)
    {
        var word = AtWord(source, span);
        var (message, advice) = reason switch
        {
            _ when Says("cannot start any token") || Says("mapping keys are not allowed") => (
                "a value cannot begin with this mark",
                "put quotes round the whole value"),
            _ when Says("invalid mapping") || Says("mapping values") => (
                "a second key begins inside a value",
                "put quotes round text that holds a colon and a space, or give the second key a line of its own"),
            _ when Says("escape character") || Says("escape code") => (
                "a backslash in double quotes stands before a letter it has no meaning for",
                "use single quotes round text that holds a backslash"),
            _ when Says("expected ':'") => (
                "a key has no colon after it",
                "each line is `key: value`, with a colon and a space between them"),
            _ when Says("expected key") || Says("'-' indicator") || Says("document end") || Says("Block sequence") => (
                "this does not belong where it stands",
                "check that the line is indented like its neighbours, and look above it for a slip"),
            _ when reason.Length == 0 => (
                "the file makes no sense from here on",
                "look here and above for a bracket or a quote too many or too few"),
            _ => (
                char.ToLowerInvariant(reason[0]) + reason[1..].TrimEnd('.'),
                "each line is `key: value`; look at this line and above it for a slip"),
        };
        return FlockMessages.Syntax(word, message, advice);

        bool Says(string part) => reason.Contains(part, StringComparison.OrdinalIgnoreCase);
    }
}
