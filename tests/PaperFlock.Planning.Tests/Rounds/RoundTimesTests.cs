using CsCheck;
using NodaTime;
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
    [InlineData(5, "07:53", "15:52", "07:50 FirstLight, 11:20 Midday, 14:40 Afternoon, 18:10 Evening, 21:30 Late")]
    [InlineData(6, "07:53", "15:52", "07:50 FirstLight, 10:30 Morning, 13:20 Midday, 16:00 Afternoon, 18:50 Evening, 21:30 Late")]
    // Dusk too near the late round, or too near midday: spread evenly instead.
    [InlineData(4, "05:40", "20:06", "05:40 FirstLight, 11:00 Midday, 16:10 Afternoon, 21:30 Late")]
    [InlineData(4, "05:40", "20:00", "05:40 FirstLight, 12:10 Midday, 20:00 Dusk, 21:30 Late")]
    [InlineData(4, "08:40", "13:34", "08:40 FirstLight, 13:00 Midday, 17:10 Evening, 21:30 Late")]
    [InlineData(4, "11:00", "13:40", "11:00 FirstLight, 14:30 Afternoon, 18:00 Evening, 21:30 Late")]
    // Dawn before anybody need be up.
    [InlineData(2, "03:20", "21:00", "05:30 FirstLight, 21:30 Late")]
    // No sunset at all.
    [InlineData(4, "05:40", "", "05:40 FirstLight, 11:00 Midday, 16:10 Afternoon, 21:30 Late")]
    // More rounds than parts of a day still have names of their own.
    [InlineData(8, "07:50", "15:52", "07:50 FirstLight, 09:50 Morning, 11:40 Midday, 13:40 Midday 2, 15:40 Afternoon, 17:40 Evening, 19:30 Evening 2, 21:30 Late")]
    public void Rounds_follow_the_sun(int checks, string dawn, string sunset, string rounds)
    {
        var sun = new SunDay(At(dawn), At(dawn), At("12:11")!.Value, At(sunset), At(sunset), DarkAllDay: false);

        Assert.Equal(rounds, Words(new RoundTimes(Sample.Practice()).For(Date, sun, checks)));
    }

    [Theory]
    // The hour at which a part of the day begins is already called by it.
    [InlineData(5, "07:00", "21:00", "07:00 FirstLight, 10:30 Morning, 14:00 Afternoon, 17:30 Evening, 21:00 Late")]
    [InlineData(4, "09:00", "21:00", "09:00 FirstLight, 13:00 Midday, 17:00 Evening, 21:00 Late")]
    // Ten minutes hold no round between, and none is walked twice.
    [InlineData(5, "07:53", "08:00", "07:50 FirstLight, 08:00 Late")]
    [InlineData(5, "07:53", "07:50", "07:50 FirstLight")]
    public void Rounds_that_are_spread_lie_between_the_first_and_the_last(int checks, string dawn, string last, string rounds)
    {
        var sun = new SunDay(At(dawn), At(dawn), At("12:11")!.Value, null, null, DarkAllDay: false);
        var practice = Sample.Practice() with { LastRound = At(last)!.Value.TimeOfDay };

        Assert.Equal(rounds, Words(new RoundTimes(practice).For(Date, sun, checks)));
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
        Assert.Equal(rounds, Words(new RoundTimes(Sample.Practice()).For(day, sun, 2)));
    }

    [Fact]
    public void A_dawn_before_midnight_is_no_later_than_the_first_hour_allowed()
    {
        var sun = new SunDay(Date.PlusDays(-1).At(new LocalTime(23, 50)), null, At("13:00")!.Value, null, null, DarkAllDay: false);

        Assert.Equal("05:30 FirstLight, 21:30 Late", Words(new RoundTimes(Sample.Practice()).For(Date, sun, 2)));
    }

    [Fact]
    public void Rounds_ascend_with_names_of_their_own_on_any_day_anywhere() =>
        Gen.Select(Gen.Int[-90, 90], Gen.Int[0, 730], Gen.Int[1, 12], Gen.Int[10 * 60, 1439]).Sample((latitude, day, checks, last) =>
        {
            var date = new LocalDate(2027, 1, 1).PlusDays(day);
            var practice = Sample.Practice() with { LastRound = LocalTime.Midnight.PlusMinutes(last) };
            var sun = SunDay.At(Sample.Holding(latitude, 0, "UTC"), date);

            var rounds = new RoundTimes(practice).For(date, sun, checks);

            Assert.InRange(rounds.Length, 1, checks);
            Assert.True(rounds.Zip(rounds.Skip(1)).All(p => p.First.At < p.Second.At), Words(rounds));
            Assert.Distinct(rounds.Select(r => (r.Part, r.Number)));
        });

    [Fact]
    public void Rounds_are_heavy_from_the_heavy_weeks_to_the_last_due_day()
    {
        var flock = Sample.Flock(Sample.Ewe());
        var due = new SeasonDates(Sample.TupIn, Sample.TupOut, Sample.Day("2027-01-04"), Sample.Day("2027-02-15"));

        var days = RoundPlanner.Plan(flock, due, Sample.Day("2026-11-01"), Sample.Day("2027-03-17"), null, []);

        Assert.Equal(137, days.Length);
        Assert.All(days, d => Assert.Equal(d.Date >= Sample.Day("2026-11-23") && d.Date <= Sample.Day("2027-02-15") ? 4 : 2, d.Times.Length));
        Assert.All(RoundPlanner.Plan(flock, due with { FirstDue = null, LastDue = null }, Date, Date, null, []), d => Assert.Equal(2, d.Times.Length));
    }

    [Theory]
    // The last may be late: rounds stay heavy until she has most likely lambed, and never end before the last is due.
    [InlineData("2027-02-20", "2027-02-20")]
    [InlineData("2027-02-10", "2027-02-15")]
    public void Rounds_stay_heavy_until_the_last_has_most_likely_lambed(string lastLambing, string heavyUntil)
    {
        var due = new SeasonDates(Sample.TupIn, Sample.TupOut, Sample.Day("2027-01-04"), Sample.Day("2027-02-15"));

        var days = RoundPlanner.Plan(Sample.Flock(Sample.Ewe()), due, Sample.Day("2027-02-01"), Sample.Day("2027-03-17"), Sample.Day(lastLambing), []);

        Assert.All(days, d => Assert.Equal(d.Date <= Sample.Day(heavyUntil) ? 4 : 2, d.Times.Length));
    }

    [Fact]
    public void Without_a_ewe_in_lamb_a_round_says_so()
    {
        var none = new SeasonDates(Sample.TupIn, Sample.TupOut, null, null);

        Assert.Equal(RoundReason.NoneInLamb, Assert.Single(RoundPlanner.Plan(Sample.Flock(Sample.Ewe(scan: 0)), none, Date, Date, null, [])).Why);
    }

    private static LocalDateTime? At(string time) =>
        time.Length == 0 ? null : Date.At(NodaTime.Text.LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(time).Value);

    private static string Words(IEnumerable<Round> rounds) =>
        string.Join(", ", rounds.Select(r => $"{r.At:HH':'mm} {r.Part}{(r.Number == 1 ? "" : $" {r.Number}")}"));
}
