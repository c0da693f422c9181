namespace PaperFlock.Layout.Pieces;

/// <summary>Where a piece stands in another: turned by whole quarters clockwise about its top left corner, then moved. Points, y downwards.</summary>
/// <param name="QuarterTurns">0 to 3.</param>
/// <param name="X">How far to the right; <paramref name="Y"/> how far down.</param>
public readonly record struct Transform(int QuarterTurns, double X, double Y)
{
    public (double X, double Y) Apply(double x, double y) => QuarterTurns switch
    {
        0 => (X + x, Y + y),
        1 => (X - y, Y + x),
        2 => (X - x, Y - y),
        _ => (X + y, Y - x),
    };

    public Bounds Apply(Bounds box)
    {
        var a = Apply(box.X, box.Y);
        var b = Apply(box.Right, box.Bottom);
        return new Bounds(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y));
    }

    /// <summary>Where a piece stands that is nested in the one this transform places.</summary>
    public Transform Of(PieceItem item)
    {
        // A quarter turn clockwise swings the piece out to the left of its corner: it is moved back by its height, and so on round.
        var size = item.Piece.Size;
        var turns = item.QuarterTurns & 3;
        var (dx, dy) = turns switch
        {
            0 => (0, 0),
            1 => (size.Height, 0),
            2 => (size.Width, size.Height),
            _ => (0.0, size.Width),
        };
        var corner = Apply(item.X + dx, item.Y + dy);
        return new Transform((QuarterTurns + turns) & 3, corner.X, corner.Y);
    }
}
