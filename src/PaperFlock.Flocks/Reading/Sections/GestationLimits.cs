namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>Days from mating to lambing, all ends included.</summary>
internal static class GestationLimits
{
    /// <summary>The least and the most that a breed's gestation may be given as: what is further out comes of another mating.</summary>
    public const int Shortest = 130;

    public const int Longest = 165;

    /// <summary>Breeds average 144 to 151 days: Montana Farm Flock Sheep Production Handbook. Further from that than a few days, every due date would be out.</summary>
    public static int? Read(Field? field)
    {
        var days = field?.AsWhole();
        field?.Bag.Add(days is < 140 or > 155 ? FlockMessages.GestationUnlikely(field.Span, days.Value) : null);
        return days;
    }

    /// <summary>
    /// Single ewes lamb after 138 to 159 days where breeds average 144 to 151: Montana Farm Flock Sheep Production Handbook.
    /// A breed further out is given the same room round its own average as one of 147 days has.
    /// </summary>
    /// <param name="average">Of her breed, in days.</param>
    public static (int Least, int Most) Likely(int average) => (Math.Min(138, average - 9), Math.Max(159, average + 12));
}
