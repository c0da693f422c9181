namespace PaperFlock.Planning.Rounds;

/// <summary>
/// When to walk the rounds of a day. The first is at first light, since crows and foxes find a ewe on her back then; the
/// last is late in the evening; midday and dusk lie between, or the rest are spread evenly (common practice, no source).
/// </summary>
internal sealed class RoundTimes(Practice practice)
{
    /// <summary>First round where no dawn ever comes to set it.</summary>
    private static readonly LocalTime PolarNightStart = new(8, 0);

    /// <summary>Rounds closer together than this would leave a longer gap elsewhere.</summary>
    private const int LeastMinutesApart = 90;

    /// <summary>A round is named to the nearest this many minutes: nobody walks it to the minute.</summary>
    private const int Step = 10;

    /// <param name="checks">Rounds wanted; fewer come back when the day between first light and the late round is too short for them.</param>
    public ImmutableArray<Round> For(LocalDate date, SunDay sun, int checks)
    {
        var first = First(date, sun);
        var last = Minutes(practice.LastRound);
        return checks <= 1 || last <= first
            ? [At(first, PartOfDay.FirstLight)]
            : [At(first, PartOfDay.FirstLight), .. Between(date, sun, first, last, checks - 2), At(last, PartOfDay.Late)];
    }

    private int First(LocalDate date, SunDay sun)
    {
        var notBefore = Minutes(practice.FirstRoundNotBefore);
        return sun.Dawn switch
        {
            { } dawn when dawn.Date == date => Math.Max(notBefore, Minutes(dawn.TimeOfDay) / Step * Step),
            null when sun.DarkAllDay => Minutes(PolarNightStart),
            _ => notBefore,
        };
    }

    private static IEnumerable<Round> Between(LocalDate date, SunDay sun, int first, int last, int number)
    {
        var midday = sun.Noon.Date == date ? Nearest(sun.Noon) : (int?)null;
        var dusk = sun.Sunset is { } sunset && sunset.Date == date ? Nearest(sunset) : (int?)null;
        return number switch
        {
            0 => [],
            1 when Apart(first, midday, last) => [At(midday!.Value, PartOfDay.Midday)],
            2 when Apart(first, midday, dusk, last) => [At(midday!.Value, PartOfDay.Midday), At(dusk!.Value, PartOfDay.Dusk)],
            _ => Spread(first, last, number),
        };
    }

    private static bool Apart(params ReadOnlySpan<int?> times)
    {
        for (var i = 1; i < times.Length; i++)
        {
            if (!(times[i] - times[i - 1] >= LeastMinutesApart))
            {
                return false;
            }
        }

        return true;
    }

    private static IEnumerable<Round> Spread(int first, int last, int number) => Enumerable.Range(1, number)
        .Select(i => ToStep(first + ((last - first) * i / (double)(number + 1))))
        .Where(t => first < t && t < last)
        .Distinct()
        .GroupBy(PartOf)
        .SelectMany(part => part.Select((time, i) => At(time, part.Key, i + 1)));

    private static PartOfDay PartOf(int minutes) => minutes switch
    {
        < 11 * 60 => PartOfDay.Morning,
        < 14 * 60 => PartOfDay.Midday,
        < 17 * 60 => PartOfDay.Afternoon,
        _ => PartOfDay.Evening,
    };

    private static Round At(int minutes, PartOfDay part, int number = 1) => new(LocalTime.Midnight.PlusMinutes(minutes), part, number);

    private static int Minutes(LocalTime time) => (time.Hour * 60) + time.Minute;

    private static int Nearest(LocalDateTime time) => ToStep(Minutes(time.TimeOfDay));

    private static int ToStep(double minutes) => (int)Math.Round(minutes / Step, MidpointRounding.AwayFromZero) * Step;
}
