namespace PaperFlock.Layout.Pieces;

/// <summary>One thing drawn, in points. Everything is black on paper, but for what hides what is behind it in a drawing.</summary>
public abstract record Item;

/// <summary>A run of text on one line.</summary>
/// <param name="X">Left end.</param>
/// <param name="Baseline">Height of the baseline.</param>
public sealed record TextItem(double X, double Baseline, string Text, TextStyle Style, double Width) : Item
{
    /// <summary>A space that is read out and takes no room: the one at which the line was broken.</summary>
    public bool SpaceFollows { get; init; }
}

/// <summary>Text known only when all pages are: <see cref="Pages.Paginator"/> turns it into a <see cref="TextItem"/>.</summary>
/// <param name="Width">Room kept for it.</param>
public sealed record PageTextItem(double X, double Baseline, double Width, TextStyle Style, Func<Pages.PageNumber, string> Words) : Item;

/// <summary>A straight line with butt ends.</summary>
public sealed record LineItem(double X1, double Y1, double X2, double Y2, double Thickness) : Item;

/// <summary>A rectangle: its outline, drawn on the centre of the edge, or filled black.</summary>
/// <param name="Thickness">Of the outline; 0 for a filled rectangle.</param>
public sealed record RectItem(double X, double Y, double Width, double Height, double Thickness) : Item
{
    public bool IsFilled => Thickness == 0;
}

/// <summary>A polygon or an open path of straight pieces.</summary>
/// <param name="Thickness">Of the stroke; 0 for filled black.</param>
public sealed record PathItem(ImmutableArray<(double X, double Y)> Points, bool Closed, double Thickness) : Item;

/// <summary>A circle.</summary>
/// <param name="Thickness">Of the outline; 0 for filled black.</param>
public sealed record CircleItem(double X, double Y, double Radius, double Thickness) : Item;

/// <summary>Straight pieces and curves, filled and then stroked with round ends and corners: a part of a line drawing.</summary>
/// <param name="Steps">As SVG has them: M begins anew at a point, L leads straight to one, C curves to the third of three, Z closes.</param>
/// <param name="Points">Those of all steps, one after another.</param>
/// <param name="Thickness">Of the stroke; 0 for none.</param>
public sealed record OutlineItem(string Steps, ImmutableArray<(double X, double Y)> Points, Fill Fill, double Thickness) : Item
{
    public static int PointsOf(char step) => step switch { 'Z' => 0, 'C' => 3, _ => 1 };
}

public enum Fill
{
    None,
    White,
    Black,
}

/// <summary>A piece inside a piece, turned by whole quarters clockwise about its own top left corner, then moved so that its new top left corner is at X, Y.</summary>
public sealed record PieceItem(double X, double Y, Piece Piece, int QuarterTurns = 0) : Item;

/// <summary>An area that leads to the anchor named <paramref name="Target"/>.</summary>
/// <param name="Says">Its words, for whoever does not see where they stand.</param>
public sealed record LinkItem(double X, double Y, double Width, double Height, string Target, string Says) : Item;

/// <summary>A place links can lead to.</summary>
public sealed record AnchorItem(double X, double Y, string Target) : Item;
