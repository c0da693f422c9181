namespace PaperFlock.Layout.Breaking;

/// <summary>A stretch of one run, all of one kind.</summary>
/// <param name="Run">Index of the run.</param>
/// <param name="Start">Index of its first character.</param>
/// <param name="BreaksAfter">Of letters: a line may break behind them, whatever follows.</param>
internal readonly record struct Fragment(int Run, int Start, int Length, double Width, FragmentKind Kind = FragmentKind.Letters, bool BreaksAfter = false)
{
    public int End => Start + Length;
}

internal enum FragmentKind
{
    Letters,

    /// <summary>Lines may break after them, and they take no room at the end of one.</summary>
    Spaces,
    LineFeed,
}
