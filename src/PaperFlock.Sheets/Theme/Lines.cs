namespace PaperFlock.Sheets.Theme;

/// <summary>Line weights in points. Each is at least twice the one before, so that print shows the difference.</summary>
internal static class Lines
{
    public const double Crop = 0.35;
    public const double Grid = 0.5;
    public const double Box = 1;
    public const double Section = 2;
}
