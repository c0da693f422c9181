using System.Buffers;

namespace PaperFlock.Flocks.Reading.Yaml;

/// <summary>
/// Follows quotes and brackets down a text that YAML could not read, a line at a time, to find the one left open. It
/// knows enough of YAML to tell an apostrophe from a quote, and takes every quote to close on its own line, as in a flock file.
/// </summary>
internal sealed class OpenScan
{
    private static readonly SearchValues<char> NotInAKey = SearchValues.Create(" \"',[]{}#");

    private readonly Stack<(SourceSpan Span, int Indent)> _brackets = new();

    /// <summary>A quote the last line read left open.</summary>
    public SourceSpan? OpenQuote { get; private set; }

    /// <summary>A bracket still open at a line that belongs outside it: one indented no further that begins with a key or a dash.</summary>
    public SourceSpan? OutgrownBracket { get; private set; }

    public SourceSpan? OpenBracket => _brackets.TryPeek(out var top) ? top.Span : null;

    public void Read(string line, int number)
    {
        var indent = line.Length - line.TrimStart(' ').Length;
        if (_brackets.TryPeek(out var open) && indent <= open.Indent && BeginsOutside(line.AsSpan(indent)))
        {
            OutgrownBracket = open.Span;
            return;
        }

        var mayBegin = true;
        for (var i = indent; i < line.Length; i++)
        {
            var c = line[i];
            if (c == '#' && (i == 0 || char.IsWhiteSpace(line[i - 1])))
            {
                return;
            }

            if (mayBegin && c is ('"' or '\''))
            {
                var close = Closing(line, i);
                if (close < 0)
                {
                    OpenQuote = new SourceSpan(number, i + 1, 1);
                    return;
                }

                i = close;
                mayBegin = false;
            }
            else
            {
                mayBegin = After(c, line, i, number, indent, mayBegin);
            }
        }
    }

    /// <summary>Whether a new value may begin after this character.</summary>
    private bool After(char c, string line, int i, int number, int indent, bool mayBegin)
    {
        var endsWord = i + 1 == line.Length || line[i + 1] == ' ';
        switch (c)
        {
            case ' ':
                return mayBegin;
            case '{' or '[' when mayBegin:
                _brackets.Push((new SourceSpan(number, i + 1, 1), indent));
                return true;
            case '}' or ']' when _brackets.Count > 0:
                _brackets.Pop();
                return false;
            case ',' when _brackets.Count > 0:
            case ':' when endsWord:
            case '-' when endsWord && mayBegin:
                return true;
            default:
                return false;
        }
    }

    private static int Closing(string line, int open)
    {
        for (var i = open + 1; i < line.Length; i++)
        {
            if (line[i] == '\\' && line[open] == '"')
            {
                i++;
            }
            else if (line[i] == line[open])
            {
                var isDoubled = line[open] == '\'' && i + 1 < line.Length && line[i + 1] == '\'';
                if (!isDoubled)
                {
                    return i;
                }

                i++;
            }
        }

        return -1;
    }

    private static bool BeginsOutside(ReadOnlySpan<char> text) =>
        text.StartsWith("- ") || (text.IndexOf(':') is var colon && colon > 0 && !text[..colon].ContainsAny(NotInAKey));
}
