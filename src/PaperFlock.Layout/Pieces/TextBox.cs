namespace PaperFlock.Layout.Pieces;

/// <summary>
/// The room text takes, without asking a font: from its left end over its width, and from 0.9 em above the baseline to 0.25 em below.
/// That holds every letter of ASCII and Latin-1 in the four faces: the outlines in their font files reach 0.88 em up (Û in bold) and 0.201 em down (g in bold).
/// </summary>
public static class TextBox
{
    public const double AscentOfEm = 0.9;
    public const double DescentOfEm = 0.25;

    internal static Bounds Of(TextItem item) => Of(item.X, item.Baseline, item.Width, item.Style.Size);

    internal static Bounds Of(PageTextItem item) => Of(item.X, item.Baseline, item.Width, item.Style.Size);

    private static Bounds Of(double x, double baseline, double width, double em) =>
        new(x, baseline - (AscentOfEm * em), width, (AscentOfEm + DescentOfEm) * em);
}
