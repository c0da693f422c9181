using CsCheck;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;
using PaperFlock.Planning.Rounds;

namespace PaperFlock.Planning.Tests.Rounds;

public class RoundTimesTests
{
    private static readonly LocalDate Date = new(2026, 12, 27);

    [Theory]
    // A short day: first light down to ten minutes, noon and sunset to the nearest, the late one as set.
    [InlineData(1, "07:53", "15:52", "07:50 FirstLight")]
    [InlineData(2, "07:53", "15:52", "07:50 FirstLight, 21:30 Late")]
    [InlineData(3, "07:53", "15:52", "07:50 FirstLight, 12:10 Midday, 21:30 Late")]
    [InlineData(4, "07:53", "15:52", "07:50 FirstLight, 12:10 Midday, 15:50 Dusk, 21:30 Late")]
    // More: half way through the longest time that nobody looks.
    [InlineData(5, "07:53", "15:52", "07:50 FirstLight, 12:10 Midday, 15:50 Dusk, 18:40 Evening, 21:30 Late")]
    [InlineData(6, "07:53", "15:52", "07:50 FirstLight, 10:00 Morning, 12:10 Midday, 15:50 Dusk, 18:40 Evening, 21:30 Late")]
    // Dusk keeps an hour and a half from the late round, three hours from midday, and midday as long from first light.
    [InlineData(4, "05:40", "20:06", "05:40 FirstLight, 12:10 Midday, 20:00 Dusk, 21:30 Late")]
    [InlineData(4, "05:40", "20:00", "05:40 FirstLight, 12:10 Midday, 20:00 Dusk, 21:30 Late")]
    [InlineData(4, "08:40", "13:34", "08:40 FirstLight, 12:10 Midday, 15:10 Dusk, 21:30 Late")]
    [InlineData(4, "11:00", "13:40", "11:00 FirstLight, 14:00 Midday, 17:00 Dusk, 21:30 Late")]
    // Dawn before anybody need be up.
    [InlineData(2, "03:20", "21:00", "05:30 FirstLight, 21:30 Late")]
    // No sunset at all.
    [InlineData(4, "05:40", "", "05:40 FirstLight, 12:10 Midday, 16:50 Dusk, 21:30 Late")]
    // More rounds than parts of a day still have names of their own.
    [InlineData(8, "07:50", "15:52", "07:50 FirstLight, 10:00 Morning, 12:10 Midday, 14:00 Afternoon, 15:50 Dusk, 17:20 Evening, 18:40 Evening 2, 21:30 Late")]
    public void Rounds_follow_the_sun(int checks, string dawn, string sunset, string rounds)
    {
        var sun = new SunDay(At(dawn), At(dawn), At("12:11")!.Value, At(sunset), At(sunset), DarkAllDay: false);

        Assert.Equal(rounds, Words(new RoundTimes(Sample.Practice()).For(Date, sun, checks, [], 0)));
    }

    /// <summary>Nobody knows when it gets light there, so no round may say that it is at first light.</summary>
    [Theory]
    [InlineData(1, "07:00 Morning")]
    [InlineData(4, "07:00 Morning, 12:00 Midday, 17:00 Dusk, 22:00 Late")]
    [InlineData(6, "07:00 Morning, 09:30 Morning 2, 12:00 Midday, 14:30 Afternoon, 17:00 Dusk, 22:00 Late")]
    public void Without_a_place_the_first_round_is_one_of_the_morning(int checks, string rounds)
    {
        var times = new RoundTimes(Sample.Practice()).For(Date, null, checks, [FeedTime.FirstLight], 0);

        Assert.Equal(rounds, Words(times));
        Assert.Equal(times[0], (new RoundDay(Date, null, null, null, null, times) { IsByClock = true }).At(FeedTime.FirstLight));
    }

    [Theory]
    [InlineData(5, "07:00", "21:00", "07:00 FirstLight, 09:40 Morning, 12:10 Midday, 16:40 Dusk, 21:00 Late")]
    [InlineData(4, "09:00", "21:00", "09:00 FirstLight, 12:10 Midday, 16:40 Dusk, 21:00 Late")]
    // Three hours are shared out evenly.
    [InlineData(4, "07:53", "10:50", "07:50 FirstLight, 08:50 Midday, 09:50 Dusk, 10:50 Late")]
    // A last round before first light is none.
    [InlineData(2, "07:53", "07:00", "07:50 FirstLight")]
    // Ten minutes hold no round between, and none is walked twice.
    [InlineData(5, "07:53", "08:00", "07:50 FirstLight, 08:00 Late")]
    [InlineData(5, "07:53", "07:50", "07:50 FirstLight")]
    public void Rounds_that_are_spread_lie_between_the_first_and_the_last(int checks, string dawn, string last, string rounds)
    {
        var sun = new SunDay(At(dawn), At(dawn), At("12:11")!.Value, null, null, DarkAllDay: false);
        var practice = Sample.Practice() with { LastRound = At(last)!.Value.TimeOfDay };

        Assert.Equal(rounds, Words(new RoundTimes(practice).For(Date, sun, checks, [], 0)));
    }

