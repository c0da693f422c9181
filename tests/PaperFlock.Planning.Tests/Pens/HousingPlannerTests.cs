using CsCheck;
using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;
using PaperFlock.Planning.Pens;

namespace PaperFlock.Planning.Tests.Pens;

public sealed class HousingPlannerTests
{
    // Ewes of 60 kg want 1.2 m² and 0.45 m of trough: a pen of n x 1.2 m² holds n.
    private static Pen PenFor(string name, int ewes) => FeedingSample.Pen(name, ewes, 1.2m, ewes * 0.45m);

    [Fact]
    public void All_that_fit_are_said_to_fit()
    {
        var ewes = FeedingSample.Ewes(22);
        var plan = Plan(ewes, FeedingSample.Pen("North bay", 6, 4.8m, 11));
        Assert.Empty(plan.WithoutRoom);

        var pen = Assert.Single(plan.Pens);
        Assert.Equal(28.8m, pen.FloorThere);
        Assert.Equal(11m, pen.TroughNeeded);
        Assert.Equal(22 * 1.2667m, pen.FloorNeeded);
        Assert.Equal(22, pen.Capacity); // 28.8 / 1.267 = 22.7 by floor, 11 / 0.5 = 22 by trough
        Assert.Equal(ewes.Select(e => e.Ewe), pen.Ewes);
    }

    [Fact]
    public void A_shed_too_small_says_by_how_many_and_who()
    {
        var ewes = Enumerable.Range(1, 15).Select(i => FeedingSample.Ewe(i, 2, due: i % 15, weight: 60)).ToImmutableArray();
        var plan = Plan(ewes, PenFor("North bay", 7), PenFor("South bay", 3));
        Assert.Equal(5, plan.WithoutRoom.Length);
        Assert.Equal(10, plan.Pens.Sum(p => p.Ewes.Length));
        Assert.Equal(ewes[9..14].Select(e => e.Ewe), plan.WithoutRoom);
    }

    [Fact]
    public void Trough_can_be_what_is_short()
    {
        var plan = Plan(FeedingSample.Ewes(10), FeedingSample.Pen("North bay", 6, 4.8m, 4));
        Assert.Equal(2, plan.WithoutRoom.Length);
        Assert.Equal(8, plan.Pens[0].Capacity);
    }

    [Fact]
    public void Whole_groups_go_to_a_pen_each_where_they_can()
    {
        // Taken in order, singles would fill the large pen and twins would have to be split.
        ImmutableArray<EwePlan> ewes =
            [.. FeedingSample.Ewes(4, 1, 1, weight: 60), .. FeedingSample.Ewes(8, 2, 5, weight: 60), .. FeedingSample.Ewes(3, 3, 13, weight: 60)];
        var plan = Plan(ewes, PenFor("A", 8), PenFor("B", 4), PenFor("C", 3));
        Assert.Equal([2, 1, 3], plan.Pens.Select(p => Assert.Single(p.Ewes.Select(e => e.Scan).Distinct())));
        Assert.Empty(plan.WithoutRoom);
    }

    [Fact]
    public void A_group_is_split_only_when_it_must_be_and_then_by_due_date()
    {
        ImmutableArray<EwePlan> ewes =
        [
            .. FeedingSample.Ewes(3, 1, 1, weight: 60),
            .. Enumerable.Range(4, 7).Select(i => FeedingSample.Ewe(i, 2, due: 14 - i, weight: 60)),
        ];
        var plan = Plan(ewes, PenFor("A", 6), PenFor("B", 4));
        Assert.Empty(plan.WithoutRoom);

        var singles = plan.Pens.Where(p => p.Ewes.Any(e => e.Scan == 1)).ToList();
        Assert.Single(singles);
        var twins = plan.Pens.Select(p => p.Ewes.Where(e => e.Scan == 2).Select(e => DueOf(ewes, e)).ToList()).ToList();
        Assert.True(twins[0].Count == 0 || twins[1].Count == 0 || twins[0].Max() < twins[1].Min() || twins[1].Max() < twins[0].Min());
    }

