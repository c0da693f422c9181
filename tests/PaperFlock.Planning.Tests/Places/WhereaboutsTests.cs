using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;
using PaperFlock.Planning.Places;

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
        var elsewhere = SeasonPlanner.Plan(Sample.Flock([Sample.Group("Orchard") with { Field = "Low Paddock" }], Sample.Ewe(group: "Orchard")), AsOf);
        Assert.Equal("Low Paddock", elsewhere.Whereabouts.Ewes[0].Stays[0].Place.Name);
        Assert.Null(SeasonPlanner.Plan(Sample.Flock(Sample.Ewe()), AsOf).Whereabouts.Ewes[0].Stays[0].Place.Name);
    }

    [Fact]
    public void A_ewe_that_loses_her_lambs_in_the_shed_goes_out_to_those_not_in_lamb() => Assert.Equal(
        ["2026-12-30 InLamb Pen North bay", "2027-01-02 NotInLamb Field Top Field"],
        Spans(Demo.Ewes[0] with { LostLambs = Sample.Day("2027-01-02") }).Skip(4));

    [Fact]
    public void A_ewe_whose_lambs_were_born_dead_goes_out_to_those_not_in_lamb() => Assert.Equal(
        ["2026-12-30 InLamb Pen North bay", "2027-01-05 Lambed Field Top Field"],
        Spans(Demo.Ewes[0] with { Lambed = Sample.Day("2027-01-05"), Lambing = LambingResult.Unknown with { Alive = 0, Dead = 2 } }).Skip(4));

    /// <summary>Two ewes of 72 kg want 2.56 m² of straw (DEFRA PB5162).</summary>
    [Fact]
    public void A_ewe_the_shed_has_no_room_for_stays_in_her_field()
    {
        var shed = Demo with
        {
            Ewes = Demo.Ewes[..2],
            Housing = Sample.Housing() with { Pens = [FeedingSample.Pen("North bay", 2.5m, 1)] },
        };
        var stays = SeasonPlanner.Plan(shed, AsOf).Whereabouts.Ewes;
        Assert.Equal(new Place(PlaceKind.Pen, "North bay"), stays[0].Stays[^1].Place);
        Assert.Equal(new Place(PlaceKind.Field, "Orchard"), stays[1].Stays[^1].Place);
    }

    /// <summary>So many ewes with one, two and three lambs, and the field of each kind.</summary>
    [Theory]
    [InlineData(2, 2, 2, "Croft Orchard Moor")]
    [InlineData(1, 2, 2, "Orchard Orchard Moor")]
    [InlineData(2, 1, 2, "Croft Moor Moor")]
    [InlineData(2, 2, 1, "Croft Orchard Orchard")]
    [InlineData(1, 0, 2, "Moor Moor")]
    [InlineData(2, 0, 1, "Croft Croft")]
    [InlineData(0, 1, 0, "Orchard")]
    public void A_ewe_that_would_run_alone_goes_with_the_kind_above_or_else_below(int singles, int twins, int triplets, string fields)
    {
        ImmutableArray<int> scans = [.. Enumerable.Repeat(1, singles), .. Enumerable.Repeat(2, twins), .. Enumerable.Repeat(3, triplets)];
        var flock = Sample.Flock([.. scans.Select((s, i) => Sample.Ewe($"E{i}", marks: "2026-08-14", scan: s))]) with
        {
            Fields = new ClassFields("Croft", "Orchard", "Moor", null, null),
        };
        var whereabouts = SeasonPlanner.Plan(flock, AsOf).Whereabouts;
        Assert.Equal(fields.Split(' '), flock.Ewes.DistinctBy(e => e.Scan).Select(e => whereabouts.On(e, Sample.Day("2026-12-01"))!.Place.Name));
    }

    [Fact]
    public void The_first_and_the_last_day_of_the_paper_are_told_like_any_other()
    {
        var nowhere = new EweMoves(_ => null, _ => null, _ => null, _ => null);
        var flock = Sample.Flock(Sample.Ewe());
        IEnumerable<string> Between(LocalDate from, LocalDate to) =>
            WhereaboutsPlanner.Plan(flock, EwePlans.Of(flock), from, to, nowhere).Ewes[0].Stays.Select(s => $"{s.From:uuuu-MM-dd} {s.To:uuuu-MM-dd} {s.State}");

        Assert.Equal(["2026-08-09 2026-08-09 NotInLamb", "2026-08-10 2026-08-10 WithTup"], Between(Sample.TupIn.PlusDays(-1), Sample.TupIn));
        Assert.Equal(["2026-09-21 2026-09-21 WithTup", "2026-09-22 2026-09-22 InLamb"], Between(Sample.TupOut, Sample.TupOut.PlusDays(1)));
    }

    [Fact]
    public void Where_the_file_names_no_field_for_them_they_stay_in_their_groups()
    {
        var plan = SeasonPlanner.Plan(Demo with { Fields = ClassFields.None }, AsOf);
        Assert.All(plan.Whereabouts.Ewes.SelectMany(e => e.Stays).Where(s => s.Place.Kind == PlaceKind.Field), s => Assert.Equal("Low Paddock", s.Place.Name));
        Assert.Equal(new Place(PlaceKind.WithLambs, "Low Paddock"), plan.Whereabouts.Ewes[4].Stays[^1].Place);
    }

    private static IEnumerable<string> Spans(Ewe ewe) => SeasonPlanner.Plan(Demo with { Ewes = Demo.Ewes.SetItem(0, ewe) }, AsOf).Whereabouts.Ewes[0].Stays.Select(Span);

    private static string Span(Stay s) => $"{s.From:uuuu-MM-dd} {s.State} {s.Place.Kind} {s.Place.Name}";

    private static IEnumerable<string> Spans(string name) => SeasonPlanner.Plan(Demo, AsOf).Whereabouts.Ewes.Single(e => e.Ewe.Name == name).Stays
        .Select(Span);
}
