using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests.Dates;

/// <summary>Which of two tups it was. Chances are worked out by hand beside each.</summary>
public class SireTests
{
    private static readonly TuppingGroup Followed = Sample.Group(tup: "Bramley, then Damson") with
    {
        Tups = [new("Bramley", Sample.TupIn, Sample.Day("2026-08-20")), new("Damson", Sample.Day("2026-08-20"), Sample.TupOut)],
    };

    [Fact]
    public void Where_there_was_one_tup_he_is_certain() =>
        Assert.Equal(new Sire("Bramley", 1), Assert.Single(Sires(Sample.Group(tup: "Bramley"), Sample.Ewe(marks: "2026-08-14", scan: 2))));

    [Fact]
    public void Where_no_tup_is_named_nobody_is_said_to_be_the_sire() => Assert.Empty(Sires(Sample.Group(), Sample.Ewe(marks: "2026-08-14")));

    [Fact]
    public void A_ewe_that_carries_nothing_has_no_sire() => Assert.Empty(Sires(Followed, Sample.Ewe(marks: "2026-08-14", scan: 0)));

    /// <summary>One in a hundred came back 17 days later unseen, to the other tup.</summary>
    [Fact]
    public void A_mark_says_who_but_for_a_return_that_nobody_saw() => Is(Sires(Followed, Sample.Ewe(marks: "2026-08-14", scan: 2)), ("Bramley", 0.99), ("Damson", 0.01));

    [Fact]
    public void A_mark_on_the_day_one_took_over_may_be_of_either() => Is(Sires(Followed, Sample.Ewe(marks: "2026-08-20")), ("Damson", 0.505), ("Bramley", 0.495));

    /// <summary>No mark: each of the first 17 days counts 1, of the next 17 one fifth, of the last 9 a twenty-fifth, for four in five hold. Bramley
    /// was there for ten days and half of the eleventh: 10.5; Damson for half a day and six: 6.5 + 3.4 + 0.36 = 10.26.</summary>
    [Fact]
    public void Without_a_mark_the_days_of_each_are_weighed() =>
        Is(Sires(Followed, Sample.Ewe()), ("Bramley", 10.5 / 20.76), ("Damson", 10.26 / 20.76));

    /// <summary>147 days after the first mark and 130 after the second: only the first explains it.</summary>
    [Fact]
    public void A_lambing_tells_which_of_two_marks_held() => Is(
        Sires(Followed, Sample.Ewe(marks: "2026-08-14 2026-08-31", scan: 2) with { Lambed = Sample.Day("2027-01-08") }), ("Bramley", 1));

    /// <summary>154 days after the first and 145 after the second: z of 7 / 2.5 and of 2 / 2.5, the second a fifth as likely beforehand. e^-3.92 = 0.01984 to 0.2 e^-0.32 = 0.14523.</summary>
    [Fact]
    public void A_lambing_between_two_says_either_with_the_chance_of_each() => Is(
        Sires(Turns("2026-08-16"), Sample.Ewe(marks: "2026-08-11 2026-08-20", scan: 2) with { Lambed = Sample.Day("2027-01-12") }),
        ("Damson", 0.14523 / 0.16507),
        ("Bramley", 0.01984 / 0.16507));

    private static TuppingGroup Turns(string day) => Followed with
    {
        Tups = [new("Bramley", Sample.TupIn, Sample.Day(day)), new("Damson", Sample.Day(day), Sample.TupOut)],
    };

    private static ImmutableArray<Sire> Sires(TuppingGroup group, Ewe ewe) => SeasonPlanner.Plan(Sample.Flock([group], ewe), Sample.Day("2027-02-01")).Ewes[0].Sires;

    private static void Is(ImmutableArray<Sire> sires, params (string Tup, double Chance)[] expected)
    {
        Assert.Equal(expected.Select(e => e.Tup), sires.Select(s => s.Tup));
        Assert.All(expected.Zip(sires), pair => Assert.Equal(pair.First.Chance, pair.Second.Chance, 0.0005));
    }
}
