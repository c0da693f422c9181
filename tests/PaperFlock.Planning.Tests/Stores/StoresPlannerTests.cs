using NodaTime;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;
using PaperFlock.Planning.Stores;
using PaperFlock.Planning.Tests.Feeding;

namespace PaperFlock.Planning.Tests.Stores;

public sealed class StoresPlannerTests
{
    private static readonly LocalDate FeedFrom = new(2026, 11, 23);
    private static readonly LocalDate Housed = FeedingSample.FirstDue.PlusDays(-7);
    private static readonly ImmutableArray<EwePlan> SixTwins = FeedingSample.Ewes(6);

    /// <summary>The last any of them is likely to lamb, and ten days with lambs after it.</summary>
    private static readonly LocalDate LastLikely = FeedingSample.FirstDue.PlusDays(10);

    [Fact]
    public void Concentrate_is_the_chart_until_she_is_likely_to_have_lambed_and_the_ration_with_lambs_until_turnout()
    {
        var flock = FedFlock.Stepped(SixTwins);
        var plan = FedFlock.Plan(flock, SixTwins, Housed);
        var chart = plan.Chart(FeedKind.Twins);
        var inLamb = Enumerable.Range(0, 53).Sum(d => chart.On(FeedFrom.PlusDays(d))!.KgPerEwePerDay);
        var lambed = Enumerable.Range(0, 10).Sum(d => plan.Lambed.First(r => r.Lambs == 2 && r.DayFrom <= d && (r.DayTo ?? d) >= d).KgPerDay ?? chart.On(LastLikely)!.KgPerEwePerDay);

        var nuts = Item(flock, StoreKind.Concentrate);
        Assert.Equal(6 * (inLamb + lambed), nuts.Kg);
        Assert.Equal((StorePack.Bag, 20m, "Ewe nuts"), (nuts.Pack, nuts.PackKg, nuts.Name));
        Assert.Equal((int)Math.Ceiling(nuts.Kg!.Value * 1.1m / 20), nuts.Packs);
        Assert.Equal((FeedFrom, LastLikely.PlusDays(10)), (nuts.NeededFrom, nuts.NeededTo));
        Assert.Equal(nuts.Kg, nuts.Weeks.Sum(w => w.Amount));
    }

    [Fact]
    public void Weeks_begin_on_the_keepers_own_day()
    {
        var flock = FeedingSample.Flock(SixTwins);
        flock = flock with { Print = flock.Print with { WeekStarts = IsoDayOfWeek.Sunday } };
        Assert.All(Item(flock, StoreKind.Concentrate).Weeks, w => Assert.Equal(IsoDayOfWeek.Sunday, w.WeekBeginning.DayOfWeek));
    }

    /// <summary>In lamb 1.5 % of live weight as dry matter (Hybu Cig Cymru), 70 kg x 0.015 / 0.85; in milk what 3.5 % leaves beside the nuts.</summary>
    [Fact]
    public void Hay_is_what_they_can_eat_as_it_comes_off_the_bale()
    {
        var flock = FedFlock.Stepped(SixTwins, f => f with { ForageOnly = true });
        var hay = Item(flock, StoreKind.Forage);
        Assert.Equal(6 * ((53 * 1.05) + (10 * 2.45)) / 0.85, (double)hay.Kg!.Value, 1e-6);
        Assert.Equal((StorePack.Bale, 0.015m), (hay.Pack, hay.Rate));
        Assert.DoesNotContain(Plan(flock), i => i.Kind == StoreKind.Concentrate);
    }

    [Fact]
    public void Ewes_not_in_lamb_eat_hay_beside_the_others()
    {
        var empty = FeedingSample.Ewe(9, litter: 0) with { Standing = Standing.Empty, WasToLamb = false, Due = null };
        var (without, with) = (Item(FedFlock.Stepped(SixTwins), StoreKind.Forage), Item(FedFlock.Stepped([.. SixTwins, empty]), StoreKind.Forage, [.. SixTwins, empty]));
        Assert.Equal(63 * 1.05 / 0.85, (double)(with.Kg - without.Kg)!.Value, 1e-6);
    }

