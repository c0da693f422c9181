using PaperFlock.Layout.Breaking;

namespace PaperFlock.Layout.Elements;

/// <summary>
/// A paragraph of one or more runs. Splits between lines, leaving and carrying at least two unless a fresh page is too low for that.
/// Set to the left it is as wide as its longest line, else as wide as the space. Only spaces, or no words at all, are nothing to show.
/// </summary>
/// <remarks>
/// Lines break after spaces, and after a hyphen or slash that no digit follows. A word wider than the whole line is broken between characters;
/// one that is <see cref="Run.Whole"/> wraps instead. Spaces where a line breaks take no room and are not printed.
/// </remarks>
/// <param name="Leading">Baseline to baseline as a multiple of the largest em size on the line.</param>
public sealed record Text(ImmutableArray<Run> Runs, TextAlign Align = TextAlign.Left, double Leading = Text.UsualLeading) : Element
{
    public const double UsualLeading = 1.25;

    /// <summary>Sheets try a paragraph before they place it, mostly at the same width. One that was made from this with something else about it is placed anew.</summary>
    private Placed _last = Placed.Nowhere;

    public Text(string words, TextStyle style, TextAlign align = TextAlign.Left, double leading = UsualLeading)
        : this([new Run(words, style)], align, leading)
    {
    }

    /// <summary>All of it, as it was given.</summary>
    public string Words => Runs.Length == 1 ? Runs[0].Words : string.Concat(Runs.Select(r => r.Words));

    protected internal override StructureTag? UsualTag => StructureTag.Paragraph;

    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        if (_last is { Fits: { } known } last && ReferenceEquals(last.By, this) && ReferenceEquals(last.Measurer, measurer) && last.Width == space.Width && known.Piece.Size.Height <= space.Height)
        {
            return known;
        }

        var placement = PlaceAnew(space, measurer);
        _last = placement is Placement.Fits fits ? new Placed(this, measurer, space.Width, fits) : Placed.Nowhere;
        return placement;
    }

    private Placement PlaceAnew(Space space, ITextMeasurer measurer)
    {
        var broken = LineBreaker.Break(Runs, space.Width, measurer);
        if (broken.TooWide is { } word)
        {
            return Wrap($"word “{word}” {Points.Needs(broken.Needed, space.Width)}");
        }

        return broken.Lines.IsEmpty ? Placement.Nothing.Instance : PlaceLines(broken.Lines, 0, space);
    }

    /// <summary>The same lines, even where the next page offers another width.</summary>
    private Placement PlaceRest(ImmutableArray<TextLine> lines, int first, double width, Space space) =>
        width > space.Width + Space.Epsilon ? Wrap(Points.NeedsWidth(width, space.Width)) : PlaceLines(lines, first, space);

    /// <param name="first">Index of the first line still to be placed.</param>
    private Placement PlaceLines(ImmutableArray<TextLine> lines, int first, Space space)
    {
        double height = 0;
        var next = first;
        while (next < lines.Length && height + lines[next].Height(Leading) <= space.Height + Space.Epsilon)
        {
            height += lines[next].Height(Leading);
            next++;
        }

        var end = EndOfPart(first, next, lines.Length, space.IsFresh);
        if (end == first)
        {
            var least = Math.Min(lines.Length, first + (space.IsFresh ? 1 : lines.Length - first < 4 ? lines.Length - first : 2));
            return Wrap(Points.Needs(lines[first..least].Sum(line => line.Height(Leading)), space.Height));
        }

        var width = 0.0;
        for (var i = first; i < lines.Length; i++)
        {
            width = Math.Max(width, lines[i].Width);
        }

        var piece = Set(lines, first, end, Align == TextAlign.Left ? width : space.Width);
        return end == lines.Length ? new Placement.Fits(piece) : new Placement.Splits(piece, Left((next, _) => PlaceRest(lines, end, width, next)));
    }

    /// <summary>Two lines at the least on either side of a split, so that no line stands alone at the foot or head of a page.</summary>
    private static int EndOfPart(int first, int fitting, int end, bool fresh)
    {
        if (fitting == end)
        {
            return end;
        }

        var part = Math.Min(fitting, end - 2);
        if (part - first >= 2)
        {
            return part;
        }

        // On a fresh page there is nowhere better to go.
        return fresh ? fitting : first;
    }

    private Piece Set(ImmutableArray<TextLine> lines, int first, int end, double width)
    {
        var items = ImmutableArray.CreateBuilder<Item>(end - first);
        double y = 0;
        for (var i = first; i < end; i++)
        {
            var line = lines[i];
            var x = Align.Offset(line.Width, width);
            foreach (var part in line.Parts)
            {
                var spaceFollows = line.SpaceFollows && i + 1 < lines.Length && part == line.Parts[^1];
                items.Add(new TextItem(x + part.X, y + line.Baseline(Leading), part.Text, part.Style, part.Width) { SpaceFollows = spaceFollows });
            }

            y += line.Height(Leading);
        }

        return new Piece(new Size(width, y), items.DrainToImmutable(), Name) { Words = first == 0 && end == lines.Length ? Words : PartOf(lines, first, end) };
    }

    private static string PartOf(ImmutableArray<TextLine> lines, int first, int end) =>
        string.Concat(lines[first..end].Select(line => string.Concat(line.Parts.Select(part => part.Text)) + (line.SpaceFollows ? " " : "")));

    /// <summary>No part of what a paragraph is: any two are equal.</summary>
    private sealed record Placed(Text? By, ITextMeasurer? Measurer, double Width, Placement.Fits? Fits)
    {
        public static readonly Placed Nowhere = new(null, null, 0, null);

        public bool Equals(Placed? other) => other is not null;

        public override int GetHashCode() => 0;
    }
}

/// <summary>Words in one style. A line feed starts a new line; a no-break space never breaks.</summary>
/// <param name="Whole">Never broken inside: a tag, a date, a number with its unit.</param>
public readonly record struct Run(string Words, TextStyle Style, bool Whole = false);
