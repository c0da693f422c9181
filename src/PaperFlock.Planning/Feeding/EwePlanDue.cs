namespace PaperFlock.Planning.Feeding;

internal static class EwePlanDue
{
    /// <summary>When a ewe still to lamb is due.</summary>
    /// <exception cref="ArgumentException">She has no due window, though she is to lamb.</exception>
    public static DueWindow DueOrThrow(this EwePlan ewe) =>
        ewe.Due ?? throw new ArgumentException($"ewe {ewe.Ewe.Tag} is to lamb but has no due window", nameof(ewe));
}
