namespace PaperFlock.Sheets.Theme;

/// <summary>How high an element is at a width, for sheets that share out the height of a page.</summary>
internal static class Heights
{
    private const double Plenty = 100_000;

    /// <summary>What head and foot leave of a page's height for its body.</summary>
    /// <param name="width">Points that both have.</param>
    public static double OfBody(PageDesign design, double width, SheetContext context) =>
        design.Paper.Height - design.Front.Vertical - (2 * design.Gap) - Of(design.Head!, width, context) - Of(design.Foot!, width, context);

    /// <returns>Points; 0 for an element that shows nothing.</returns>
    public static double Of(Element element, double width, SheetContext context) =>
        element.Place(new Space(width, Plenty, Plenty), context.Measurer) switch
        {
            Placement.Fits fits => fits.Piece.Size.Height,
            Placement.Splits splits => splits.Piece.Size.Height,
            _ => 0,
        };
}
