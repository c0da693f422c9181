using System.Collections.Immutable;

namespace PaperFlock.Layout.Elements;

/// <summary>Rows under a head that is repeated on every page. A page holds whole rows: the head and one row at the least.</summary>
/// <param name="Grid">Thickness in points of the lines between rows and columns; 0 for none.</param>
/// <param name="Outer">Thickness of the outer frame; 0 for none.</param>
/// <param name="HeadRule">Thickness of the line under the head.</param>
public sealed record Table(
    ImmutableArray<Track> Columns,
    ImmutableArray<TableRow> Head,
    ImmutableArray<TableRow> Body,
    double Grid = 0.5,
    double Outer = 1,
    double HeadRule = 1) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}

/// <param name="MinHeight">Points.</param>
/// <param name="RuleAbove">Thickness of the line above the row where it differs from the grid.</param>
/// <param name="KeepWithNext">Never the last row on a page while another follows.</param>
public sealed record TableRow(ImmutableArray<TableCell> Cells, double MinHeight = 0, double? RuleAbove = null, bool KeepWithNext = false, string? Name = null);

/// <param name="Child">Null for a cell to write in.</param>
/// <param name="Span">Columns it covers.</param>
public sealed record TableCell(Element? Child, int Span = 1, VerticalAlign Align = VerticalAlign.Middle, Edges? Padding = null, bool RuleLeft = true);
