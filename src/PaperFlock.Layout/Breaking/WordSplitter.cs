using System.Buffers;

namespace PaperFlock.Layout.Breaking;

/// <summary>
/// Finds where lines may break: after spaces and thin spaces; after a hyphen or slash, unless a digit follows or the hyphen begins the word; at line feeds.
/// Nowhere inside a <see cref="Run.Whole"/> run. The digit rule keeps 1/2, 2-3 and 2026-09-30 whole, as rule LB25 of Unicode Standard Annex 14 does for numbers.
/// </summary>
internal sealed class WordSplitter
{
    private const char ThinSpace = '\u2009';
    private const char Hyphen = '\u2010';

    /// <summary>A run with none of these is one word.</summary>
    public static readonly SearchValues<char> MayBreak = SearchValues.Create([' ', ThinSpace, '-', Hyphen, '/', '\t', '\r', '\n']);

    private readonly ImmutableArray<Run> _runs;
    private readonly string[] _words;
    private readonly LayoutContext _context;

    private readonly List<Fragment> _fragments;
    private readonly List<Word> _found;
    private int _first;
    private int _letters;
    private double _width;

    public WordSplitter(ImmutableArray<Run> runs, LayoutContext context)
    {
        (_runs, _context) = (runs, context);
        _words = new string[runs.Length];
        var letters = 0;
        for (var i = 0; i < runs.Length; i++)
        {
            _words[i] = Plain(runs[i]);
            letters += _words[i].Length;
        }

        // Most words have four letters or more and a space behind them, which is a fragment of its own.
        (_fragments, _found) = (new List<Fragment>((letters / 2) + 1), new List<Word>((letters / 4) + 1));
    }

    /// <summary>The words of each run as they are set: tabs and, in whole runs, line feeds are spaces.</summary>
    public string[] Texts => _words;

    public List<Fragment> Fragments => _fragments;

    public List<Word> Split()
    {
        for (var run = 0; run < _runs.Length; run++)
        {
            if (_runs[run].Whole)
            {
                AddLetters(run, 0, _words[run].Length);
            }
            else
            {
                SplitRun(run, _words[run]);
            }
        }

        EndWord(endsLine: false);
        return _found;
    }

    private void SplitRun(int run, string text)
    {
        var i = 0;
        while (i < text.Length)
        {
            var start = i;
            if (text[i] == '\n')
            {
                EndWord(endsLine: true);
                i++;
            }
            else if (IsSpace(text[i]))
            {
                while (i < text.Length && IsSpace(text[i]))
                {
                    i++;
                }

                Add(run, start, i - start);
            }
            else
            {
                var breaks = false;
                while (i < text.Length && !breaks && text[i] != '\n' && !IsSpace(text[i]))
                {
                    breaks = BreaksAfter(run, i, atWordStart: i == start && _letters == 0);
                    i++;
                }

                AddLetters(run, start, i - start);
                if (breaks)
                {
                    EndWord(endsLine: false);
                }
            }
        }
    }

    private void AddLetters(int run, int start, int length)
    {
        if (length == 0)
        {
            return;
        }

        // Letters after spaces begin the next word.
        if (_fragments.Count > _first + _letters)
        {
            EndWord(endsLine: false);
        }

        Add(run, start, length);
        _letters++;
        _width += _fragments[^1].Width;
    }

    private void Add(int run, int start, int length) =>
        _fragments.Add(new Fragment(run, start, length, _context.Measurer.WidthOf(_words[run].AsSpan(start, length), _runs[run].Style)));

    private void EndWord(bool endsLine)
    {
        var spaces = _fragments.Count - _first - _letters;
        if (_letters > 0 || spaces > 0 || endsLine)
        {
            _found.Add(new Word(_first, _letters, spaces, _width, endsLine));
        }

        (_first, _letters, _width) = (_fragments.Count, 0, 0);
    }

    private bool BreaksAfter(int run, int index, bool atWordStart) => _words[run][index] switch
    {
        '-' or Hyphen => !atWordStart && !char.IsAsciiDigit(Next(run, index)),
        '/' => !char.IsAsciiDigit(Next(run, index)),
        _ => false,
    };

    private char Next(int run, int index)
    {
        if (index + 1 < _words[run].Length)
        {
            return _words[run][index + 1];
        }

        while (++run < _words.Length)
        {
            if (_words[run].Length > 0)
            {
                return _words[run][0];
            }
        }

        return '\0';
    }

    /// <summary>Lines may break after it, and it takes no room at the end of one.</summary>
    private static bool IsSpace(char letter) => letter is ' ' or ThinSpace;

    private static string Plain(Run run)
    {
        var text = run.Words.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Replace('\t', ' ');
        return run.Whole ? text.Replace('\n', ' ') : text;
    }
}
