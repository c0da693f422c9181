namespace PaperFlock.Layout;

/// <summary>The room an element is offered, in points.</summary>
/// <param name="Height">What is left on this page.</param>
/// <param name="FullHeight">What the same slot has on a fresh page; never less than <paramref name="Height"/>.</param>
public readonly record struct Space(double Width, double Height, double FullHeight)
{
    /// <summary>Differences up to this many points are rounding, not layout.</summary>
    public const double Epsilon = 0.01;

    public bool IsFresh => Height >= FullHeight - Epsilon;

    public bool Holds(Size size) => size.Width <= Width + Epsilon && size.Height <= Height + Epsilon;
}