    [Theory]
    [InlineData("2026-12-21", "08:00 FirstLight, 21:30 Late")]
    [InlineData("2026-06-21", "05:30 FirstLight, 21:30 Late")]
    public void Where_no_dawn_comes_the_first_round_has_an_hour_of_its_own(string date, string rounds)
    {
        // Longyearbyen: no civil twilight in December, no night in June.
        var day = Sample.Day(date);
        var sun = SunDay.At(Sample.Holding(78.22m, 15.65m, "Arctic/Longyearbyen"), day);

        Assert.Null(sun.Dawn);
        Assert.Equal(rounds, Words(new RoundTimes(Sample.Practice()).For(day, sun, 2, [], 0)));
    }

    [Fact]
    public void A_dawn_before_midnight_is_no_later_than_the_first_hour_allowed()
    {
        var sun = new SunDay(Date.PlusDays(-1).At(new LocalTime(23, 50)), null, At("13:00")!.Value, null, null, DarkAllDay: false);

        Assert.Equal("05:30 FirstLight, 21:30 Late", Words(new RoundTimes(Sample.Practice()).For(Date, sun, 2, [], 0)));
    }

    [Fact]
    public void Rounds_ascend_with_names_of_their_own_on_any_day_anywhere() =>
        Gen.Select(Gen.Int[-90, 90], Gen.Int[0, 730], Gen.Int[1, 12], Gen.Int[10 * 60, 1439]).Sample((latitude, day, checks, last) =>
        {
            var date = new LocalDate(2027, 1, 1).PlusDays(day);
            var practice = Sample.Practice() with { LastRound = LocalTime.Midnight.PlusMinutes(last) };
            var sun = SunDay.At(Sample.Holding(latitude, 0, "UTC"), date);

            var rounds = new RoundTimes(practice).For(date, sun, checks, [], 0);

            Assert.InRange(rounds.Length, 1, checks);
            Assert.True(rounds.Zip(rounds.Skip(1)).All(p => p.First.At < p.Second.At), Words(rounds));
            Assert.Distinct(rounds.Select(r => (r.Part, r.Number)));
        });

    [Fact]
    public void Feeds_have_rounds_of_their_own_however_few_are_wanted() =>
        Gen.Select(Gen.Int[-90, 90], Gen.Int[0, 730], Gen.Int[1, 12], Gen.Int[12 * 60, 1439], Gen.Int[1, 4]).Sample((latitude, day, checks, last, number) =>
        {
            var date = new LocalDate(2027, 1, 1).PlusDays(day);
            var practice = Sample.Practice() with { LastRound = LocalTime.Midnight.PlusMinutes(last) };
            ImmutableArray<FeedTime> feeds = FeedTimes.For(number * 0.5m, 0.5m, number);

            var rounds = new RoundTimes(practice).For(date, SunDay.At(Sample.Holding(latitude, 0, "UTC"), date), checks, feeds, 0);

            var walked = new RoundDay(date, null, null, null, null, rounds);
            Assert.All(feeds, feed => Assert.NotNull(walked.At(feed)));
            Assert.Equal(feeds.Length, feeds.Select(feed => walked.At(feed)!.Value.At).Distinct().Count());
        });

    /// <summary>Fed once, the late round may be as early as the keeper likes; fed twice, it is four and a half hours after the first.</summary>
    [Theory]
    [InlineData(2, new[] { FeedTime.FirstLight }, "07:50 FirstLight, 08:00 Late")]
    [InlineData(1, new[] { FeedTime.FirstLight, FeedTime.Late }, "07:50 FirstLight, 15:20 Late")]
    public void Two_feeds_make_room_between_them(int checks, FeedTime[] feeds, string rounds)
    {
        var sun = new SunDay(At("07:53"), At("08:30"), At("12:11")!.Value, At("15:52"), At("16:30"), DarkAllDay: false);
        var practice = Sample.Practice() with { LastRound = new LocalTime(8, 0) };
        Assert.Equal(rounds, Words(new RoundTimes(practice).For(Date, sun, checks, [.. feeds], 0)));
    }

    /// <summary>A time zone that does not belong to the place may put noon on the day before.</summary>
    [Fact]
    public void Where_noon_falls_on_another_day_midday_lies_half_way()
    {
        var sun = new SunDay(At("07:00"), At("07:00"), Date.PlusDays(-1).At(new LocalTime(23, 50)), null, null, DarkAllDay: false);
        Assert.Equal("07:00 FirstLight, 14:20 Midday, 21:30 Late", Words(new RoundTimes(Sample.Practice()).For(Date, sun, 3, [], 0)));
    }