    /// <summary>Three triplets fit beside the singles in A too, whose trough is then full: parted by a hurdle some could not eat.</summary>
    [Fact]
    public void Classes_share_the_pen_whose_trough_takes_a_hurdle()
    {
        ImmutableArray<EwePlan> ewes =
            [.. FeedingSample.Ewes(5, 1, 1, weight: 60), .. FeedingSample.Ewes(4, 2, 6, weight: 60), .. FeedingSample.Ewes(3, 3, 10, weight: 60)];
        var plan = Plan(ewes, PenFor("A", 8), FeedingSample.Pen("B", 9, 1.2m, (7 * 0.45m) + 0.6m));
        Assert.Equal(["1", "2 3"], plan.Pens.Select(p => string.Join(" ", p.Ewes.Select(e => e.Scan!.Value).Distinct().Order())));
        Assert.True(plan.Pens[1].HoldsHurdles(1));
        Assert.False(plan.Pens[1].HoldsHurdles(2));
    }

    [Fact]
    public void Of_ewes_due_on_one_day_those_with_most_lambs_have_the_room()
    {
        ImmutableArray<EwePlan> ewes = [FeedingSample.Ewe(1, 1, weight: 60), FeedingSample.Ewe(2, 3, weight: 60), FeedingSample.Ewe(3, 2, weight: 60)];
        var plan = Plan(ewes, PenFor("A", 2));

        Assert.Equal([3, 2], Assert.Single(plan.Pens).Ewes.Select(e => e.Scan!.Value));
        Assert.Equal("ZZ 0123456 00001", Assert.Single(plan.WithoutRoom).Tag);
    }

    /// <summary>Ewes of 60 and 90 kg want 1.2 and 1.4 m², 0.45 and 0.6 m of trough: 1.3 m² and 0.525 m on average.</summary>
    [Fact]
    public void Capacity_is_reckoned_for_the_average_ewe_in_lamb()
    {
        ImmutableArray<EwePlan> ewes =
        [
            FeedingSample.Ewe(1, weight: 60), FeedingSample.Ewe(2, weight: 90),
            FeedingSample.Ewe(3, litter: 0, weight: 120) with { Standing = Standing.Empty, WasToLamb = false, Due = null },
        ];
        Assert.Equal([20, 20], Plan(ewes, FeedingSample.Pen("A", 10, 2.6m), FeedingSample.Pen("B", 10.5m, 5, 10.5m)).Pens.Select(p => p.Capacity));

        // With none in lamb it is reckoned for the flock, and with no flock for 70 kg: 1.2667 m².
        Assert.Equal(10, Plan([FeedingSample.Ewe(1, litter: 0, weight: 90) with { Standing = Standing.Empty, WasToLamb = false, Due = null }], FeedingSample.Pen("A", 10, 1.4m)).Pens[0].Capacity);
        Assert.Equal(11, Plan([], FeedingSample.Pen("A", 10, 1.4m)).Pens[0].Capacity);
    }

    [Fact]
    public void Shorn_ewes_fit_where_woolly_ones_do_not()
    {
        var ewes = FeedingSample.Ewes(10, weight: 60);
        var flock = FeedingSample.Flock(ewes).WithPens(FeedingSample.Pen("North bay", 9, 1.2m, 4.5m));
        Assert.Single(Planned(flock, ewes).WithoutRoom);
        var shorn = flock with { Practice = flock.Practice with { Shear = Shearing.AtHousing } };
        Assert.Empty(Planned(shorn, ewes).WithoutRoom);
    }

    [Fact]
    public void Outdoors_without_pens_or_without_ewes_nobody_is_placed()
    {
        var ewes = FeedingSample.Ewes(5);
        var flock = FeedingSample.Flock(ewes).WithPens(PenFor("A", 5));
        var outdoors = Planned(flock with { Housing = flock.Housing with { Lambing = LambingPlace.Outdoors } }, ewes);
        Assert.Equal((0, 0), (outdoors.Pens.Length, outdoors.WithoutRoom.Length));

        var unpenned = Plan(ewes);
        Assert.Equal((0, 0), (unpenned.Pens.Length, unpenned.WithoutRoom.Length));

        var empty = Planned(flock, [ewes[0] with { Standing = Standing.Empty, WasToLamb = false, Due = null }]);
        Assert.Empty(Assert.Single(empty.Pens).Ewes);
    }

