using NodaTime;

namespace PaperFlock.Flocks.Tests;

public class SeasonTests
{
    private static readonly LocalDate TupIn = new(2026, 8, 10);

    [Fact]
    public void The_smallest_file_has_every_default()
    {
        var flock = Samples.Read("smallest").Flock!;
        Assert.Equal(new Season(TupIn, new LocalDate(2026, 9, 21), 147, flock.Season.Span), flock.Season);
        var group = Assert.Single(flock.Groups);
        Assert.Equal(("", (string?)null, Mating.Natural, TupIn, new LocalDate(2026, 9, 21)), (group.Name, group.Tup, group.Mating, group.TupIn, group.TupOut));
        Assert.Equal(["yellow", "orange", "red", "blue"], group.Raddle);
        Assert.Equal(7, flock.KeeperDays.Free.Length);
        Assert.Empty(flock.KeeperDays.Away);
        Assert.Null(flock.Feeds.PerLamb);
        Assert.Null(flock.Feeds.Buckets);
        Assert.Null(flock.Feeds.Concentrate.Scoop);
        Assert.Null(flock.Housing.LambingPens);
        var ewe = Assert.Single(flock.Ewes);
        Assert.Equal(("ZZ 0123456 00101", "ZZ 0123456 00101", ""), (ewe.Tag, ewe.CallName, ewe.Group));
        Assert.Equal((Teeth.Unchecked, Toes.Unchecked, Teats.Unchecked), (ewe.Teeth, ewe.Toes, ewe.Teats));
        Assert.Equal((null, null, null, null, null, null), (ewe.Scan, ewe.ScanStage, ewe.Lambed, ewe.ToTup, ewe.Weight, ewe.Born));
    }

    [Theory]
    [InlineData("lambing-from: 2027-01-04", "2026-08-10", "2026-09-21")]
    [InlineData("lambing-from: 2024-02-29\n  gestation-days: 150", "2023-10-02", "2023-11-13")]
    [InlineData("lambing-from: 2027-01-04\n  tup-out: 2026-08-10", "2026-08-10", "2026-08-10")]
    [InlineData("tup-in: 2024-01-18", "2024-01-18", "2024-02-29")]
    public void Tup_in_and_out_are_worked_from_what_is_given(string season, string tupIn, string tupOut)
    {
        var read = Samples.Flock(Samples.Text(season: $"season:\n  {season}\n")).Season;
        Assert.Equal((tupIn, tupOut), (read.TupIn.ToString("R", null), read.TupOut.ToString("R", null)));
    }

    [Theory]
    [InlineData("", "{name: A}", "2026-08-10", "2026-09-21")]
    [InlineData("tup-out: 2026-10-12", "{name: A}", "2026-08-10", "2026-10-12")]
    [InlineData("", "{name: A, tup-in: 2026-08-17}", "2026-08-17", "2026-09-28")]
    [InlineData("tup-out: 2026-09-21", "{name: A, tup-in: 2026-08-17}", "2026-08-17", "2026-09-28")]
    [InlineData("tup-out: 2026-10-12", "{name: A, tup-in: 2026-08-17}", "2026-08-17", "2026-10-12")]
    [InlineData("", "{name: A, tup-out: 2026-08-31}", "2026-08-10", "2026-08-31")]
    [InlineData("", "{name: A, mating: artificial, date: 2026-08-14}", "2026-08-14", "2026-08-14")]
    [InlineData("", "{name: A, mating: hand, date: 2026-10-14}", "2026-10-14", "2026-10-14")]
    public void A_groups_stay_is_its_own_or_the_seasons(string season, string group, string tupIn, string tupOut)
    {
        var text = Samples.Text($"groups:\n  - {group}\n", season: Samples.Season + (season.Length > 0 ? $"  {season}\n" : ""));
        var read = Assert.Single(Samples.Flock(text).Groups);
        Assert.Equal((tupIn, tupOut), (read.TupIn.ToString("R", null), read.TupOut.ToString("R", null)));
    }

    [Theory]
    [InlineData("raddle: false")]
    [InlineData("raddle: no")]
    [InlineData("raddle: []")]
    [InlineData("mating: hand, date: 2026-08-14")]
    public void Groups_without_raddle_have_no_colours(string keys) =>
        Assert.Empty(Samples.Flock(Samples.Text($"groups:\n  - {{name: A, {keys}}}\n")).Groups[0].Raddle);

    [Theory]
    [InlineData("before: housing, days: [21, 14]", JobAnchor.Housing, -21, -14)]
    [InlineData("before: housing, days: [14, 21]", JobAnchor.Housing, -21, -14)]
    [InlineData("before: tup-in, days: 7", JobAnchor.TupIn, -7, -7)]
    [InlineData("after: last-due, days: [28, 56]", JobAnchor.LastDue, 28, 56)]
    [InlineData("after: scan, days: 0", JobAnchor.Scan, 0, 0)]
    public void A_job_hangs_on_its_anchor(string placement, JobAnchor anchor, int first, int last)
    {
        var job = Assert.Single(Samples.Flock(Samples.Text($"jobs:\n  - {{title: Drench, {placement}}}\n")).OwnJobs);
        Assert.Equal(new OwnJobWindow(anchor, first, last), job.Window);
        Assert.Null(job.On);
    }

