namespace PaperFlock.Sheets.Theme;

/// <summary>How high an element is at a width, for sheets that share out the height of a page.</summary>
internal static class Heights
{
    private const double Plenty = 100_000;

    /// <returns>Points; 0 for an element that shows nothing.</returns>
    public static double Of(Element element, double width, SheetContext context) =>
        element.Place(new Space(width, Plenty, Plenty), context.Measurer) switch
        {
            Placement.Fits fits => fits.Piece.Size.Height,
            Placement.Splits splits => splits.Piece.Size.Height,
            _ => 0,
        };
}
