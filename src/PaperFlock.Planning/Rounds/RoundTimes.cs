namespace PaperFlock.Planning.Rounds;

/// <summary>
/// When to walk the rounds of a day. The first is at first light, since crows and foxes find a ewe on her back then; the
/// last is late in the evening; midday and dusk lie between, and more where nobody has looked the longest (common practice, no source).
/// </summary>
internal sealed class RoundTimes(Practice practice)
{
    /// <summary>First round where no dawn ever comes to set it.</summary>
    private static readonly LocalTime PolarNightStart = new(8, 0);

    // Where the place is not known: the first, midday, dusk, and the late round where the file has no time of its own for it.
    private static readonly LocalTime FixedFirst = new(7, 0);
    private static readonly LocalTime FixedMidday = new(12, 0);
    private static readonly LocalTime FixedDusk = new(17, 0);
    private static readonly LocalTime FixedLate = new(22, 0);

    /// <summary>First light, midday and dusk keep so far apart, however short the light: feeds closer together are as good as one (common practice, no source).</summary>
    private const int LeastBetweenFeeds = 180;

    /// <summary>From dusk to the late round, at which most flocks are only looked at.</summary>
    private const int LeastToLate = 90;

    private const int LeastDay = (2 * LeastBetweenFeeds) + LeastToLate;

    /// <summary>A round is named to the nearest this many minutes: nobody walks it to the minute.</summary>
    private const int Step = 10;

    /// <param name="sun">Null where the place is not known.</param>
    /// <param name="checks">Rounds wanted by day; fewer come back when the day between first light and the late round is too short for them.</param>
    /// <param name="feeds">Each has a round of its own, whatever number is wanted.</param>
    /// <param name="nights">Rounds between the last of the day and first light.</param>
    public ImmutableArray<Round> For(LocalDate date, SunDay? sun, int checks, ImmutableArray<FeedTime> feeds, int nights)
    {
        var slots = Slots(date, sun, feeds.Length > 1);
        var wanted = feeds.Select(RoundDay.PartOf).ToHashSet();
        foreach (var slot in slots.OrderBy(s => s.Part is PartOfDay.FirstLight ? 0 : s.Part is PartOfDay.Late ? 1 : 2))
        {
            if (wanted.Count < checks || slot.Part == PartOfDay.FirstLight)
            {
                wanted.Add(slot.Part);
            }
        }

        List<(int At, PartOfDay Part)> rounds = [.. slots.Where(s => wanted.Contains(s.Part))];
        while (rounds.Count > 1 && rounds.Count < checks && Between(rounds, slots) is { } more)
        {
            rounds.Insert(more.Index, more.Round);
        }

        var (first, last) = (rounds[0].At, rounds[^1].At);
        var night = NodaConstants.MinutesPerDay - last + first;
        var byNight = Enumerable.Range(1, nights).Select(i => (At: ToStep(last + (night * i / (nights + 1.0))) % NodaConstants.MinutesPerDay, Part: PartOfDay.Night));
        return
        [
            .. rounds.Concat(byNight).DistinctBy(r => r.At).GroupBy(r => sun is null && r.Part == PartOfDay.FirstLight ? PartOfDay.Morning : r.Part)
                .SelectMany(part => part.OrderBy(r => r.At).Select((r, i) => new Round(LocalTime.Midnight.PlusMinutes(r.At), part.Key, i + 1)))
                .OrderBy(r => r.At),
        ];
    }

    /// <summary>The parts of the day that have a time by the sun or the clock, in order.</summary>
    /// <param name="makeRoom">There must be all of them.</param>
    private List<(int At, PartOfDay Part)> Slots(LocalDate date, SunDay? sun, bool makeRoom)
    {
        var first = First(date, sun);
        var last = Math.Max(Minutes(sun is null && practice.LastRound == Practice.UsualLastRound ? FixedLate : practice.LastRound), makeRoom ? first + LeastDay : 0);
        if (last <= first)
        {
            return [(first, PartOfDay.FirstLight)];
        }

        var roomy = last - first >= LeastDay;
        var noon = sun is null ? Minutes(FixedMidday) : sun.Noon.Date == date ? Minutes(sun.Noon.TimeOfDay) : (first + last) / 2;
        var midday = roomy ? Math.Clamp(ToStep(noon), first + LeastBetweenFeeds, last - LeastBetweenFeeds - LeastToLate) : ToStep(first + ((last - first) / 3.0));
        var sunset = sun is null ? Minutes(FixedDusk) : sun.Sunset is { } set && set.Date == date ? Minutes(set.TimeOfDay) : (midday + last) / 2;
        var dusk = roomy ? Math.Clamp(ToStep(sunset), midday + LeastBetweenFeeds, last - LeastToLate) : ToStep(first + ((last - first) * 2 / 3.0));
        List<(int At, PartOfDay Part)> slots = [(first, PartOfDay.FirstLight), (midday, PartOfDay.Midday), (dusk, PartOfDay.Dusk), (last, PartOfDay.Late)];
        return [.. slots.Where((s, i) => i is 0 or 3 || (slots[i - 1].At < s.At && s.At < last))];
    }

    private int First(LocalDate date, SunDay? sun)
    {
        var notBefore = Minutes(practice.FirstRoundNotBefore);
        return sun switch
        {
            null => Math.Max(notBefore, Minutes(FixedFirst)),
            { Dawn: { } dawn } when dawn.Date == date => Math.Max(notBefore, Minutes(dawn.TimeOfDay) / Step * Step),
            { Dawn: null, DarkAllDay: true } => Minutes(PolarNightStart),
            _ => notBefore,
        };
    }

    /// <summary>One more, half way through the longest time between two; null where none is long enough.</summary>
    private static (int Index, (int At, PartOfDay Part) Round)? Between(List<(int At, PartOfDay Part)> rounds, List<(int At, PartOfDay Part)> slots)
    {
        var longest = Enumerable.Range(1, rounds.Count - 1).Select(i => (Index: i, From: rounds[i - 1].At, To: rounds[i].At)).MaxBy(g => g.To - g.From);
        var at = ToStep((longest.From + longest.To) / 2.0);
        if (at <= longest.From || at >= longest.To)
        {
            return null;
        }

        var part = slots.Where(s => s.At < at).Select(s => s.Part).LastOrDefault();
        return (longest.Index, (at, part switch { PartOfDay.FirstLight => PartOfDay.Morning, PartOfDay.Midday => PartOfDay.Afternoon, _ => PartOfDay.Evening }));
    }

    private static int Minutes(LocalTime time) => (time.Hour * 60) + time.Minute;

    private static int ToStep(double minutes) => (int)Math.Round(minutes / Step, MidpointRounding.AwayFromZero) * Step;
}
