namespace PaperFlock.Planning.Tests;

/// <summary>A sheet is read into the file line by line in this order, so a wrong one writes a ewe's lambs to another.</summary>
public sealed class PencilListsTests
{
    private static readonly SeasonPlan Plan = SeasonPlanner.Plan(
        Sample.Flock(
            [Sample.Group("Orchard", tup: "Bramley"), Sample.Group("Paddock", tup: "Damson"), Sample.OneDay("Croft", Sample.TupIn)],
            Sample.Ewe("Bracken", "Paddock", "2026-08-20"),
            Sample.Ewe("Sorrel", "Orchard", "2026-08-14"),
            Sample.Ewe("Mallow", "Orchard", scan: 0),
            Sample.Ewe("Burdock", "Orchard") with { ToTup = false },
            Sample.Ewe("Teasel", "Orchard", "2026-08-12") with { Lambed = Sample.Day("2027-01-20") },
            Sample.Ewe("Heather", "Croft"),
            Sample.Ewe("Alder", "Paddock", "2026-08-20")),
        Sample.Day("2026-11-01"));

    [Fact]
    public void Before_the_tup_every_ewe_is_looked_at() =>
        Assert.Equal(["Bracken", "Sorrel", "Mallow", "Burdock", "Teasel", "Heather", "Alder"], Names(PencilLists.BeforeTheTup(Plan)));

    [Fact]
    public void Marks_are_taken_group_by_group_where_the_tup_wears_raddle()
    {
        var lists = PencilLists.TupAndRaddle(Plan);

        Assert.Equal(["Orchard", "Paddock"], lists.Select(l => l.Group.Group.Name));
        Assert.Equal(["Sorrel", "Mallow", "Teasel"], Names(lists[0].Ewes));
        Assert.Equal(["Bracken", "Alder"], Names(lists[1].Ewes));
    }

    [Fact]
    public void All_but_those_left_out_are_scanned() =>
        Assert.Equal(["Bracken", "Sorrel", "Mallow", "Teasel", "Heather", "Alder"], Names(PencilLists.ScanDay(Plan)));

    [Fact]
    public void Ewes_are_recorded_in_the_order_they_are_expected_and_the_tag_settles_a_tie() =>
        Assert.Equal(["Heather", "Teasel", "Sorrel", "Alder", "Bracken"], Names(PencilLists.WhoLambsWhen(Plan).Select(row => row.Ewe)));

    private static IEnumerable<string?> Names(IEnumerable<EwePlan> ewes) => ewes.Select(e => e.Ewe.Name);
}
