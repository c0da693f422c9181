namespace PaperFlock.Diagnostics;

/// <summary>
/// A text as its author sees it in an editor: lines end at CR LF, LF or a lone CR, and at nothing else. The other
/// breaks Unicode names are not counted, because editors do not count them and the line number must match.
/// </summary>
public sealed class SourceText
{
    private readonly ImmutableArray<int> _lineStarts;

    /// <param name="path">As it is to be shown to the user; never opened.</param>
    public SourceText(string path, string text)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        Path = path;
        Text = text;
        _lineStarts = FindLineStarts(text);
    }

    public string Path { get; }

    public string Text { get; }

    /// <summary>At least 1: an empty text has one empty line.</summary>
    public int LineCount => _lineStarts.Length;

    /// <param name="line">1-based.</param>
    /// <returns>The line without its line break.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such line.</exception>
    public string Line(int line) => LineSpan(line).ToString();

    /// <summary>As <see cref="Line"/>, without a copy: a line may be as long as the file.</summary>
    /// <param name="line">1-based.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such line.</exception>
    public ReadOnlySpan<char> LineSpan(int line)
    {
        var start = OffsetOf(line);
        return Text.AsSpan(start..EndOfLine(line));
    }

    /// <param name="line">1-based.</param>
    /// <returns>Where the line begins: 0-based, in UTF-16 code units.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such line.</exception>
    public int OffsetOf(int line)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(line, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(line, LineCount);
        return _lineStarts[line - 1];
    }

    /// <summary>The span of a stretch of the text, cut at the end of its first line and never shorter than 1.</summary>
    /// <param name="offset">0-based, in UTF-16 code units; the end of the text is allowed.</param>
    /// <param name="length">Zero gives the one place just after what was read.</param>
    /// <exception cref="ArgumentOutOfRangeException">The stretch does not begin in the text.</exception>
    public SourceSpan SpanAt(int offset, int length)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(offset);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(offset, Text.Length);
        ArgumentOutOfRangeException.ThrowIfNegative(length);
        var line = LineOf(offset);
        var end = Math.Min(EndOfLine(line), offset + Math.Min(length, Text.Length - offset));
        return new SourceSpan(line, offset - _lineStarts[line - 1] + 1, Math.Max(1, end - offset));
    }

    /// <summary>The characters a span covers; fewer than its length where the line ends first.</summary>
    public string TextOf(SourceSpan span)
    {
        if (span.IsWholeFile)
        {
            return Text;
        }

        var line = LineSpan(span.Line);
        var from = Math.Clamp(span.Column - 1, 0, line.Length);
        return line.Slice(from, Math.Clamp(span.Length, 0, line.Length - from)).ToString();
    }

    private int LineOf(int offset)
    {
        var found = _lineStarts.BinarySearch(offset);
        return found >= 0 ? found + 1 : ~found;
    }

    /// <summary>Without its line break: no other place of a line has a character of one.</summary>
    private int EndOfLine(int line)
    {
        var start = _lineStarts[line - 1];
        var next = line < LineCount ? _lineStarts[line] : Text.Length;
        return start + Text.AsSpan(start..next).TrimEnd("\r\n").Length;
    }

    private static ImmutableArray<int> FindLineStarts(string text)
    {
        var starts = ImmutableArray.CreateBuilder<int>();
        starts.Add(0);
        for (var i = 0; i < text.Length; i++)
        {
            var isCrLf = text[i] == '\r' && i + 1 < text.Length && text[i + 1] == '\n';
            if (text[i] is '\r' or '\n' && !isCrLf)
            {
                starts.Add(i + 1);
            }
        }

        return starts.ToImmutable();
    }
}
