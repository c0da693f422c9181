using PaperFlock.Layout.Tables;

namespace PaperFlock.Layout.Elements;

/// <summary>Rows under a head that is repeated on every page. A page holds whole rows: the head and one row at the least.</summary>
/// <remarks>
/// A cell reaches from boundary to boundary, and the tracks fill the width exactly. Rules are centred on the boundaries and the outer frame lies inside the edge,
/// so half of each rule and all of the frame are in the padding of the cells beside them.
/// Each page's part is closed with the outer frame.
/// </remarks>
/// <param name="HeadRule">Thickness of the line under the head; a first row whose own line above is thicker has that.</param>
/// <param name="LeastCarried">A part carried on to another page has so many rows or more, as far as the page it left can spare them and keep as many.</param>
public sealed record Table(
    ImmutableArray<Track> Columns,
    ImmutableArray<TableRow> Head,
    ImmutableArray<TableRow> Body,
    double HeadRule = 1,
    int LeastCarried = 1) : Element
{
    /// <summary>Whether the first cell of a body row is the header of those beside it: it says what the row is about.</summary>
    public bool RowHeaders { get; init; }

    /// <summary>Thickness of the lines between rows and columns, and of the outer frame.</summary>
    internal const double Grid = 0.5;
    internal const double Frame = 1;

    /// <summary>Of a cell that names none: points left and right, above and below.</summary>
    public static readonly Edges UsualPadding = Edges.Of(4, 2);

    protected internal override StructureTag? UsualTag => StructureTag.Table;

    public override Placement Place(Space space, ITextMeasurer measurer) => PlaceFrom(0, space, measurer);

    internal Rest From(int row) => Left((space, measurer) => PlaceFrom(row, space, measurer));

    /// <param name="first">Index of the first body row still to be placed.</param>
    private Placement PlaceFrom(int first, Space space, ITextMeasurer measurer)
    {
        var edges = Track.Edges(Columns.AsSpan(), space.Width);
        if (edges[^1] > space.Width + Space.Epsilon)
        {
            return Wrap(Points.NeedsWidth(edges[^1], space.Width));
        }

        var placement = new TablePart(this, edges, first, measurer).Place(space);
        return placement is Placement.Wraps wraps ? Wrap(wraps) : placement;
    }
}

/// <param name="MinHeight">Points.</param>
/// <param name="RuleAbove">Thickness of the line above the row where it differs from the grid.</param>
/// <param name="KeepWithNext">Never the last row on a page while another follows, unless a whole page is not enough for such rows.</param>
/// <param name="Name">What it is called in a message about it.</param>
public sealed record TableRow(
    ImmutableArray<TableCell> Cells, double MinHeight = 0, double? RuleAbove = null, bool KeepWithNext = false, string? Name = null, Subject? About = null);

/// <param name="Child">Null for a cell to write in.</param>
/// <param name="Span">Columns it covers; the spans of a row add up to the table's columns.</param>
public sealed record TableCell(Element? Child, int Span = 1, VerticalAlign Align = VerticalAlign.Middle, Edges? Padding = null)
{
    /// <summary>For a header cell in an unusual place; null where its place says it: the head, or the first column of a table with <see cref="Table.RowHeaders"/>.</summary>
    public HeaderScope? Scope { get; init; }
}
