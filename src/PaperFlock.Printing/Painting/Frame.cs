namespace PaperFlock.Printing.Painting;

/// <summary>Where a piece stands on the paper: turned by quarters clockwise, then moved. Coordinates in points, y downwards.</summary>
/// <param name="Quarters">0 to 3.</param>
internal readonly record struct Frame(int Quarters, double X, double Y)
{
    public (double X, double Y) Map(double x, double y) => Quarters switch
    {
        0 => (X + x, Y + y),
        1 => (X - y, Y + x),
        2 => (X - x, Y - y),
        _ => (X + y, Y - x),
    };

    public Box Map(double x, double y, double width, double height)
    {
        var (x1, y1) = Map(x, y);
        var (x2, y2) = Map(x + width, y + height);
        return new Box(Math.Min(x1, x2), Math.Min(y1, y2), Math.Abs(x2 - x1), Math.Abs(y2 - y1));
    }

    /// <summary>The frame of a piece of the given size within this one, whose top left corner after turning is at x, y.</summary>
    public Frame Within(double x, double y, int quarterTurns, Layout.Size size)
    {
        var quarters = ((quarterTurns % 4) + 4) % 4;
        // Turned about its own corner the piece lies left of it, above it or both: bring its new corner back.
        var (dx, dy) = quarters switch
        {
            0 => (0.0, 0.0),
            1 => (size.Height, 0.0),
            2 => (size.Width, size.Height),
            _ => (0.0, size.Width),
        };
        var (atX, atY) = Map(x + dx, y + dy);
        return new Frame((Quarters + quarters) % 4, atX, atY);
    }
}

/// <summary>Points from the top left corner of the paper.</summary>
internal readonly record struct Box(double X, double Y, double Width, double Height);
