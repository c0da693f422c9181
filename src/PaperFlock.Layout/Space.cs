namespace PaperFlock.Layout;

/// <summary>The room an element is offered, in points. An element never sees a negative size: <see cref="ChildPlacing"/> clamps at zero.</summary>
/// <param name="Height">What is left on this page.</param>
/// <param name="FullHeight">What the same slot has on a fresh page; never less than <paramref name="Height"/>.</param>
public readonly record struct Space(double Width, double Height, double FullHeight)
{
    /// <summary>Differences up to this many points are rounding, not layout.</summary>
    public const double Epsilon = 0.01;

    /// <summary>
    /// The least size a frame should take: a <see cref="Elements.Box"/> in a column is as wide as the column, on a <see cref="Elements.Board"/> as large as its place.
    /// Only boxes stretch to it; everything else keeps its natural size. Zero for what may hug its content.
    /// </summary>
    public Size Least { get; init; }

    public bool IsFresh => Height >= FullHeight - Epsilon;

    /// <summary>A slot of a stated size that is no larger on any other page.</summary>
    public static Space Exactly(double width, double height) => new(width, height, height) { Least = new Size(width, height) };
}
