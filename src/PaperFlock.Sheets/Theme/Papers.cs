namespace PaperFlock.Sheets.Theme;

/// <summary>
/// Paper sizes in whole points, portrait. ISO 216 for the A series; Letter and Tabloid by ANSI/ASME Y14.1.
/// Whole points, because the PDF writer rounds page sizes to them.
/// </summary>
internal static class Papers
{
    public static readonly Size A4 = new(595, 842);
    public static readonly Size A3 = new(842, 1191);
    public static readonly Size A2 = new(1191, 1684);
    public static readonly Size Letter = new(612, 792);
    public static readonly Size Tabloid = new(792, 1224);

    public static Size Of(Paper paper) => paper == Paper.A4 ? A4 : Letter;

    public static Size Of(PlannerPaper paper) => paper switch
    {
        PlannerPaper.A4 => A4,
        PlannerPaper.A3 => A3,
        PlannerPaper.A2 => A2,
        PlannerPaper.Letter => Letter,
        _ => Tabloid,
    };

    public static Size Landscape(Size portrait) => new(portrait.Height, portrait.Width);
}
