namespace PaperFlock.Diagnostics;

/// <summary>A stretch of one line of a source text, in UTF-16 code units.</summary>
/// <param name="Line">1-based line number; 0 means the file as a whole.</param>
/// <param name="Column">1-based column of the first character.</param>
/// <param name="Length">Characters covered; at least 1. A longer value is cut at the end of its line when drawn.</param>
public readonly record struct SourceSpan(int Line, int Column, int Length)
{
    /// <summary>The file as a whole: drawn without a line or a caret.</summary>
    public static SourceSpan WholeFile => default;

    public bool IsWholeFile => Line == 0;
}