    [Fact]
    public void Forage_that_is_not_baled_is_not_counted_in_packs_and_grass_is_not_bought()
    {
        var silage = Item(FeedingSample.Flock(SixTwins).WithFeeds(f => f with
        {
            Forage = f.Forage with { Kind = ForageKind.Silage, DryMatter = 0.25m, Bale = null },
        }), StoreKind.Forage);
        Assert.Equal((null, null), (silage.Packs, silage.Pack));

        var grass = FeedingSample.Flock(SixTwins).WithFeeds(f => f with { Forage = f.Forage with { Kind = ForageKind.Grass } });
        Assert.Equal([StoreKind.Concentrate, StoreKind.Bedding, StoreKind.Water], Plan(grass).Select(i => i.Kind));
    }

    [Fact]
    public void Nuts_that_push_out_hay_leave_it_in_the_barn()
    {
        var flock = FeedingSample.Flock(SixTwins);
        var less = flock.WithFeeds(f => f with { Forage = f.Forage with { SubstitutionRate = 0.5m } });
        Assert.True(Item(less, StoreKind.Forage).Kg < Item(flock, StoreKind.Forage).Kg);
    }

    /// <summary>53 days at 14 a bucket is 4 rounds; at 20 ewes a bucket the 21st wants one more.</summary>
    [Theory]
    [InlineData(1, 1)]
    [InlineData(20, 1)]
    [InlineData(21, 2)]
    [InlineData(40, 2)]
    public void Buckets_are_counted_by_ewes_and_by_days(int count, int atOnce)
    {
        var ewes = FeedingSample.Ewes(count);
        var flock = FeedingSample.Flock(ewes).WithFeeds(f => f with
        {
            Buckets = new Buckets("Mineral bucket", new Mass(22), 20, 14),
            Margin = 0,
        });
        var buckets = Item(flock, StoreKind.Buckets, ewes);
        Assert.Equal((null, 4 * atOnce, StorePack.Bucket, 22m), (buckets.Kg, buckets.Packs, buckets.Pack, buckets.PackKg));
        Assert.Equal([atOnce, 0, atOnce, 0, atOnce, 0, atOnce], buckets.Weeks.Select(w => w.Amount));
        Assert.Equal(LastLikely, buckets.NeededTo);

        // A tenth more of 4 or 8 is a whole bucket more.
        Assert.Equal((4 * atOnce) + 1, Item(flock.WithFeeds(f => f with { Margin = 0.1m }), StoreKind.Buckets, ewes).Packs);
    }

    /// <summary>Irish Farmers Journal, "Cut workload with advanced planning": 7 kg a lowland ewe a week, 4 to 5 a hill ewe.</summary>
    [Theory]
    [InlineData(Ground.Lowland, 7)]
    [InlineData(Ground.Hill, 5)]
    public void Bedding_runs_from_housing_to_turnout(Ground ground, int perWeek)
    {
        var straw = Item(FeedingSample.Flock(SixTwins).WithFeeds(f => f with { Ground = ground }), StoreKind.Bedding);
        Assert.Equal(28 * 6 * perWeek / 7.0, (double)straw.Kg!.Value, 1e-9); // 28 December to 24 January
        Assert.Equal((Housed, LastLikely.PlusDays(10)), (straw.NeededFrom, straw.NeededTo));
        Assert.Null(straw.Packs);
    }

    [Fact]
    public void Ewes_that_stay_out_want_no_bedding()
    {
        var flock = FeedingSample.Flock(SixTwins);
        flock = flock with { Housing = flock.Housing with { Lambing = LambingPlace.Outdoors } };
        Assert.DoesNotContain(Plan(flock), i => i.Kind == StoreKind.Bedding);
        Assert.DoesNotContain(Plan(FeedingSample.Flock(SixTwins), SixTwins, housed: null), i => i.Kind == StoreKind.Bedding);
    }

