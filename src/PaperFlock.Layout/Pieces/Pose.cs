namespace PaperFlock.Layout.Pieces;

/// <summary>Where a nested piece lands: turned by whole quarters clockwise about its top left corner, then moved.</summary>
internal readonly record struct Pose(double X, double Y, int Turns)
{
    public (double X, double Y) Apply(double x, double y) => Turns switch
    {
        0 => (X + x, Y + y),
        1 => (X - y, Y + x),
        2 => (X - x, Y - y),
        _ => (X + y, Y - x),
    };

    public Extent Apply(Extent box)
    {
        var a = Apply(box.X, box.Y);
        var b = Apply(box.Right, box.Bottom);
        return new Extent(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y));
    }

    /// <summary>The pose of a piece inside one that has this pose.</summary>
    public Pose Of(PieceItem item)
    {
        // A quarter turn clockwise swings the piece out to the left of its corner: it is moved back by its height, and so on round.
        var size = item.Piece.Size;
        var (dx, dy) = (item.QuarterTurns & 3) switch
        {
            0 => (0, 0),
            1 => (size.Height, 0),
            2 => (size.Width, size.Height),
            _ => (0.0, size.Width),
        };
        var corner = Apply(item.X + dx, item.Y + dy);
        return new Pose(corner.X, corner.Y, (Turns + item.QuarterTurns) & 3);
    }
}