    [Theory]
    [InlineData("title: Feed merchant closed", false, true)]
    [InlineData("title: 'Merchant: CLOSED, ring before'", false, true)]
    [InlineData("title: Look at the enclosed paddock", false, false)]
    [InlineData("title: Feed merchant closed, closed: false", false, false)]
    [InlineData("title: Drench, minutes-per-ewe: 2", true, false)]
    [InlineData("title: Count, minutes-per-ewe: 1, handled: false", false, false)]
    [InlineData("title: Shear, handled: true", true, false)]
    public void A_job_says_whether_ewes_are_handled_and_shops_are_shut(string keys, bool handled, bool closed)
    {
        var job = Assert.Single(Samples.Flock(Samples.Text($"jobs:\n  - {{{keys}, on: 2026-12-25}}\n")).OwnJobs);
        Assert.Equal((handled, closed), (job.Handled, job.Closed));
    }

    [Theory]
    [InlineData(ForageKind.Hay, "hay", "8.8", "90", "0.85", 20)]
    [InlineData(ForageKind.Haylage, "haylage", "9.7", "111", "0.627", null)] // PMC8697880, table 2
    [InlineData(ForageKind.Silage, "silage", "10.9", "155", "0.25", null)] // from memory: MAFF 1990
    [InlineData(ForageKind.Straw, "straw", "6.5", "40", "0.86", null)] // from memory: MAFF 1990
    [InlineData(ForageKind.Grass, "grass", "11.2", "156", "0.2", null)] // from memory: MAFF 1990
    public void Each_forage_has_its_usual_analysis(ForageKind kind, string typed, string energy, string protein, string dryMatter, int? bale)
    {
        var forage = Samples.Flock(Samples.Text($"feeds:\n  forage: {{kind: {typed}}}\n")).Feeds.Forage;
        Assert.Equal(kind, forage.Kind);
        Assert.Equal(
            (decimal.Parse(energy, null), decimal.Parse(protein, null), decimal.Parse(dryMatter, null)),
            (forage.Energy, forage.Protein, forage.DryMatter));
        Assert.Equal(bale, forage.Bale?.Kilograms);
    }

    [Fact]
    public void Marks_are_put_in_date_order() =>
        Assert.Equal(
            [new LocalDate(2026, 8, 14), new LocalDate(2026, 8, 31)],
            Samples.Flock(Samples.Ewe("marks: [2026-08-31, 2026-08-14]")).Ewes[0].Marks);

    [Fact]
    public void Absences_are_put_in_date_order()
    {
        var away = Samples.Flock(Samples.Text(
            "keeper-days:\n  away:\n    - {from: 2026-12-27, to: 2026-12-28}\n    - {from: 2026-09-01, to: 2026-09-01}\n")).KeeperDays.Away;
        Assert.Equal([new LocalDate(2026, 9, 1), new LocalDate(2026, 12, 27)], away.Select(a => a.From));
    }

    [Theory]
    [InlineData("lambed: 2026-12-17", "FLK061")]
    [InlineData("lambed: 2026-12-18", "FLK152")] // tup in and 130 days
    [InlineData("lambed: 2026-12-25", "FLK152")]
    [InlineData("lambed: 2026-12-26", null)] // tup in and 138 days
    [InlineData("lambed: 2027-02-27", null)] // tup out and 159 days
    [InlineData("lambed: 2027-02-28", "FLK152")]
    [InlineData("lambed: 2027-03-05", "FLK152")] // tup out and 165 days
    [InlineData("lambed: 2027-03-06", "FLK061")]
    [InlineData("born: 2027", "FLK062")]
    [InlineData("born: 2026", "FLK210")]
    [InlineData("born: 2001", "FLK210")]
    [InlineData("born: 2000", "FLK062")]
    [InlineData("scan: 0", null)] // a count without a mark is believed
    [InlineData("marks: []", null)]
    public void What_cannot_be_is_refused_and_what_can_be_is_not(string line, string? code) =>
        Assert.Equal(code is null ? [] : [code], Samples.Codes(Samples.Ewe(line)));

    [Theory]
    [InlineData("tup-in: 2026-13-10")]
    [InlineData("tup-in: [2026-08-10]")]
    [InlineData("tup-in: *x")]
    [InlineData("lambing-from: 4 January 2027")]
    [InlineData("tup-inn: 2026-08-10")]
    public void One_wrong_date_is_one_error(string season)
    {
        var text = Samples.Text(
            "groups:\n  - {name: A}\n  - {name: B, tup-in: 1899-01-01}\nkeeper-days:\n  away:\n    - {from: 2001-01-01, to: 2001-01-02}\n",
            season: $"season:\n  {season}\n",
            ewes: "ewes:\n  - {tag: ZZ 1, group: A, marks: [2020-01-01], lambed: 2030-01-01, born: 2031}\n");
        // The second group's year is out of reason by itself.
        Assert.Equal(["FLK035"], Samples.Codes(text).Skip(1));
    }

    [Theory]
    [InlineData("groups: Orchard\n", "FLK024")]
    [InlineData("groups:\n  - Orchard\n", "FLK023")]
    [InlineData("groups:\n  - {nmae: Orchard}\n", "FLK020")]
    [InlineData("groups:\n  - {name: Orchard, mating: hnad}\n", "FLK030")]
    public void A_group_that_cannot_be_read_is_not_blamed_on_her(string groups, string code) =>
        Assert.Equal([code], Samples.Codes(Samples.Text(groups, ewes: Samples.Ewes + "    group: Orchard\n    marks: [2020-01-01]\n")));

    [Fact]
    public void Spans_are_where_the_nouns_are()
    {
        var reading = Samples.ReadText(Samples.Text("groups:\n  - name: Orchard\n"));
        var flock = reading.Flock!;
        Assert.Equal("ZZ 0123456 00101", reading.Source.TextOf(flock.Ewes[0].Span));
        Assert.Equal("2026-08-10", reading.Source.TextOf(flock.Season.Span));
        Assert.Equal("name", reading.Source.TextOf(flock.Groups[0].Span));
    }
}
