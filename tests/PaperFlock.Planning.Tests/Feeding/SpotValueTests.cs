using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>The need worked out here beside published figures for a pregnant ewe, each over the days it is printed for, with the difference allowed and
/// why. Those we cannot agree with stand in <see cref="NeedDisagreementTests"/>. Figures with a lamb at foot are left out: this program does not ration milk.</summary>
public sealed class SpotValueTests
{
    private const string BritishMargin =
        "British tables carry 5 % of safety (from memory of AFRC 1993) that is not added here, and do not show their litter weights";

    public static TheoryData<Spot> Spots =>
    [
        new Spot("Vet Times 2017, quoting Wright and Genever (AHDB) 2016, three weeks out", 70, 3, 21, 21, "Housed", null, 16.7, 0.05, BritishMargin),
        new Spot("Hybu Cig Cymru, just before lambing, litter not stated, twins taken", 75, 2, 7, 0, "Housed", null, 19, 0.05,
            "need climbs by a tenth in the week taken for just before"),
        new Spot("Irish Farmers Journal 255162, about eight to six weeks out", 80, 2, 56, 42, "Housed", null, 12, 0.04,
            "printed to the whole MJ"),
        new Spot("Irish Farmers Journal 255162, final weeks, two taken", 80, 2, 14, 0, "Housed", null, 20.2, 0.05,
            "with one week taken we are 4 % over, with three 5 % under"),
        new Spot("Irish Farmers Journal 322780, mid-pregnancy, 0.8 UFL, litter not stated, twins taken", 70, 2, 97, 47, "Housed", null, 9.4, 0.06,
            "0.8 is printed to one place, and 11.8 MJ to the UFL is from memory"),
        new Spot("Agriculture Victoria, useful tables, dry, 40 kg, score 2", 40, 0, 147, 90, "LowlandGrazing", 2, 6, 0.05, "printed to half a MJ"),
        new Spot("Agriculture Victoria, useful tables, dry, 45 kg, score 2", 45, 0, 147, 90, "LowlandGrazing", 2, 6.5, 0.05, "printed to half a MJ"),
        new Spot("Agriculture Victoria, useful tables, dry, 50 kg, score 2", 50, 0, 147, 90, "LowlandGrazing", 2, 7, 0.05, "printed to half a MJ"),
        new Spot("Agriculture Victoria, useful tables, last 4 weeks, single, 45 kg, score 2", 45, 1, 27, 0, "LowlandGrazing", 2, 10, 0.05, "printed to half a MJ"),
    ];

    [Theory]
    [MemberData(nameof(Spots))]
    public void Need_is_near_the_published_figure(Spot spot)
    {
        var need = Need.Mean(spot.Weight, spot.Lambs, spot.From, spot.To, Enum.Parse<Walking>(spot.Where), (decimal?)spot.Condition);
        var apart = (need / spot.Published) - 1;
        Assert.True(
            Math.Abs(apart) <= spot.Tolerance, $"{spot.Source}: {need:0.00} against {spot.Published}, {apart:P1}; allowed {spot.Tolerance:P0}, because {spot.Why}");
    }

    /// <summary>Agriculture Victoria, "Twin lamb disease" (Mirage News 1462260): a late pregnant ewe of 70 kg at score 3, at grass, 16 MJ with one and 20 with two, and 10 to
    /// 16 % less in a yard. At the foot of that range, 13.4 and 16.8, it agrees with us over the last four weeks, within the 5 % of a safety margin that
    /// we do not add.</summary>
    [Theory]
    [InlineData(1, 16)]
    [InlineData(2, 20)]
    public void Victoria_in_a_yard_agrees_at_the_foot_of_its_range(int lambs, double atGrass)
    {
        var need = Need.MeanOfLast(28, 70, lambs);
        Assert.InRange(need / (atGrass * (1 - 0.16)), 0.95, 1);
        Assert.True(need < atGrass * (1 - 0.10));
    }

    /// <summary>SRUC, in the Scottish Farmer (19027579): ewes with triplets are fed 10 % more than those with twins over the last six weeks. Said to the nearest
    /// 10 %, and held to 2.</summary>
    [Fact]
    public void Triplets_need_a_tenth_more_than_twins_over_six_weeks() =>
        Assert.Equal(1.10, Need.MeanOfLast(42, 70, 3) / Need.MeanOfLast(42, 70, 2), 0.02);

    /// <summary>Two published rises in late pregnancy, for one, two and three lambs, which differ because their baselines do: 23, 36 and 42 %
    /// (United States veterinary manual, reported) over an early figure that already knows the litter, and 40, 60 and 70 % (Teagasc Athenry
    /// in the Irish Independent, 18 February 2019), baseline not stated. Late pregnancy is taken as the last eight weeks. Over the
    /// need at its start the rise is the first, within the two points that a third of a kilogram of lamb makes; the
    /// second lies between that and the rise over bare maintenance.</summary>
    [Theory]
    [InlineData(1, 0.23, 0.40)]
    [InlineData(2, 0.36, 0.60)]
    [InlineData(3, 0.42, 0.70)]
    public void Need_rises_in_late_pregnancy_by_the_published_shares(int lambs, double overEarly, double unstated)
    {
        var late = Need.MeanOfLast(56, 70, lambs);
        var early = Need.Of(70, lambs, 56);
        Assert.Equal(overEarly, (late / early) - 1, 0.02);
        Assert.InRange(unstated, (late / early) - 1, (late / Need.Of(70, 0, 0)) - 1);
    }
}
