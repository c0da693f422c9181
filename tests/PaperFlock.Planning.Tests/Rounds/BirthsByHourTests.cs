using NodaTime;
using PaperFlock.Planning.Rounds;

namespace PaperFlock.Planning.Tests.Rounds;

/// <summary>What daylight and the planned rounds leave unseen; see <see cref="BirthsByHour"/>.</summary>
public sealed class BirthsByHourTests
{
    /// <summary>The abstract sets its 28 % against the 21 % that an even spread would have.</summary>
    [Fact]
    public void The_published_hours_are_read_back()
    {
        Assert.Equal(0.28, BirthsByHour.Between(new(9, 0), new(14, 0)), 1e-12);
        Assert.Equal(0.72, BirthsByHour.Between(new(14, 0), new(9, 0)), 1e-12);
        Assert.Equal(0.21, 5 / 24.0, 0.005);
        Assert.Equal(1, BirthsByHour.Between(LocalTime.Midnight, new(11, 30)) + BirthsByHour.Between(new(11, 30), LocalTime.Midnight), 1e-12);
    }

    /// <summary>"Watching by daylight alone cannot be effective": from sunset to sunrise at the demonstration's two places while they lamb, and later in spring. By hand
    /// from the length of the day, by the sunrise equation with Spencer's declination (7 h 27 min, 14 h 0 min, 11 h 2 min): what is dark, at 0.72 of births in 19
    /// hours. A minute of the day is 0.0006.</summary>
    [Theory]
    [InlineData(54.46, -2.74, "Europe/London", "2027-01-04", 0.627)]
    [InlineData(54.46, -2.74, "Europe/London", "2027-04-15", 0.379)]
    [InlineData(-43.86, 171.72, "Pacific/Auckland", "2026-09-01", 0.491)]
    public void Many_lambs_come_in_the_dark(double latitude, double longitude, string zone, string day, double share)
    {
        var sun = SunDay.At(Sample.Holding((decimal)latitude, (decimal)longitude, zone), Sample.Day(day));
        Assert.Equal(share, BirthsByHour.Between(sun.Sunset!.Value.TimeOfDay, sun.Sunrise!.Value.TimeOfDay), 0.003);
    }

    /// <summary>The rounds of every day on which a ewe may lamb: with two of six by night a quarter of all births, and no more, falls between one round and the next.</summary>
    [Fact]
    public void No_more_than_a_quarter_is_born_between_one_round_and_the_next()
    {
        var plan = SeasonPlanner.Plan(Sample.Flock(Sample.Ewe(marks: "2026-08-14", scan: 2)), Sample.Day("2026-11-01"));
        var due = plan.Ewes[0].Due!;
        var days = plan.Rounds.Where(d => due.Earliest <= d.Date && d.Date <= due.Latest).ToArray();
        Assert.NotEmpty(days);
        Assert.All(days, day => Assert.InRange(BirthsByHour.MostUnseen([.. day.Times.Select(r => r.At)]), 0, 0.25));
    }
}
