namespace PaperFlock.Layout.Breaking;

/// <summary>One line of a paragraph: a part for each run that has words on it.</summary>
/// <param name="Width">Points, without the spaces at the end.</param>
/// <param name="Em">The largest em size on the line.</param>
internal sealed record TextLine(ImmutableArray<LinePart> Parts, double Width, double Em, double Ascent, double Descent)
{
    /// <summary>Whether it was broken at a space or a line feed, and not within a word.</summary>
    public bool SpaceFollows { get; init; }

    public double Height(double leading) => leading * Em;

    public double Baseline(double leading) => BaselineIn(Height(leading), Ascent, Descent);

    /// <summary>
    /// From the top of a line to its baseline: what the line is higher than its letters is shared equally above and below, the half-leading of CSS 2.2 section 10.8.1.
    /// So lines stay evenly spaced whatever is stacked on them.
    /// </summary>
    public static double BaselineIn(double height, double ascent, double descent) => ((height - ascent - descent) / 2) + ascent;
}

/// <param name="X">From the left end of the line.</param>
internal readonly record struct LinePart(string Text, TextStyle Style, double X, double Width);

/// <summary>A paragraph broken for one width.</summary>
/// <param name="Lines">None for a paragraph with nothing to show, and none when a word is too wide.</param>
/// <param name="TooWide">The first word that cannot be broken and is wider than the line.</param>
/// <param name="Needed">Its width.</param>
internal sealed record BrokenText(ImmutableArray<TextLine> Lines, string? TooWide = null, double Needed = 0);
