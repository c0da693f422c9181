using NodaTime;

namespace PaperFlock.Planning.Tests.Rounds;

/// <summary>
/// When in the day lambs are born. G. Alexander, D. Stevens, M. Baker and B. Bradley 1993, Australian Journal of Experimental Agriculture 33:557 (abstract):
/// of almost 1,900 births to grazing Merinos in five years 28 % fell in the busiest five hours, 09:00 to 14:00, and births went on all day and night.
/// </summary>
/// <remarks>The abstract has no more than those hours. That the rest is spread evenly over the other nineteen is this program's own assumption.</remarks>
internal static class BirthsByHour
{
    public const double InTheBusiestHours = 0.28;

    private const double Busiest = 5;

    private static readonly LocalTime From = new(9, 0);

    private static readonly LocalTime To = new(14, 0);

    /// <summary>Share of a day's births, 0 to 1, from one time to the next time it is <paramref name="to"/>, after midnight if need be.</summary>
    public static double Between(LocalTime from, LocalTime to) => from <= to ? Before(to) - Before(from) : 1 - Between(to, from);

    /// <summary>The largest share that falls between one round and the next, the night included.</summary>
    /// <param name="rounds">Of one day, in order; at least one. The same times are walked on the next day.</param>
    public static double MostUnseen(IReadOnlyList<LocalTime> rounds) => rounds.Count == 1
        ? 1
        : rounds.Zip(rounds.Skip(1).Append(rounds[0])).Max(pair => Between(pair.First, pair.Second));

    private static double Before(LocalTime time)
    {
        var busy = Math.Clamp(Hours(time) - Hours(From), 0, Hours(To) - Hours(From));
        return (InTheBusiestHours * busy / Busiest) + ((1 - InTheBusiestHours) * (Hours(time) - busy) / (24 - Busiest));
    }

    private static double Hours(LocalTime time) => time.TickOfDay / (double)NodaConstants.TicksPerHour;
}
