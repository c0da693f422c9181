using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Layout;
using PaperFlock.Planning;
using PaperFlock.Planning.Tests;

namespace PaperFlock.Sheets.Tests.Text;

public sealed class HousingTextTests
{
    private static readonly Pen North = FeedingSample.Pen("North bay", 6, 4, 6);
    private static readonly Pen South = FeedingSample.Pen("South bay", 6, 4, 6);

    [Theory]
    [InlineData(0, "No ewe is in lamb: nobody is housed.")]
    [InlineData(1, "She fits.")]
    [InlineData(2, "Both ewes fit.")]
    [InlineData(22, "All 22 ewes fit.")]
    public void Whether_they_fit_is_said_first(int ewes, string words) => Assert.Equal(words, Words([(North, FeedingSample.Ewes(ewes))]));

    [Theory]
    [InlineData(1, "The shed is too small: 1 ewe has no room (ZZ 0123456 00001).")]
    [InlineData(2, "The shed is too small: 2 ewes have no room (ZZ 0123456 00001 and ZZ 0123456 00002).")]
    [InlineData(8, "The shed is too small: 8 ewes have no room (ZZ 0123456 00001, ZZ 0123456 00002, ZZ 0123456 00003, ZZ 0123456 00004, ZZ 0123456 00005, ZZ 0123456 00006 and 2 more).")]
    public void Who_has_no_room_is_named(int ewes, string words) => Assert.Equal(words, Words([(North, [])], FeedingSample.Ewes(ewes)));

    /// <summary>On paper the tag of a ewe without a name is in the mono face, wherever it stands.</summary>
    [Fact]
    public void Their_tags_are_set_as_tags()
    {
        var plan = new HousingPlan([], [.. FeedingSample.Ewes(2).Select(e => e.Ewe)]);
        var runs = HousingText.Of(plan, Sample.Housing() with { Pens = [North] }).Runs(new TextStyle(Face.Text, 10));

        Assert.Equal(["ZZ 0123456 00001", "ZZ 0123456 00002"], runs.Where(r => r.Style.Face == Face.Mono).Select(r => r.Words));
        Assert.All(runs.Where(r => r.Style.Face == Face.Mono), r => Assert.True(r.Whole));
    }

    [Theory]
    [InlineData(5.6, "Hurdle in North bay: 10 and 3 eat apart.")]
    [InlineData(5.5, "Hurdle in North bay: 10 and 3 eat apart, and the trough is then too short.")]
    public void A_hurdle_takes_two_feet_of_trough(double trough, string words) =>
        Assert.Equal(words, HousingText.Hurdles(new PenPlan(North, [], 1, 1, 5, (decimal)trough, 1, 1), [10, 3]));

    [Fact]
    public void Room_with_lambs_is_said_with_the_day_it_runs_out()
    {
        var full = new LocalDate(2027, 1, 12);
        Assert.Equal("There is room with lambs too.", HousingText.WithLambs(new RoomWithLambs(20, 20, null, null), 10));
        Assert.Equal(
            "With lambs the shed holds 13: some must be out by Tue\u00a012\u00a0Jan. Turn out 10 days after lambing: then all have room.",
            HousingText.WithLambs(new RoomWithLambs(20, 13, full, 12), 10));
        Assert.Equal(
            "With lambs the shed holds 13: some must be out by Tue\u00a012\u00a0Jan. Turn out 7 days after lambing, not 10: then all have room.",
            HousingText.WithLambs(new RoomWithLambs(20, 13, full, 7), 10));
        Assert.Equal(
            "With lambs the shed holds 13: from Tue\u00a012\u00a0Jan each must go out as she lambs.", HousingText.WithLambs(new RoomWithLambs(20, 13, full, null), 10));
    }

    [Fact]
    public void A_large_pen_and_one_without_a_trough_are_spoken_of() => Assert.Equal(
        "All 50 ewes fit. Hall holds 50 ewes: groups of under 50 are advised where possible (DEFRA PB5162). "
        + "No trough length is given for Hall, so only floor is reckoned there.",
        Words([(FeedingSample.Pen("Hall", 20, 10), FeedingSample.Ewes(50))]));

    [Fact]
    public void Where_nobody_is_placed_the_reason_is_given()
    {
        Assert.Equal("The ewes lamb outdoors: no pens are planned.", HousingText.Of(HousingPlan.None, Sample.Housing(LambingPlace.Outdoors)).ToString());
        Assert.Equal("The flock file names no pens, so nobody is placed in one.", HousingText.Of(HousingPlan.None, Sample.Housing()).ToString());
    }

    private static string Words((Pen Pen, ImmutableArray<EwePlan> Ewes)[] pens, ImmutableArray<EwePlan>? without = null)
    {
        var plan = new HousingPlan(
            [.. pens.Select(p => new PenPlan(p.Pen, [.. p.Ewes.Select(e => e.Ewe)], 1, 1, 1, 1, 1, 1))], [.. (without ?? []).Select(e => e.Ewe)]);
        return HousingText.Of(plan, Sample.Housing() with { Pens = [.. pens.Select(p => p.Pen)] }).ToString();
    }
}
