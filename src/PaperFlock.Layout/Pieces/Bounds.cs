namespace PaperFlock.Layout.Pieces;

/// <summary>A rectangle with its sides along the axes, in points, y downwards.</summary>
public readonly record struct Bounds(double X, double Y, double Width, double Height)
{
    public double Right => X + Width;

    public double Bottom => Y + Height;
}
