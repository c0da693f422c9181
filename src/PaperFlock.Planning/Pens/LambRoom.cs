using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Pens;

/// <summary>Floor through the lambing, each ewe on her likely day: those still in lamb as they want it, those with lambs as <see cref="RoomNeeded.WithLambs"/> says until they are turned out.</summary>
internal sealed class LambRoom(Ground ground, ImmutableArray<(LocalDate Lambs, decimal Floor)> ewes, decimal floor)
{
    /// <summary>As long as the file may keep them in.</summary>
    private const int MostDays = 120;

    private const int Never = int.MaxValue;

    public static RoomWithLambs? Of(Ground ground, ImmutableArray<(FedEwe Ewe, decimal Floor)> housed, ImmutableArray<PenPlan> pens)
    {
        if (housed.IsEmpty)
        {
            return null;
        }

        var room = new LambRoom(ground, [.. housed.Select(h => (h.Ewe.Due.Likely, h.Floor))], pens.Sum(p => p.FloorThere));
        var fullOn = room.TooFullOn(Never);
        return new RoomWithLambs(housed.Length, Math.Min(housed.Length, pens.Sum(p => p.CapacityWithLambs)), fullOn, fullOn is null ? null : room.DaysThatFit());
    }

    /// <summary>The longer they stay, the more floor is wanted: halved down to the longest stay that fits.</summary>
    private int? DaysThatFit()
    {
        var (fits, tooLong) = (0, MostDays + 1);
        while (tooLong - fits > 1)
        {
            var days = (fits + tooLong) / 2;
            (fits, tooLong) = TooFullOn(days) is null ? (days, tooLong) : (fits, days);
        }

        return fits == 0 ? null : fits;
    }

    /// <summary>Floor is only ever shorter on a day on which one lambs.</summary>
    private LocalDate? TooFullOn(int turnedOutAfter) => ewes.Select(e => e.Lambs).Distinct().Order().Cast<LocalDate?>().FirstOrDefault(day => ewes.Sum(e =>
    {
        var days = Period.DaysBetween(e.Lambs, day!.Value);
        return days < 0 ? e.Floor : days < turnedOutAfter ? RoomNeeded.WithLambs(ground) : 0;
    }) > floor);
}
