namespace PaperFlock.Planning.Tests.Feeding;

internal static class Figures
{
    /// <summary>To three significant figures, for numbers from 10 to 99.</summary>
    public static string Three(double number) => number.ToString("0.0", CultureInfo.InvariantCulture);
}
