namespace PaperFlock.Layout.Breaking;

/// <summary>
/// Finds where lines may break: after spaces and thin spaces; after a hyphen or slash, unless a digit follows or the hyphen begins the word; at line feeds.
/// Nowhere inside a <see cref="Run.Whole"/> run. The digit rule keeps 1/2, 2-3 and 2026-09-30 whole, as rule LB25 of Unicode Standard Annex 14 does for numbers.
/// </summary>
internal sealed class WordSplitter(ImmutableArray<Run> runs, ITextMeasurer measurer)
{
    private const char ThinSpace = '\u2009';
    private const char Hyphen = '\u2010';

    /// <summary>The words of each run as they are set: tabs and, in whole runs, line feeds are spaces.</summary>
    public string[] Texts { get; } = [.. runs.Select(Plain)];

    /// <returns>All that is in the runs, in order. Letters that follow letters are one word with them, unless those break.</returns>
    public List<Fragment> Split()
    {
        // Most words have four letters or more and a space behind them, which is a fragment of its own.
        var fragments = new List<Fragment>((Texts.Sum(text => text.Length) / 2) + 1);
        for (var run = 0; run < runs.Length; run++)
        {
            var text = Texts[run];
            for (var at = 0; at < text.Length; at = fragments[^1].End)
            {
                fragments.Add(runs[run].Whole ? Letters(run, at, text.Length, breaks: false)
                    : text[at] == '\n' ? new Fragment(run, at, 1, 0, FragmentKind.LineFeed)
                    : IsSpace(text[at]) ? Spaces(run, at)
                    : Letters(run, at, isFirst: fragments.FindLast(f => f.Kind != FragmentKind.Spaces) is { Length: 0 } or { Kind: FragmentKind.LineFeed } or { BreaksAfter: true }));
            }
        }

        return fragments;
    }

    private Fragment Spaces(int run, int start)
    {
        var end = start + 1;
        while (end < Texts[run].Length && IsSpace(Texts[run][end]))
        {
            end++;
        }

        return new Fragment(run, start, end - start, WidthOf(run, start, end), FragmentKind.Spaces);
    }

    /// <param name="isFirst">No letters are before them but such as break.</param>
    private Fragment Letters(int run, int start, bool isFirst)
    {
        var (text, end, breaks) = (Texts[run], start, false);
        while (end < text.Length && !breaks && text[end] != '\n' && !IsSpace(text[end]))
        {
            breaks = BreaksAfter(run, end, atWordStart: isFirst && end == start);
            end++;
        }

        return Letters(run, start, end, breaks);
    }

    private Fragment Letters(int run, int start, int end, bool breaks) => new(run, start, end - start, WidthOf(run, start, end), FragmentKind.Letters, breaks);

    private double WidthOf(int run, int start, int end) => measurer.WidthOf(Texts[run].AsSpan(start, end - start), runs[run].Style);

    private bool BreaksAfter(int run, int index, bool atWordStart) => Texts[run][index] switch
    {
        '-' or Hyphen => !atWordStart && !char.IsAsciiDigit(Next(run, index)),
        '/' => !char.IsAsciiDigit(Next(run, index)),
        _ => false,
    };

    private char Next(int run, int index) =>
        index + 1 < Texts[run].Length ? Texts[run][index + 1] : Texts.Skip(run + 1).FirstOrDefault(text => text.Length > 0, "\0")[0];

    public static bool IsSpace(char letter) => letter is ' ' or ThinSpace;

    private static string Plain(Run run)
    {
        var text = run.Words.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Replace('\t', ' ');
        return run.Whole ? text.Replace('\n', ' ') : text;
    }
}
