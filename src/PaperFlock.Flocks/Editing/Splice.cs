namespace PaperFlock.Flocks.Editing;

/// <summary>One stretch of text to be replaced, and what the whole must then say.</summary>
/// <param name="Start">0-based, in UTF-16 code units.</param>
/// <param name="End">Excluded.</param>
/// <param name="Expected">The tree a reader should find in the changed text.</param>
internal sealed record Splice(int Start, int End, string Text, Node Expected);
