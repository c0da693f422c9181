using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

public sealed class ChartWordsTests
{
    private const string Larger = "This chart feeds the larger amount: too much risks big lambs and hard births.";
    private const string Smaller = "This chart feeds the smaller amount: too little risks twin lamb disease.";

    [Fact]
    public void Nothing_is_said_while_the_methods_are_under_a_quarter_apart() =>
        Assert.Equal("", MethodDifference.Words(FeedMethod.PerLamb, [Week(2, 0.98m, 0.80m), Week(1, 0.62m, 0.80m)]));

    [Fact]
    public void A_quarter_apart_is_said() =>
        Assert.Equal(
            $"In week 2 before lambing the ration per lamb is 25 % more than energy balance asks. {Larger}",
            MethodDifference.Words(FeedMethod.PerLamb, [Week(2, 1.00m, 0.80m), Week(1, 1.00m, 0.95m)]));

    [Fact]
    public void Weeks_that_differ_one_way_are_said_together_and_the_risk_follows_what_is_fed()
    {
        FeedWeek[] weeks = [Week(4, 0.9m, 0.5m), Week(3, 0.9m, 0.6m), Week(2, 0.9m, 0.9m), Week(1, 0.9m, 1.25m), Week(0, 0.9m, 1.25m)];
        Assert.Equal(
            "In weeks 4 to 3 before lambing the ration per lamb is 50 to 80 % more than energy balance asks. " + Larger
            + " From week 1 before lambing on the ration per lamb is 28 % less than energy balance asks. " + Smaller,
            MethodDifference.Words(FeedMethod.PerLamb, weeks));
        Assert.Equal(
            "In weeks 4 to 3 before lambing the ration per lamb is 50 to 80 % more than energy balance asks. " + Smaller
            + " From week 1 before lambing on the ration per lamb is 28 % less than energy balance asks. " + Larger,
            MethodDifference.Words(FeedMethod.EnergyBalance, weeks));
    }

    [Fact]
    public void Where_forage_alone_is_enough_no_share_of_nothing_is_printed()
    {
        Assert.Equal(
            $"In week 6 before lambing the ration per lamb asks for some concentrate where energy balance asks for none. {Larger}",
            MethodDifference.Words(FeedMethod.PerLamb, [Week(6, 0.45m, 0)]));
        Assert.Equal(
            $"In weeks 6 to 5 before lambing the ration per lamb is at least 80 % more than energy balance asks. {Larger}",
            MethodDifference.Words(FeedMethod.PerLamb, [Week(6, 0.45m, 0), Week(5, 0.45m, 0.25m)]));
        Assert.StartsWith(
            "In weeks 6 to 4 before lambing the ration per lamb is at least 50 % more",
            MethodDifference.Words(FeedMethod.PerLamb, [Week(6, 0.45m, 0), Week(5, 0.45m, 0.25m), Week(4, 0.45m, 0.30m)]),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Only_late_ewes_are_said_from_the_first_due_date() =>
        Assert.StartsWith(
            "From the first due date on the ration",
            MethodDifference.Words(FeedMethod.PerLamb, [Week(0, 0.9m, 0.5m), Week(-1, 0.9m, 0.5m)]),
            StringComparison.Ordinal);

    [Fact]
    public void Protein_under_a_twentieth_short_is_left_alone() =>
        Assert.Equal("", ProteinWarning.Words([Week(3, 1, 1) with { Need = new(15, 100), Supply = new(15, 96) }]));

    [Fact]
    public void Protein_just_a_twentieth_short_is_said() =>
        Assert.Contains("looks 5 % short", ProteinWarning.Words([Week(3, 1, 1) with { Need = new(15, 100), Supply = new(15, 95) }]), StringComparison.Ordinal);

    [Fact]
    public void Short_protein_is_said_by_the_weeks_it_is_short_in()
    {
        var words = ProteinWarning.Words(
        [
            Week(3, 1, 1) with { Need = new(15, 100), Supply = new(15, 100) },
            Week(2, 1, 1) with { Need = new(15, 110), Supply = new(15, 99) },
            Week(1, 1, 1) with { Need = new(15, 125), Supply = new(15, 100) },
        ]);
        Assert.Equal(
            "In weeks 2 to 1 before lambing this ration looks 10 to 20 % short of protein: ask the feed merchant or vet about a concentrate with more.",
            words);
    }

    private static FeedWeek Week(int before, decimal perLamb, decimal balance) => new(
        FeedingSample.FirstDue.PlusWeeks(-before), before, 6, perLamb, perLamb, balance, 2, null,
        new Nutrients(15, 110), new Nutrients(15, 110), false);
}
