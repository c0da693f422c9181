using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>Rations with lambs: 0.6, 1.35 and 1.5 kg by default, up by a tenth of a kilogram a day from the third day on.</summary>
public sealed class LambedRationTests
{
    [Fact]
    public void The_ration_rises_from_what_she_had_to_what_she_should_have()
    {
        var rows = Rows(f => f, Group(FeedingSample.Ewes(3, 1), 0.2m), Group(FeedingSample.Ewes(3, 2, from: 4), 0.4m));
        Assert.Equal(["0-1 -", "2-2 0.3", "3-3 0.4", "4-4 0.5", "5- 0.6"], Words(rows, 1));

        // Turned out after ten days: the row of the tenth is the last there is.
        Assert.Equal(["0-1 -", "2-2 0.5", "3-3 0.6", "4-4 0.7", "5-5 0.8", "6-6 0.9", "7-7 1.0", "8-8 1.1", "9- 1.2"], Words(rows, 2));

        // Nobody is known to carry three: from the least that any of them had.
        Assert.Equal("2-2 0.3", Words(rows, 3)[1]);
    }

    [Fact]
    public void A_ewe_nobody_scanned_may_have_any_number()
    {
        var rows = Rows(f => f, Group(FeedingSample.Ewes(3, 2), 0.4m), Group(FeedingSample.Ewes(3, null, from: 4), 0.1m));
        Assert.All(Enumerable.Range(1, 3), lambs => Assert.Equal("2-2 0.2", Words(rows, lambs)[1]));
    }

    [Fact]
    public void On_forage_alone_there_is_nothing_and_out_on_grass_at_once_what_she_had()
    {
        Assert.Equal(["0- 0"], Words(Rows(f => f with { ForageOnly = true }, Group(FeedingSample.Ewes(3, 2), 0)), 2));
        var fed = Group(FeedingSample.Ewes(3, 2), 0.4m);
        var flock = FeedingSample.Flock(fed.Ewes);
        flock = flock with { Housing = flock.Housing with { TurnoutDaysAfterLambing = 2 } };
        Assert.Equal(["0- -"], Words(LambedRations.Of(flock, FedEwe.Of(flock, fed.Ewes, _ => null), [fed.Chart]), 2));
    }

    /// <summary>In milk six tenths of 3.5 % of live weight: 1.0988 kg of nuts for 45 kg, 1.05 in whole grains; over 1.35 for 80 kg.</summary>
    [Theory]
    [InlineData(1, 1.35)]
    [InlineData(3, 1.05)]
    [InlineData(null, 1.05)]
    public void The_lightest_that_can_have_so_many_holds_the_ration(int? scanOfTheLight, double most)
    {
        ImmutableArray<EwePlan> ewes = [FeedingSample.Ewe(1, 3, weight: 80), FeedingSample.Ewe(2, scanOfTheLight, weight: 45)];
        var flock = FeedingSample.Flock(ewes);
        Assert.Equal((decimal)most, LambedRations.MostFor(flock, FedEwe.Of(flock, ewes, _ => null), 2));
        Assert.Equal(0, LambedRations.MostFor(flock.WithFeeds(f => f with { ForageOnly = true }), FedEwe.Of(flock, ewes, _ => null), 2));
    }

    private static ImmutableArray<LambedRow> Rows(Func<Feeds, Feeds> change, params ImmutableArray<(ImmutableArray<EwePlan> Ewes, FeedChart Chart)> groups)
    {
        ImmutableArray<EwePlan> ewes = [.. groups.SelectMany(g => g.Ewes)];
        var flock = FeedingSample.Flock(ewes).WithFeeds(change);
        return LambedRations.Of(flock, FedEwe.Of(flock, ewes, _ => null), [.. groups.Select(g => g.Chart)]);
    }

    private static (ImmutableArray<EwePlan> Ewes, FeedChart Chart) Group(ImmutableArray<EwePlan> ewes, decimal kilograms)
    {
        var due = FeedingSample.FirstDue;
        var row = new FeedRow(due.PlusDays(-42), due.PlusDays(60), kilograms, [], [], default, default, 0, 0, 0, 0, false);
        return (ewes, new FeedChart(FeedKind.Twins, 1, 2, ewes, [], due, due, due, 3, [row]));
    }

    private static string[] Words(ImmutableArray<LambedRow> rows, int lambs) =>
        [.. rows.Where(r => r.Lambs == lambs).Select(r => $"{r.DayFrom}-{r.DayTo} {(r.KgPerDay is { } kg ? (kg == 0 ? "0" : kg.ToString("0.0", null)) : "-")}")];
}
