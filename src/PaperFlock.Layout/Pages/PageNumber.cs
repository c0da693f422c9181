namespace PaperFlock.Layout.Pages;

/// <param name="Number">1-based within its sheet.</param>
public readonly record struct PageNumber(int Number, int Of, PageSide Side);

/// <summary>The front of a leaf has its binding edge on the left, the back on the right.</summary>
public enum PageSide
{
    Front,
    Back,
}
