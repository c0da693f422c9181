namespace PaperFlock.Layout;

/// <summary>Four widths in points: margins or padding.</summary>
public readonly record struct Edges(double Left, double Top, double Right, double Bottom)
{
    public static Edges None => default;

    public double Horizontal => Left + Right;

    public double Vertical => Top + Bottom;

    public static Edges All(double width) => new(width, width, width, width);

    public static Edges Of(double horizontal, double vertical) => new(horizontal, vertical, horizontal, vertical);
}
