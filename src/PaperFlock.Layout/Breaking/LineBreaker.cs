namespace PaperFlock.Layout.Breaking;

/// <summary>
/// Fills lines with words, as many to a line as it holds. A word wider than a whole line starts on a line of its own and is broken between characters,
/// so that a name of forty letters flows; only a <see cref="Run.Whole"/> run in it is never broken.
/// </summary>
internal sealed class LineBreaker
{
    private readonly ImmutableArray<Run> _runs;
    private readonly double _width;
    private readonly ITextMeasurer _measurer;
    private readonly string[] _texts;
    private readonly List<Fragment> _fragments;
    private readonly ImmutableArray<TextLine>.Builder _lines = ImmutableArray.CreateBuilder<TextLine>(1);

    // The line being filled, and the spaces after its last word, which count only if another word follows.
    private readonly List<Fragment> _line;
    private readonly List<Fragment> _spaces = new(1);
    private double _used;
    private double _spaceWidth;

    private LineBreaker(ImmutableArray<Run> runs, double width, ITextMeasurer measurer)
    {
        (_runs, _width, _measurer) = (runs, width, measurer);
        var splitter = new WordSplitter(runs, measurer);
        (_texts, _fragments) = (splitter.Texts, splitter.Split());
        _line = new List<Fragment>(runs.Length);
    }

    public static BrokenText Break(ImmutableArray<Run> runs, double width, ITextMeasurer measurer) =>
        runs.All(run => run.Words.AsSpan().TrimStart(" \t\r\n").IsEmpty) ? new BrokenText([]) : OneLine(runs, width, measurer) ?? new LineBreaker(runs, width, measurer).Break();

    /// <summary>Most paragraphs are one figure, word or short line: it stands as it is, where there is room for it.</summary>
    /// <returns>Null where there is more to do.</returns>
    private static BrokenText? OneLine(ImmutableArray<Run> runs, double width, ITextMeasurer measurer)
    {
        var (words, style, _) = runs[0];
        if (runs.Length > 1 || words.AsSpan().ContainsAny("\t\r\n") || WordSplitter.IsSpace(words[^1]))
        {
            return null;
        }

        var (taken, metrics) = (measurer.WidthOf(words, style), measurer.MetricsOf(style));
        return taken > width + Space.Epsilon ? null : new BrokenText([new TextLine([new LinePart(words, style, 0, taken)], taken, style.Size, metrics.Ascent, metrics.Descent)]);
    }

    private BrokenText Break()
    {
        for (var at = 0; at < _fragments.Count; at++)
        {
            switch (_fragments[at])
            {
                case { Kind: FragmentKind.LineFeed }:
                    EndLine(StyleOfEmpty(at), spaceFollows: true);
                    break;
                case { Kind: FragmentKind.Spaces } spaces:
                    _spaces.Add(spaces);
                    _spaceWidth += spaces.Width;
                    break;
                default:
                    var first = at;
                    at = LastOfWord(first);
                    if (AddWord(first, at) is { } tooWide)
                    {
                        return tooWide;
                    }

                    break;
            }
        }

        // Nothing follows a line feed at the very end, so it begins no line.
        if (_line.Count > 0)
        {
            EndLine(default, spaceFollows: false);
        }

        return new BrokenText(_lines.DrainToImmutable());
    }

    /// <summary>The last of the letters that follow one another without a place to break.</summary>
    private int LastOfWord(int first)
    {
        var last = first;
        while (!_fragments[last].BreaksAfter && last + 1 < _fragments.Count && _fragments[last + 1].Kind == FragmentKind.Letters)
        {
            last++;
        }

        return last;
    }

    private BrokenText? AddWord(int first, int last)
    {
        var width = 0.0;
        for (var i = first; i <= last; i++)
        {
            width += _fragments[i].Width;
        }

        if (_used + _spaceWidth + width > _width + Space.Epsilon)
        {
            StartLine();
        }

        if (width > _width + Space.Epsilon)
        {
            return BreakInside(first, last);
        }

        for (var i = first; i <= last; i++)
        {
            Add(_fragments[i]);
        }

        return null;
    }

    private BrokenText? BreakInside(int first, int last)
    {
        for (var i = first; i <= last; i++)
        {
            var fragment = _fragments[i];
            var run = _runs[fragment.Run];
            var text = _texts[fragment.Run];
            for (var at = fragment.Start; at < fragment.End;)
            {
                // A letter and its accents stay together: text elements, the grapheme clusters of Unicode Standard Annex 29.
                var length = run.Whole ? fragment.Length : StringInfo.GetNextTextElementLength(text.AsSpan(at, fragment.End - at));
                var letters = new Fragment(fragment.Run, at, length, _measurer.WidthOf(text.AsSpan(at, length), run.Style));
                if (_used + letters.Width > _width + Space.Epsilon)
                {
                    StartLine();
                }

                if (letters.Width > _width + Space.Epsilon)
                {
                    return new BrokenText([], text.Substring(at, length), letters.Width);
                }

                Add(letters);
                at += length;
            }
        }

        return null;
    }

    private void Add(Fragment fragment)
    {
        foreach (var space in _spaces)
        {
            Append(space);
        }

        _spaces.Clear();
        _spaceWidth = 0;
        Append(fragment);
    }

    private void Append(Fragment fragment)
    {
        _used += fragment.Width;
        if (_line.Count > 0 && _line[^1] is var last && last.Run == fragment.Run && last.End == fragment.Start)
        {
            _line[^1] = last with { Length = last.Length + fragment.Length, Width = last.Width + fragment.Width };
        }
        else
        {
            _line.Add(fragment);
        }
    }

    /// <summary>Ends the line unless it is still empty; spaces never begin a line that was not begun with them.</summary>
    private void StartLine()
    {
        if (_line.Count > 0)
        {
            EndLine(default, spaceFollows: _spaces.Count > 0);
        }

        _spaces.Clear();
        _spaceWidth = 0;
    }

    /// <param name="ofEmpty">The style that gives an empty line its height.</param>
    private void EndLine(TextStyle ofEmpty, bool spaceFollows)
    {
        double x = 0, em = 0, ascent = 0, descent = 0;
        var parts = ImmutableArray.CreateBuilder<LinePart>(_line.Count);
        foreach (var fragment in _line)
        {
            var style = _runs[fragment.Run].Style;
            parts.Add(new LinePart(_texts[fragment.Run].Substring(fragment.Start, fragment.Length), style, x, fragment.Width));
            x += fragment.Width;
            Reach(style);
        }

        if (_line.Count == 0)
        {
            Reach(ofEmpty);
        }

        _lines.Add(new TextLine(parts.MoveToImmutable(), _used, em, ascent, descent) { SpaceFollows = spaceFollows });
        _line.Clear();
        _spaces.Clear();
        (_used, _spaceWidth) = (0, 0);

        void Reach(TextStyle style)
        {
            var metrics = _measurer.MetricsOf(style);
            em = Math.Max(em, style.Size);
            ascent = Math.Max(ascent, metrics.Ascent);
            descent = Math.Max(descent, metrics.Descent);
        }
    }

    /// <summary>Of the spaces on the line, or what follows the line feed.</summary>
    private TextStyle StyleOfEmpty(int lineFeed) =>
        _runs[_spaces.Concat(_fragments.Skip(lineFeed)).Where(fragment => fragment.Kind != FragmentKind.LineFeed).Select(fragment => fragment.Run).FirstOrDefault(_runs.Length - 1)].Style;
}
