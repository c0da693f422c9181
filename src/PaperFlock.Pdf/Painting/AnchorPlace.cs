namespace PaperFlock.Pdf.Painting;

/// <param name="Page">0-based.</param>
/// <param name="X">In points from the left of the paper; <paramref name="Y"/> from its top.</param>
internal readonly record struct AnchorPlace(int Page, double X, double Y);
