namespace PaperFlock.Planning.Feeding;

internal static class FeedsADay
{
    // A gram over the largest feed is nothing to a rumen, and a pound is never a round number of grams.
    private const decimal Tolerance = 0.001m;

    /// <summary>The fewest feeds that keep each within the largest, and never under two inside the last weeks.</summary>
    /// <param name="kilograms">Concentrate a ewe a day.</param>
    /// <param name="largest">Most concentrate at one time, kg; above zero.</param>
    /// <param name="weeksBefore">Weeks to the first due date at the start of the week; 0 and less from then on.</param>
    /// <param name="twoFeedsWeeks">From so many weeks before lambing there are at least two.</param>
    public static int For(decimal kilograms, decimal largest, int weeksBefore, int twoFeedsWeeks)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(largest);
        var fewest = (int)Math.Ceiling((kilograms - Tolerance) / largest);
        return Math.Max(fewest, weeksBefore <= twoFeedsWeeks ? 2 : 1);
    }
}
