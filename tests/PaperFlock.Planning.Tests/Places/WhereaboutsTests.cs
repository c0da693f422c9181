using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests.Places;

/// <summary>Where a ewe is, span by span, as the flock file moves her.</summary>
public sealed class WhereaboutsTests
{
    private static readonly LocalDate AsOf = Sample.Day("2026-07-01");

    private static readonly Flock Demo = Sample.Flock(
        [Sample.Group() with { Field = "Low Paddock" }],
        Sample.Ewe("Bracken", marks: "2026-08-14", scan: 2),
        Sample.Ewe("Tansy", marks: "2026-08-14", scan: 2),
        Sample.Ewe("Mallow", scan: 0),
        Sample.Ewe("Sedge") with { ToTup = false },
        Sample.Ewe("Campion", marks: "2026-08-12", scan: 2) with { Lambed = Sample.Day("2027-01-05"), Lambing = LambingResult.Unknown with { Alive = 2 } }) with
    {
        KeeperDays = Sample.Free(Sample.EveryDay),
        Fields = new ClassFields("Paddock", "Orchard", null, "Top Field", "Croft"),
        Housing = Sample.Housing() with { Pens = [FeedingSample.Pen("North bay", 6, 4.8m, 9)] },
    };

    [Fact]
    public void A_ewe_in_lamb_goes_from_her_groups_field_to_her_kinds_and_into_the_shed_and_stays_there() => Assert.Equal(
        [
            "2026-06-01 NotInLamb Field Low Paddock",
            "2026-08-10 WithTup Field Low Paddock",
            "2026-09-22 InLamb Field Low Paddock",
            "2026-10-24 InLamb Field Orchard",
            "2026-12-30 InLamb Pen North bay",
        ],
        Spans("Bracken"));

    [Fact]
    public void A_lambing_takes_her_to_a_lambing_pen_among_the_others_and_out() => Assert.Equal(
        [
            "2026-12-30 InLamb Pen North bay",
            "2027-01-05 Lambed LambingPen ",
            "2027-01-07 Lambed WithLambs ",
            "2027-01-15 Lambed WithLambs Croft",
        ],
        Spans("Campion").Skip(4));

    [Fact]
    public void Ewes_not_in_lamb_run_in_their_own_field()
    {
        Assert.Equal(["2026-09-22 NotInLamb Field Low Paddock", "2026-10-24 NotInLamb Field Top Field"], Spans("Mallow").Skip(2));
        Assert.Equal(["2026-06-01 LeftOut Field Low Paddock", "2026-08-10 LeftOut Field Top Field"], Spans("Sedge"));
    }

    [Fact]
    public void Who_is_where_on_a_day()
    {
        var there = SeasonPlanner.Plan(Demo, AsOf).Whereabouts.On(Sample.Day("2027-01-06"));
        Assert.Equal(
            [new Place(PlaceKind.Pen, "North bay"), new Place(PlaceKind.Field, "Top Field"), new Place(PlaceKind.LambingPen, null)],
            there.Select(t => t.Place));
        Assert.Equal([2, 2, 1], there.Select(t => t.Ewes.Length));
    }

    [Fact]
    public void A_group_without_a_field_runs_in_a_place_of_its_own_name()
    {
        var plan = SeasonPlanner.Plan(Sample.Flock([Sample.Group("Orchard"), Sample.Group("Hill")], Sample.Ewe(group: "Orchard")), AsOf);
        Assert.Equal("Orchard", plan.Whereabouts.Ewes[0].Stays[0].Place.Name);
        Assert.Null(SeasonPlanner.Plan(Sample.Flock(Sample.Ewe()), AsOf).Whereabouts.Ewes[0].Stays[0].Place.Name);
    }

    private static IEnumerable<string> Spans(string name) => SeasonPlanner.Plan(Demo, AsOf).Whereabouts.Ewes.Single(e => e.Ewe.Name == name).Stays
        .Select(s => $"{s.From:uuuu-MM-dd} {s.State} {s.Place.Kind} {s.Place.Name}");
}
