using System.Text;

namespace PaperFlock.Diagnostics;

/// <summary>A line of source, cut to a window if long, and the carets that stand under one word of it.</summary>
internal static class CaretLine
{
    /// <summary>Longer lines wrap on a terminal, and a caret under a wrapped line points at nothing.</summary>
    private const int LongestLine = 120;

    private const string Cut = "…";

    /// <param name="start">0-based, in UTF-16 code units; past the end of the line is allowed.</param>
    /// <param name="length">Cut at the end of the line; never fewer than one caret is drawn.</param>
    public static (string Line, string Carets) Draw(ReadOnlySpan<char> line, int start, int length)
    {
        start = Math.Clamp(start, 0, line.Length);
        var end = start + Math.Clamp(length, 0, line.Length - start);
        var (from, to) = Window(line, start, end);
        var before = string.Concat(from > 0 ? Cut : "", line[from..start]);
        var word = line[start..Math.Min(end, to)].ToString();
        var after = string.Concat(line[Math.Min(end, to)..to], to < line.Length ? Cut : "");

        var carets = new StringBuilder();
        foreach (var rune in before.EnumerateRunes())
        {
            // A tab is copied through, so that it reaches the same stop in both lines whatever the terminal's stops are.
            carets.Append(rune.Value == '\t' ? "\t" : new string(' ', DisplayWidth.Of(rune)));
        }

        var wordWidth = word.EnumerateRunes().Sum(r => r.Value == '\t' ? 1 : DisplayWidth.Of(r));
        carets.Append('^', Math.Max(1, wordWidth));
        return (Printable(before + word + after), carets.ToString());
    }

    private static (int From, int To) Window(ReadOnlySpan<char> line, int start, int end)
    {
        if (line.Length <= LongestLine)
        {
            return (0, line.Length);
        }

        var shown = Math.Min(end - start, LongestLine);
        var from = Math.Max(0, start - ((LongestLine - shown) / 2));
        var to = Math.Min(line.Length, from + LongestLine);
        from = Math.Max(0, to - LongestLine);
        return (AwayFromPair(line, from), AwayFromPair(line, to));
    }

    /// <summary>Half of a surrogate pair is no character: step back to before the pair.</summary>
    private static int AwayFromPair(ReadOnlySpan<char> line, int at) =>
        at > 0 && at < line.Length && char.IsLowSurrogate(line[at]) && char.IsHighSurrogate(line[at - 1]) ? at - 1 : at;

    /// <summary>A control character would move the cursor, or worse: show a mark in its place.</summary>
    private static string Printable(string line) => string.Concat(line.Select(c => c != '\t' && DisplayWidth.IsUnprintable(c) ? '\uFFFD' : c));
}
