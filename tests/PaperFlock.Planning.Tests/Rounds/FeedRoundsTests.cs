using NodaTime;

namespace PaperFlock.Planning.Tests.Rounds;

public sealed class FeedRoundsTests
{
    /// <summary>Sunset at 15:50: the feed of dusk is given on the round nearest to it, and none twice on one round.</summary>
    [Theory]
    [InlineData("07:40 12:10 15:50 21:30", "07:40 15:50", FeedTime.FirstLight, FeedTime.Dusk)]
    [InlineData("07:40 12:10 15:50 21:30", "07:40 12:10 15:50", FeedTime.FirstLight, FeedTime.Midday, FeedTime.Dusk)]
    [InlineData("07:40 21:30", "07:40 21:30", FeedTime.FirstLight, FeedTime.Dusk)]
    [InlineData("07:40 10:30 13:20 16:10 19:00 21:30", "07:40 13:20 16:10", FeedTime.FirstLight, FeedTime.Midday, FeedTime.Dusk)]
    [InlineData("07:40 14:30 21:30", "07:40 14:30 21:30", FeedTime.FirstLight, FeedTime.Midday, FeedTime.Dusk)]
    [InlineData("07:40", "07:40", FeedTime.FirstLight, FeedTime.Dusk)]
    public void A_feed_is_given_on_a_round(string rounds, string fed, params FeedTime[] fedAt)
    {
        var day = new RoundDay(new(2026, 12, 27), null, null, new LocalTime(15, 50), null, [.. rounds.Split(' ').Select(at => new Round(Time(at), PartOfDay.Midday))]);
        Assert.Equal(fed.Split(' ').Select(Time), FeedRounds.On(day, [.. fedAt]).Select(r => r.At));
    }

    /// <summary>One look a day is asked for, and fed they are twice.</summary>
    [Fact]
    public void There_are_never_fewer_rounds_than_feeds()
    {
        var flock = Sample.Flock(Sample.Ewe(marks: "2026-08-14", scan: 2), Sample.Ewe("Tansy", marks: "2026-08-14", scan: 2));
        var plan = SeasonPlanner.Plan(flock with { Practice = flock.Practice with { ChecksPerDay = new(1, 1, 0) } }, new(2026, 12, 1));
        var fed = plan.Rounds.Where(r => plan.Feeding.Charts.Any(c => c.On(r.Date)?.FedAt.Length > 1)).ToList();
        Assert.NotEmpty(fed);
        Assert.All(fed, r => Assert.Equal(2, r.Times.Length));
    }

    private static LocalTime Time(string at) => new(int.Parse(at[..2], CultureInfo.InvariantCulture), int.Parse(at[3..], CultureInfo.InvariantCulture));
}