    /// <summary>Two by day come first; of what is left two are walked by night at most.</summary>
    [Theory]
    [InlineData(2, 0)]
    [InlineData(3, 1)]
    [InlineData(5, 2)]
    public void Few_rounds_at_lambing_are_walked_by_day(int wanted, int byNight)
    {
        var flock = Sample.Flock(Sample.Ewe());
        flock = flock with { Practice = flock.Practice with { ChecksPerDay = new(1, 1, 6) { Lambing = wanted } } };
        var day = RoundPlanner.Plan(flock, new SeasonDates(Sample.TupIn, Sample.TupOut, Date, Date), Date, Date, new DateInterval(Date, Date), _ => [])[0];
        Assert.Equal((wanted, byNight), (day.Times.Length, day.Times.Count(t => t.Part == PartOfDay.Night)));
    }

    [Fact]
    public void The_sun_is_asked_where_the_place_is_known()
    {
        var flock = Sample.Flock(Sample.Ewe());
        var none = new SeasonDates(Sample.TupIn, Sample.TupOut, null, null);
        RoundDay On(Holding holding) => RoundPlanner.Plan(flock with { Holding = holding }, none, Date, Date, null, _ => [])[0];

        Assert.False(On(flock.Holding).IsByClock);
        Assert.NotNull(On(flock.Holding).Sunrise);
        Assert.True(On(flock.Holding with { Location = null }).IsByClock);
        Assert.Null(On(flock.Holding with { Location = null }).Sunrise);
    }

    [Fact]
    public void Two_rounds_by_night_share_the_time_between_late_and_first_light()
    {
        var sun = new SunDay(At("07:53"), At("08:30"), At("12:11")!.Value, At("15:52"), At("16:30"), DarkAllDay: false);

        // From 21:30 to 07:50 are 10 h 20 min, a third of which is 3 h 27 min.
        Assert.Equal(
            "01:00 Night, 04:20 Night 2, 07:50 FirstLight, 12:10 Midday, 15:50 Dusk, 21:30 Late",
            Words(new RoundTimes(Sample.Practice()).For(Date, sun, 4, [], 2)));
    }

    /// <summary>Heavy from six weeks before the first is due; by night too from the first day a ewe may lamb to the last, which may be before the last is due.</summary>
    [Theory]
    [InlineData("2027-02-20", "2027-02-20")]
    [InlineData("2027-02-10", "2027-02-15")]
    public void Rounds_are_heavy_to_the_last_due_day_and_by_night_while_they_lamb(string lastLambing, string heavyUntil)
    {
        var flock = Sample.Flock(Sample.Ewe());
        var due = new SeasonDates(Sample.TupIn, Sample.TupOut, Sample.Day("2027-01-04"), Sample.Day("2027-02-15"));
        var lambing = new DateInterval(Sample.Day("2026-12-30"), Sample.Day(lastLambing));

        var days = RoundPlanner.Plan(flock, due, Sample.Day("2026-11-01"), Sample.Day("2027-03-17"), lambing, _ => []);

        Assert.Equal(137, days.Length);
        Assert.All(days, d => Assert.Equal(lambing.Contains(d.Date) ? 6 : d.Date >= Sample.Day("2026-11-23") && d.Date <= Sample.Day(heavyUntil) ? 4 : 2, d.Times.Length));
        Assert.All(days, d => Assert.Equal(lambing.Contains(d.Date) ? 2 : 0, d.Times.Count(t => t.Part == PartOfDay.Night)));
    }

    [Fact]
    public void The_longest_time_that_nobody_looks_may_lie_across_midnight()
    {
        var day = RoundPlanner.Plan(Sample.Flock(Sample.Ewe()), new SeasonDates(Sample.TupIn, Sample.TupOut, null, null), Date, Date, null, _ => [])[0];
        Assert.Equal((day.Times[0].At, day.Times[1].At), (day.LongestGap.From, day.LongestGap.To));
        Assert.Equal((new LocalTime(21, 30), new LocalTime(7, 40), 610), (day with { Times = [new(new(7, 40), PartOfDay.FirstLight), new(new(15, 0), PartOfDay.Dusk), new(new(21, 30), PartOfDay.Late)] }).LongestGap);
        Assert.Equal(24 * 60, (day with { Times = [new(new(7, 40), PartOfDay.FirstLight)] }).LongestGap.Minutes);
    }

    [Fact]
    public void Without_a_ewe_in_lamb_a_round_says_so()
    {
        var none = new SeasonDates(Sample.TupIn, Sample.TupOut, null, null);

        Assert.Equal(RoundReason.NoneInLamb, Assert.Single(RoundPlanner.Plan(Sample.Flock(Sample.Ewe(scan: 0)), none, Date, Date, null, _ => [])).Why);
    }

    private static LocalDateTime? At(string time) =>
        time.Length == 0 ? null : Date.At(NodaTime.Text.LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(time).Value);

    private static string Words(IEnumerable<Round> rounds) =>
        string.Join(", ", rounds.Select(r => $"{r.At:HH':'mm} {r.Part}{(r.Number == 1 ? "" : $" {r.Number}")}"));
}