    [Fact]
    public void No_pen_is_over_full_and_every_ewe_is_in_one_pen_or_counted_out() =>
        AnyShed.Sample((ewes, pens) =>
        {
            var plan = Plan(ewes, [.. pens]);
            var placed = plan.Pens.SelectMany(p => p.Ewes).Select(e => e.Tag).ToList();
            return plan.Pens.All(p => p.FloorNeeded <= p.FloorThere && (p.TroughThere is null || p.TroughNeeded <= p.TroughThere))
                && placed.Count == placed.Distinct().Count()
                && placed.Count + plan.WithoutRoom.Length == ewes.Length;
        });

    [Fact]
    public void The_same_flock_gives_the_same_pens() =>
        AnyShed.Sample((ewes, pens) =>
            Plan(ewes, [.. pens]).Pens.SelectMany(p => p.Ewes).SequenceEqual(Plan(ewes, [.. pens]).Pens.SelectMany(p => p.Ewes)), iter: 30);

    /// <summary>Fewest parts by trying every pen for every whole group.</summary>
    [Fact]
    public void No_group_is_split_when_some_way_keeps_them_all_whole() =>
        AnyShed.Sample((ewes, pens) =>
        {
            var classes = ewes.GroupBy(e => FedEwe.KindOf(e.Litter)).Select(g => g.ToList()).ToList();
            var rooms = pens.Select(PenRoom.Of).ToImmutableArray();
            if (!AnyWholeWay(classes, rooms, 0))
            {
                return true;
            }

            var plan = Plan(ewes, [.. pens]);
            return classes.All(c => plan.Pens.Count(p => p.Ewes.Any(e => FedEwe.KindOf(e.Scan!.Value) == FedEwe.KindOf(c[0].Litter))) == 1);
        });

    /// <summary>A shed a little too small for a large flock is the usual trouble, and is no reason to stir the litters together:
    /// with three litters in six pens, nine ewes in ten stand with their like.</summary>
    [Fact]
    public void A_large_flock_in_a_tight_shed_stays_sorted()
    {
        var ewes = Enumerable.Range(1, 300)
            .Select(i => FeedingSample.Ewe(i, 1 + (i % 3), due: i % 15, weight: 60 + (i * 37 % 31)))
            .ToImmutableArray();
        var plan = Plan(ewes, [.. Enumerable.Range(1, 6).Select(p => FeedingSample.Pen($"Pen {p}", 12, 5))]);

        Assert.InRange(plan.WithoutRoom.Length, 12, 30); // 360 m² for 300 ewes at 1.2 to 1.4 m²
        Assert.All(plan.Pens, p => Assert.True(p.Ewes.GroupBy(e => FedEwe.KindOf(e.Scan!.Value)).Max(g => g.Count()) >= 0.9 * p.Ewes.Length));
    }

    private static bool AnyWholeWay(List<List<EwePlan>> classes, ImmutableArray<PenRoom> pens, int next)
    {
        if (next == classes.Count)
        {
            return true;
        }

        for (var p = 0; p < pens.Length; p++)
        {
            var left = pens[p];
            var fits = true;
            foreach (var need in classes[next].Select(e => RoomNeeded.For(e.Ewe.Weight!.Value.Kilograms, Ground.Lowland, false)))
            {
                fits &= left.Holds(need);
                left = left.Less(need);
            }

            if (fits && AnyWholeWay(classes, pens.SetItem(p, left), next + 1))
            {
                return true;
            }
        }

        return false;
    }

    private static Gen<(ImmutableArray<EwePlan> Ewes, ImmutableArray<Pen> Pens)> AnyShed =>
        from drawn in Gen.Select(Gen.Int[1, 4], Gen.Int[0, 15], Gen.Int[50, 95]).Array[1, 24]
        from pens in Gen.Select(Gen.Int[20, 80], Gen.Int[10, 40], Gen.Bool).Array[1, 4]
        select (
            drawn.Select((d, i) => FeedingSample.Ewe(i + 1, d.Item1, due: d.Item2, weight: d.Item3)).ToImmutableArray(),
            pens.Select((p, i) => FeedingSample.Pen($"Pen {i + 1}", p.Item1 / 10m, p.Item2 / 10m, p.Item3 ? p.Item1 / 10m : null))
                .ToImmutableArray());

