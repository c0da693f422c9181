namespace PaperFlock.Planning.Tests.Rounds;

public sealed class FeedRoundsTests
{
    /// <summary>One look a day is asked for, and fed they are twice.</summary>
    [Fact]
    public void Every_feed_of_a_day_falls_on_a_round_of_it()
    {
        var flock = Sample.Flock(Sample.Ewe(marks: "2026-08-14", scan: 2), Sample.Ewe("Tansy", marks: "2026-08-14", scan: 2));
        var plan = SeasonPlanner.Plan(flock with { Practice = flock.Practice with { ChecksPerDay = new(1, 1, 0) } }, new(2026, 12, 1));
        var fed = plan.Rounds.Select(r => (Round: r, FedAt: plan.Feeding.Charts.SelectMany(c => c.On(r.Date)?.FedAt ?? []).Distinct().ToArray())).Where(d => d.FedAt.Length > 1).ToList();
        Assert.NotEmpty(fed);
        Assert.All(fed, d => Assert.Equal(d.FedAt.Length, d.FedAt.Select(f => d.Round.At(f)!.Value.At).Distinct().Count()));
    }
}
