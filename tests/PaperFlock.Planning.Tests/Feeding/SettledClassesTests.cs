using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>Who has one chart once it is seen who stands together, and how many troughs a place can be parted into.</summary>
public sealed class SettledClassesTests
{
    private const string Pen = "Pen", Bay = "Bay";

    /// <summary>Twins (2) and the unscanned (2.25, the average of the flock) want the most alike.</summary>
    [Fact]
    public void Where_there_is_room_for_fewer_troughs_those_who_want_the_most_alike_share() => Assert.Equal(
        ["Singles: S1 S2", "Triplets: M1 M2 M3 M4", "Mixed: T1 T2 N1 N2"],
        Settled("S1 S2 T1 T2 N1 N2 M1 M2 M3 M4", [Pen, "S1 S2 T1 T2 N1 N2"], troughs: 2));

    [Fact]
    public void One_by_herself_joins_before_any_are_put_together() => Assert.Equal(
        ["Twins: T1 T2 + S1", "Triplets: M1 M2"],
        Settled("S1 T1 T2 M1 M2", [Pen, "S1 T1 T2 M1 M2"], troughs: 2));

    /// <summary>In the pen all eat from one trough; in the bay the third twin is then by herself and joins the singles there.</summary>
    [Fact]
    public void Those_who_stand_elsewhere_keep_their_charts_and_nobody_is_left_alone_there() => Assert.Equal(
        ["Singles: S3 S4 + T3", "Mixed: S1 S2 T1 T2"],
        Settled("S1 S2 S3 S4 T1 T2 T3", [Pen, "S1 S2 T1 T2", Bay, "S3 S4 T3"], troughs: 1, troughsInBay: 2));

    [Fact]
    public void Two_charts_of_one_kind_that_must_share_become_one_wherever_their_ewes_stand() => Assert.Equal(
        ["Twins: T1 T2 T3 T4 L1 L2 L3 L4"],
        Settled("T1 T2 T3 T4 L1 L2 L3 L4", [Pen, "T1 T2 T3 L1 L2 L3", Bay, "T4", Bay, "L4"], troughs: 1));

    /// <summary>Two early twins beside three late ones eat with them; the third early one, in a pen of her own, goes on with her chart.</summary>
    [Fact]
    public void A_few_of_one_kind_eat_with_more_of_it_where_they_stand_together() => Assert.Equal(
        ["Twins: T3", "Twins: T1 T2 L1 L2 L3"],
        Settled("T1 T2 T3 L1 L2 L3", [Pen, "T1 T2 L1 L2 L3", Bay, "T3"], troughs: 9).Order(StringComparer.Ordinal).Reverse());

    [Fact]
    public void One_by_herself_goes_to_her_own_kind_else_to_the_next_above_else_to_the_one_below()
    {
        Assert.Equal(["Singles: S1 S2 D1", "Twins: T1 T2"], Settled("S1 S2 D1 T1 T2", [Pen, "S1 S2 D1 T1 T2"], troughs: 9));
        Assert.Equal(["Singles: S1 S2", "Triplets: M1 M2 M3", "NotScanned: N1 N2 + T1"], Settled("S1 S2 T1 N1 N2 M1 M2 M3", [Pen, "S1 S2 T1 N1 N2 M1 M2 M3"], troughs: 9));
        Assert.Equal(["Singles: S1 S2", "Twins: T1 T2 + M1"], Settled("S1 S2 T1 T2 M1", [Pen, "S1 S2 T1 T2 M1"], troughs: 9));
    }

    /// <summary>In the pen she is alone beside twins and in the bay beside singles: she cannot have both charts, so they are one.</summary>
    [Fact]
    public void A_ewe_who_is_alone_in_two_places_brings_both_together() => Assert.Equal(
        ["Mixed: S1 S2 S3 T1 T2"],
        Settled("S1 S2 S3 T1 T2", [Pen, "S1 T1 T2", Bay, "S1 S2 S3"], troughs: 9));

    [Fact]
    public void Ewes_that_are_not_parted_have_one_chart_with_all_that_ever_stand_with_them() => Assert.Equal(
        ["Mixed: S1 S2 T1 T2"],
        Settled("S1 S2 T1 T2", [Pen, "S1 T1", Bay, "S2", Bay, "T2"], troughs: 9, Parting.No));

    /// <param name="ewes">S, T, M and N: singles, twins, triplets and unscanned, all due together; D and L: singles and twins due three weeks later.</param>
    /// <param name="places">A place and who stands there, in turns.</param>
    private static IEnumerable<string> Settled(string ewes, string[] places, int troughs, Parting parting = Parting.ByLambs, int? troughsInBay = null)
    {
        ImmutableArray<EwePlan> plans = [.. ewes.Split(' ').Select((name, i) => Ewe(name, i))];
        var flock = FedFlock.Stepped(plans, f => f with { Parted = parting });
        var fed = FedEwe.Of(flock, plans, _ => null);
        var companies = places.Chunk(2)
            .Select(p => (new Place(PlaceKind.Pen, p[0]), p[1].Split(' ').Select(n => plans.Single(e => e.Ewe.Name == n).Ewe).ToImmutableArray())).ToList();
        var settled = FeedClasses.Settled(
            flock, FeedClasses.Of(flock, fed), companies, (place, _, parts) => parts <= (place.Name == Bay ? troughsInBay ?? troughs : troughs));
        return settled.Select(c => $"{c.Kind}: {Names(c.Own)}{(c.Joined.IsEmpty ? "" : $" + {Names(c.Joined)}")}");

        string Names(IEnumerable<FedEwe> of) => string.Join(' ', of.OrderBy(e => plans.IndexOf(plans.Single(p => p.Ewe.Tag == e.Tag))).Select(e => e.Plan.Ewe.Name));
    }

    private static EwePlan Ewe(string name, int index)
    {
        var ewe = FeedingSample.Ewe(index + 1, name[0] switch { 'S' or 'D' => 1, 'T' or 'L' => 2, 'M' => 3, _ => null }, due: name[0] is 'D' or 'L' ? 21 : 0);
        return ewe with { Ewe = ewe.Ewe with { Name = name } };
    }
}