    /// <summary>NRC (2007), by way of a United States extension article: the upper ends for 59, 73 and 91 kg. Between and above by
    /// the slope.</summary>
    [Theory]
    [InlineData(45, 6.2)]
    [InlineData(59, 6.2)]
    [InlineData(66, 6.7)]
    [InlineData(73, 7.2)]
    [InlineData(91, 8.5)]
    [InlineData(109, 9.8)]
    public void Water_follows_the_table(int weight, double litres) => Assert.Equal(litres, (double)Water.LitresADay(weight), 1e-9);

    /// <summary>NRC (2007) by Capital Journal: a ewe of 73 kg in milk drinks 2.36 gallons, so four drink 35.7 litres; to a tenth.</summary>
    [Fact]
    public void Ewes_in_milk_drink_more() => Assert.Equal(35.7, (double)(4 * Water.LitresInMilk(73)), 0.1);

    [Fact]
    public void Water_is_counted_and_never_ordered()
    {
        var ewes = FeedingSample.Ewes(10, weight: 73);
        var water = Item(FeedingSample.Flock(ewes), StoreKind.Water, ewes);
        Assert.Equal((null, null, null), (water.Kg, water.Packs, water.OrderBy));
        Assert.Equal(7 * 72m, water.Weeks[0].Amount);
        Assert.Equal(89.3m, water.Rate);
    }

    [Theory]
    [InlineData(7, new int[0], 16)]
    [InlineData(7, new[] { 16 }, 15)]
    [InlineData(7, new[] { 15, 16 }, 14)]
    [InlineData(7, new[] { 15, 17 }, 16)] // only a closed ordering day moves it
    [InlineData(0, new int[0], 23)]
    public void Order_days_fall_back_past_closed_days(int lead, int[] closedInNovember, int orderOn)
    {
        var flock = FeedingSample.Flock(SixTwins).WithFeeds(f => f with { OrderLeadDays = lead });
        flock = flock with
        {
            OwnJobs = [.. closedInNovember.Select(d => OwnJob("Feed merchant closed", new LocalDate(2026, 11, d), closed: true))],
        };
        Assert.Equal(new LocalDate(2026, 11, orderOn), Item(flock, StoreKind.Concentrate).OrderBy);
    }

    [Fact]
    public void A_job_that_is_not_a_closing_moves_nothing()
    {
        var flock = FeedingSample.Flock(SixTwins) with
        {
            OwnJobs = [OwnJob("Market", new LocalDate(2026, 11, 16), closed: false)],
        };
        Assert.Equal(new LocalDate(2026, 11, 16), Item(flock, StoreKind.Concentrate).OrderBy);
    }

    [Fact]
    public void Nobody_in_lamb_needs_nothing() => Assert.Empty(Plan(FeedingSample.Flock(), []));

    private static OwnJob OwnJob(string title, LocalDate on, bool closed) =>
        new(title, on, null, null, false, closed, SourceSpan.WholeFile);

    private static StoreItem Item(Flock flock, StoreKind kind, ImmutableArray<EwePlan>? ewes = null) =>
        Assert.Single(Plan(flock, ewes), i => i.Kind == kind);

    private static ImmutableArray<StoreItem> Plan(Flock flock, ImmutableArray<EwePlan>? ewes = null) =>
        Plan(flock, ewes ?? SixTwins, Housed);

    private static ImmutableArray<StoreItem> Plan(Flock flock, ImmutableArray<EwePlan> ewes, LocalDate? housed) =>
        StoresPlanner.Plan(flock, FedFlock.Plan(flock, ewes, housed), FedEwe.Of(flock, ewes, _ => housed));
}
