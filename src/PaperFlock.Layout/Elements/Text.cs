using System.Collections.Immutable;

namespace PaperFlock.Layout.Elements;

/// <summary>A paragraph of one or more runs. Splits between lines, leaving and carrying at least two.</summary>
/// <param name="Leading">Baseline to baseline as a multiple of the largest em size on the line.</param>
public sealed record Text(ImmutableArray<Run> Runs, TextAlign Align = TextAlign.Left, double Leading = 1.25) : Element
{
    public Text(string words, TextStyle style, TextAlign align = TextAlign.Left, double leading = 1.25)
        : this([new Run(words, style)], align, leading)
    {
    }

    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}

/// <summary>Words in one style. A line feed starts a new line; a no-break space never breaks.</summary>
/// <param name="Whole">Never broken inside: a tag, a date, a number with its unit.</param>
public readonly record struct Run(string Words, TextStyle Style, bool Whole = false);
