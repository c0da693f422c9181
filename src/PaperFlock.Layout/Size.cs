namespace PaperFlock.Layout;

/// <summary>Width and height in points (1/72 inch). Never negative.</summary>
public readonly record struct Size(double Width, double Height);
