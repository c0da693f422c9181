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

    /// <summary>Marked on 14 August and likely on 8 January, 12 January the last day for 9 in 10; turned out with her lambs ten days after.</summary>
    [Theory]
    [InlineData(null, 2, null, null, "2027-01-22")]
    [InlineData("2027-01-06", 2, null, null, "2027-01-15")]
    [InlineData("2027-01-06", 0, null, null, "2027-01-05")]
    [InlineData(null, 2, "2026-12-03", null, "2026-12-02")]
    [InlineData(null, 2, "2026-12-03", "2026-12-10", "2026-12-02")]
    [InlineData(null, 2, null, "2026-12-10", "2026-12-09")]
    public void A_ewe_is_reckoned_with_until_she_is_turned_out_or_lost(string? lambed, int alive, string? lost, string? gone, string to)
    {
        var plan = Season(Marked("Bracken") with
        {
            Lambed = lambed is null ? null : Sample.Day(lambed),
            Lambing = LambingResult.Unknown with { Alive = lambed is null ? null : alive },
            LostLambs = lost is null ? null : Sample.Day(lost),
            Gone = gone is null ? null : new Loss(Sample.Day(gone), LossReason.Died),
        });
        Assert.Equal(Sample.Day(to), plan.Stores.Single(s => s.Kind == StoreKind.Water).NeededTo);
    }

    /// <summary>Whenever she is one of those not in lamb she eats 1.5 % of her 72 kg, as she did before (Hybu Cig Cymru): once a day, and to the last day of the others.</summary>
    [Theory]
    [InlineData("2026-12-03", null)]
    [InlineData(null, "2027-01-06")]
    public void Hay_for_a_ewe_without_lambs_is_counted_once(string? lost, string? lambedDead)
    {
        var without = Season(Marked("Fern"));
        var with = Season(Marked("Fern"), Marked("Bracken") with
        {
            LostLambs = lost is null ? null : Sample.Day(lost),
            Lambed = lambedDead is null ? null : Sample.Day(lambedDead),
            Lambing = LambingResult.Unknown with { Alive = lambedDead is null ? null : 0 },
        });
        var (alone, both) = (without.Stores.Single(s => s.Kind == StoreKind.Forage), with.Stores.Single(s => s.Kind == StoreKind.Forage));
        var days = Period.DaysBetween(both.NeededFrom, both.NeededTo) + 1;
        Assert.Equal(days * 72 * 0.015 / 0.85, (double)(both.Kg - alone.Kg)!.Value, 1e-6);
    }

    /// <summary>A triplet is fed before a single; the empty ewe eats from the first day of the one to the last of the other.</summary>
    [Fact]
    public void Ewes_not_in_lamb_eat_as_long_as_any_other_is_fed()
    {
        ImmutableArray<EwePlan> fed = [FeedingSample.Ewe(1, litter: 3), FeedingSample.Ewe(2, litter: 1, due: 21)];
        var empty = FeedingSample.Ewe(9, litter: 0) with { Standing = Standing.Empty, WasToLamb = false, Due = null };
        var flock = FedFlock.Stepped([.. fed, empty]);
        var from = FedFlock.Plan(flock, fed, Housed).Charts.Min(c => c.Start);
        var days = Period.DaysBetween(from, LastLikely.PlusDays(21 + 10)) + 1;
        Assert.Equal(days * 1.05 / 0.85, (double)(Item(flock, StoreKind.Forage, [.. fed, empty]).Kg - Item(flock, StoreKind.Forage, fed).Kg)!.Value, 1e-6);
    }

    /// <summary>Her ration rises that morning; until the ration with lambs begins she goes on with what she had the evening before.</summary>
    [Fact]
    public void On_the_day_she_lambs_she_has_what_she_had_the_day_before()
    {
        var chart = FedFlock.Plan(FeedingSample.Flock(SixTwins), SixTwins, Housed).Chart(FeedKind.Twins);
        var rise = chart.Rows.Last(r => chart.On(r.From.PlusDays(-1)) is { } before && before.KgPerEwePerDay < r.KgPerEwePerDay).From;
        ImmutableArray<EwePlan> ewes = [SixTwins[0] with { Standing = Standing.Lambed, Ewe = SixTwins[0].Ewe with { Lambed = rise } }, .. SixTwins[1..]];
        var flock = FeedingSample.Flock(ewes);
        var fed = new EweDays(flock, FedFlock.Plan(flock, ewes, Housed), FedEwe.Of(flock, ewes, _ => Housed)[0]);
        Assert.Equal(chart.On(rise.PlusDays(-1))!.KgPerEwePerDay, fed.Concentrate(rise));
        Assert.NotEqual(chart.On(rise)!.KgPerEwePerDay, fed.Concentrate(rise));
    }

    /// <summary>Half a kilogram of hay left for each of nuts, both as dry matter: nuts are 0.86 of it.</summary>
    [Fact]
    public void What_nuts_push_out_is_reckoned_as_dry_matter()
    {
        var flock = FeedingSample.Flock(SixTwins).WithFeeds(f => f with { Forage = f.Forage with { SubstitutionRate = 0.5m } });
        var ewe = new EweDays(flock, FedFlock.Plan(flock, SixTwins, Housed), FedEwe.Of(flock, SixTwins, _ => Housed)[0]);
        var nuts = ewe.Concentrate(FeedingSample.FirstDue);
        Assert.True(nuts > 0);
        Assert.Equal(1.05 - (0.5 * 0.86 * (double)nuts), (double)ewe.Forage(FeedingSample.FirstDue), 1e-9);
    }

    [Fact]
    public void The_intake_of_forage_is_that_of_the_file_where_it_has_one() =>
        Assert.Equal(0.018m, Item(FeedingSample.Flock(SixTwins).WithFeeds(f => f with { Forage = f.Forage with { Intake = 0.018m } }), StoreKind.Forage).Rate);

    /// <summary>53 days from the first of the chart to the last any is likely to lamb: at 13 a bucket the fifth is set out on the last.</summary>
    [Fact]
    public void A_bucket_is_wanted_on_the_last_day_too()
    {
        var flock = FeedingSample.Flock(SixTwins).WithFeeds(f => f with { Buckets = new Buckets("Mineral bucket", new Mass(22), 20, 13), Margin = 0 });
        Assert.Equal(5, Item(flock, StoreKind.Buckets).Packs);

        // One due three weeks later wants two more for herself.
        ImmutableArray<EwePlan> later = [.. SixTwins, FeedingSample.Ewe(7, due: 21)];
        Assert.Equal(LastLikely.PlusDays(21), Item(FeedingSample.Flock(later).WithFeeds(_ => flock.Feeds), StoreKind.Buckets, later).NeededTo);
    }

    /// <summary>Of 21 ewes one is sold after the first round of two buckets: one each time is enough for the others.</summary>
    [Fact]
    public void A_ewe_that_has_gone_licks_no_bucket()
    {
        var ewes = FeedingSample.Ewes(21);
        var first = Item(FeedingSample.Flock(ewes).WithFeeds(f => f with { Buckets = new Buckets("Mineral bucket", new Mass(22), 20, 14), Margin = 0 }), StoreKind.Buckets, ewes).NeededFrom;
        ImmutableArray<EwePlan> less = [ewes[0] with { Ewe = ewes[0].Ewe with { Gone = new Loss(first.PlusDays(3), LossReason.Sold) } }, .. ewes[1..]];
        var buckets = Item(FeedingSample.Flock(less).WithFeeds(f => f with { Buckets = new Buckets("Mineral bucket", new Mass(22), 20, 14), Margin = 0 }), StoreKind.Buckets, less);
        Assert.Equal([2, 0, 1, 0, 1, 0, 1], buckets.Weeks.Select(w => w.Amount));
    }

    [Fact]
    public void Nothing_is_bought_for_a_ewe_that_lambed_or_went_before_her_chart_began()
    {
        var gone = Season(Marked("Bracken") with { Gone = new Loss(Sample.Day("2026-11-01"), LossReason.Sold) });
        Assert.Empty(gone.Stores);
        var lambed = Season(Marked("Bracken") with { Lambed = Sample.Day("2026-11-01"), Lambing = LambingResult.Unknown with { Alive = 2 } });
        Assert.DoesNotContain(lambed.Stores, s => s.Kind == StoreKind.Buckets);
    }

    /// <summary>A ewe of 73 kg drinks 7.2 litres in lamb and 8.93 in milk (NRC 2007, by way of two articles), in milk from the day she lambs.</summary>
    [Fact]
    public void Water_is_that_of_a_ewe_in_milk_from_the_day_she_lambs()
    {
        var water = Item(FeedingSample.Flock(FeedingSample.Ewes(1, weight: 73)), StoreKind.Water, FeedingSample.Ewes(1, weight: 73));
        Assert.Equal((53 * 7.2m) + (10 * 8.93m), water.Weeks.Sum(w => w.Amount));
        Assert.Equal((FeedFrom, LastLikely.PlusDays(10)), (water.NeededFrom, water.NeededTo));
    }

    private static Ewe Marked(string name) => Sample.Ewe(name, marks: "2026-08-14", scan: 2);

    private static SeasonPlan Season(params Ewe[] ewes) => SeasonPlanner.Plan(Sample.Flock(ewes), Sample.Day("2027-02-01"));

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
