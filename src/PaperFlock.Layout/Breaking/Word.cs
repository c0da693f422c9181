namespace PaperFlock.Layout.Breaking;

/// <summary>A stretch of one run.</summary>
/// <param name="Run">Index of the run.</param>
/// <param name="Start">Index of its first character.</param>
internal readonly record struct Fragment(int Run, int Start, int Length, double Width)
{
    public int End => Start + Length;
}

/// <summary>What stands between two places where a line may break: letters, in one run or several, and the spaces after them.</summary>
/// <param name="First">Index of its first fragment; the fragments of its spaces follow those of its letters.</param>
/// <param name="Letters">Fragments of letters.</param>
/// <param name="Spaces">Fragments of spaces.</param>
/// <param name="Width">Of the letters.</param>
/// <param name="EndsLine">A line feed follows.</param>
internal readonly record struct Word(int First, int Letters, int Spaces, double Width, bool EndsLine);