    /// <summary>Three ewes of 1.2 m² on 5 m², likely to lamb on 9, 13 and 17 January: the second lambing would make 2.2 + 2.2 + 1.2 m².</summary>
    [Fact]
    public void Ewes_with_lambs_want_more_floor_until_they_are_turned_out()
    {
        ImmutableArray<EwePlan> ewes = [.. Enumerable.Range(0, 3).Select(i => FeedingSample.Ewe(i + 1, 2, due: 4 * i, weight: 60))];

        Assert.Equal(new RoomWithLambs(3, 2, new(2027, 1, 13), 4), Plan(ewes, FeedingSample.Pen("A", 5, 1)).WithLambs);
        Assert.Equal(new RoomWithLambs(3, 3, null, null), Plan(ewes, FeedingSample.Pen("A", 6.6m, 1)).WithLambs);
        Assert.Equal(new RoomWithLambs(3, 1, new(2027, 1, 9), null), Plan(ewes, FeedingSample.Pen("A", 3.6m, 1)).WithLambs);
        Assert.Null(HousingPlan.None.WithLambs);

        // As much floor in two pens; and a pen that not one ewe fits.
        Assert.Equal(new RoomWithLambs(3, 2, new(2027, 1, 13), 4), Plan(ewes, FeedingSample.Pen("A", 2.6m, 1), FeedingSample.Pen("B", 2.4m, 1)).WithLambs);
        Assert.Null(Plan(ewes, FeedingSample.Pen("A", 1, 1)).WithLambs);
    }

    /// <summary>Two ewes, 125 days apart, where there is floor for one with lambs: 120 days is the longest the file may keep her in.</summary>
    [Fact]
    public void Ewes_with_lambs_are_kept_in_no_longer_than_the_file_may_say() => Assert.Equal(
        new RoomWithLambs(2, 1, new(2027, 5, 14), 120),
        Plan([FeedingSample.Ewe(1, weight: 60), FeedingSample.Ewe(2, due: 125, weight: 60)], FeedingSample.Pen("A", 3.4m, 1)).WithLambs);

    /// <summary>Ewes of 60 and 90 kg want 1.2 and 1.4 m²: the two heavy ones fill B together, whatever they carry, and then the singles of 60 kg need not be parted.</summary>
    [Fact]
    public void In_a_shed_filled_by_size_alone_like_still_stands_with_like()
    {
        ImmutableArray<EwePlan> ewes =
        [
            FeedingSample.Ewe(1, 1, weight: 60), FeedingSample.Ewe(2, 1, weight: 90), FeedingSample.Ewe(3, 1, weight: 60),
            FeedingSample.Ewe(4, 2, weight: 90), FeedingSample.Ewe(5, 2, weight: 60),
        ];
        var plan = Plan(ewes, FeedingSample.Pen("A", 2.4m, 1), FeedingSample.Pen("B", 2.8m, 1), FeedingSample.Pen("C", 1.2m, 1));
        Assert.Empty(plan.WithoutRoom);
        Assert.Equal(["1 1", "1 2", "2"], plan.Pens.Select(p => string.Join(' ', p.Ewes.Select(e => e.Scan))));
    }

    /// <summary>Classes by kind, whenever they are due.</summary>
    private static HousingPlan Planned(Flock flock, ImmutableArray<EwePlan> ewes)
    {
        var fed = FedEwe.Of(flock, ewes, _ => null);
        return HousingPlanner.Plan(flock, ewes, fed, [.. fed.GroupBy(e => e.Kind).OrderBy(g => g.Key).Select(g => new FeedClass(g.Key, [.. g], []))]).Plan;
    }

    private static HousingPlan Plan(ImmutableArray<EwePlan> ewes, params ImmutableArray<Pen> pens) =>
        Planned(FeedingSample.Flock(ewes).WithPens(pens), ewes);

    private static NodaTime.LocalDate DueOf(ImmutableArray<EwePlan> ewes, Ewe ewe) =>
        ewes.Single(e => e.Ewe.Tag == ewe.Tag).Due!.FirstPossible;
}
