namespace PaperFlock.Planning.Dates;

/// <summary>
/// Raddle marks gathered into heats. A ewe stands for the tup for a day or so, three days at most (Raising Sheep: 30 hours,
/// range 3 to 73), so marks a few days apart are one heat; one about a cycle later says she did not hold to the first.
/// </summary>
internal static class Heats
{
    /// <summary>The day to count each heat from: its last mark. In date order.</summary>
    /// <param name="marks">In date order.</param>
    /// <param name="cycleDays">Marks at most half a cycle after the first of a heat belong to it.</param>
    public static ImmutableArray<LocalDate> Of(ImmutableArray<LocalDate> marks, int cycleDays)
    {
        var heats = ImmutableArray.CreateBuilder<LocalDate>();
        LocalDate? heatBegan = null;
        foreach (var mark in marks)
        {
            if (heatBegan is { } began && Period.DaysBetween(began, mark) * 2 <= cycleDays)
            {
                heats[^1] = mark;
            }
            else
            {
                heatBegan = mark;
                heats.Add(mark);
            }
        }

        return heats.ToImmutable();
    }
}
