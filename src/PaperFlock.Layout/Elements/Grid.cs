using System.Collections.Immutable;

namespace PaperFlock.Layout.Elements;

/// <summary>Equal cells in rows, filled row by row. All of it or none.</summary>
/// <param name="CellHeight">Points; null divides the height offered.</param>
/// <param name="Line">Thickness of the lines between cells; 0 for none.</param>
public sealed record Grid(int Columns, ImmutableArray<Element?> Cells, double? CellHeight = null, double Line = 0.5) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}
