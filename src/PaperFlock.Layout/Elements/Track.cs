namespace PaperFlock.Layout.Elements;

/// <summary>The width of a column: so many points, or a share of what the fixed ones leave.</summary>
public readonly record struct Track(double Points, double Shares)
{
    public static Track Fixed(double points) => new(points, 0);

    public static Track Share(double shares = 1) => new(0, shares);
}
