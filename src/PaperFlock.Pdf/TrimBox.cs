namespace PaperFlock.Pdf;

/// <summary>In points from the top left corner of the paper.</summary>
public readonly record struct TrimBox(double X, double Y, double Width, double Height);
