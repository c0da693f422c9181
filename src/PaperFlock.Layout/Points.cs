namespace PaperFlock.Layout;

/// <summary>The wording of sizes in messages.</summary>
internal static class Points
{
    public static string Of(double points) => string.Create(CultureInfo.InvariantCulture, $"{points:0.0} pt");

    public static string Needs(double needed, double had) => Compare(needed, had, "");

    public static string NeedsWidth(double needed, double had) => Compare(needed, had, " of width");

    // "needs 95.0 pt, has 95.0 pt" helps nobody: show the decimals in which the two differ.
    private static string Compare(double needed, double had, string of)
    {
        var format = Math.Abs(needed - had) < 0.1 ? "0.000" : "0.0";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"needs {needed.ToString(format, CultureInfo.InvariantCulture)} pt{of}, has {had.ToString(format, CultureInfo.InvariantCulture)} pt");
    }
}
