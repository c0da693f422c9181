using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;
using PaperFlock.Planning.Stores;

namespace PaperFlock.Planning.Tests.Stores;

public sealed class StoresPlannerTests
{
    private static readonly LocalDate FeedFrom = new(2026, 11, 23);
    private static readonly LocalDate Housed = FeedingSample.FirstDue.PlusDays(-7);
    private static readonly ImmutableArray<EwePlan> SixTwins = FeedingSample.Ewes(6);

    [Fact]
    public void Concentrate_is_the_charts_added_up_with_the_last_week_cut_at_the_last_due_date()
    {
        // 42 days before and 11 from the first due date to the last, both included: 53 days of 6 ewes at two pounds.
        var nuts = Item(FeedingSample.Flock(SixTwins), "Ewe nuts");
        Assert.Equal(53 * 6 * 0.90718474m, nuts.Kg);
        Assert.Equal(16, nuts.Packs); // 288.5 kg, a tenth more is 317.3, in bags of 20
        Assert.Equal(("bag", 20m), (nuts.PackName, nuts.PackKg));
        Assert.Equal((FeedFrom, new LocalDate(2027, 1, 14)), (nuts.NeededFrom, nuts.NeededTo));
        Assert.Equal(nuts.Kg, nuts.Weeks.Sum(w => w.Amount));
        Assert.Equal(FeedFrom, nuts.Weeks[0].WeekBeginning);
        Assert.Equal(8, nuts.Weeks.Length);
        Assert.Equal(4 * 6 * 0.90718474m, nuts.Weeks[^1].Amount);
    }

    [Fact]
    public void Weeks_begin_on_the_keepers_own_day()
    {
        var flock = FeedingSample.Flock(SixTwins);
        flock = flock with { Print = flock.Print with { WeekStarts = IsoDayOfWeek.Sunday } };
        var weeks = Item(flock, "Ewe nuts").Weeks;
        Assert.Equal(new LocalDate(2026, 11, 22), weeks[0].WeekBeginning);
        Assert.Equal(6 * 6 * 0.90718474m, weeks[0].Amount); // Monday to Saturday
        Assert.All(weeks, w => Assert.Equal(IsoDayOfWeek.Sunday, w.WeekBeginning.DayOfWeek));
    }

    [Fact]
    public void Groups_are_added_together()
    {
        var ewes = SixTwins.AddRange(FeedingSample.Ewes(4, litter: 1, from: 7, due: 10));
        var nuts = Item(FeedingSample.Flock(ewes), "Ewe nuts", ewes);
        Assert.Equal((53 * 6 * 0.90718474m) + (53 * 4 * 0.45359237m), nuts.Kg);
        Assert.Equal(new LocalDate(2027, 1, 24), nuts.NeededTo);
    }

    /// <summary>1.5 % of live weight as dry matter: Hybu Cig Cymru, "Feeding ewes in late pregnancy". 70 kg x 0.015 / 0.85.</summary>
    [Fact]
    public void Hay_is_what_they_can_eat_as_it_comes_off_the_bale()
    {
        var hay = Item(FeedingSample.Flock(SixTwins), "Hay");
        Assert.Equal(53 * 6 * 1.05 / 0.85, (double)hay.Kg!.Value, 1e-6);
        Assert.Equal(22, hay.Packs); // 392.8 kg, a tenth more is 432.1, in bales of 20
        Assert.Equal("bale", hay.PackName);
    }

    [Fact]
    public void Forage_that_is_not_baled_is_not_counted_in_packs_and_grass_is_not_bought()
    {
        var silage = Item(FeedingSample.Flock(SixTwins).WithFeeds(f => f with
        {
            Forage = f.Forage with { Kind = ForageKind.Silage, DryMatter = 0.25m, Bale = null },
        }), "Silage");
        Assert.Equal((null, ""), (silage.Packs, silage.PackName));
        Assert.Equal(53 * 6 * 0.98 / 0.25, (double)silage.Kg!.Value, 1e-6);

        var grass = FeedingSample.Flock(SixTwins).WithFeeds(f => f with { Forage = f.Forage with { Kind = ForageKind.Grass } });
        Assert.Equal(["Ewe nuts", "Bedding straw", "Water"], Plan(grass).Select(i => i.Item));
    }

    [Fact]
    public void Nuts_that_push_out_hay_leave_it_in_the_barn()
    {
        var flock = FeedingSample.Flock(SixTwins).WithFeeds(f => f with { Forage = f.Forage with { SubstitutionRate = 0.5m } });
        Assert.Equal(53 * 6 * (1.05 - (0.5 * 0.90718474 * 0.86)) / 0.85, (double)Item(flock, "Hay").Kg!.Value, 1e-6);
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
        var buckets = Item(flock, "Mineral bucket", ewes);
        Assert.Equal((null, 4 * atOnce, "bucket", 22m), (buckets.Kg, buckets.Packs, buckets.PackName, buckets.PackKg));
        Assert.Equal([atOnce, 0, atOnce, 0, atOnce, 0, atOnce], buckets.Weeks.Select(w => w.Amount));
        Assert.Equal(new LocalDate(2027, 1, 14), buckets.NeededTo);

        // A tenth more of 4 or 8 is a whole bucket more.
        Assert.Equal((4 * atOnce) + 1, Item(flock.WithFeeds(f => f with { Margin = 0.1m }), "Mineral bucket", ewes).Packs);
    }

    /// <summary>Irish Farmers Journal, "Cut workload with advanced planning": 7 kg a lowland ewe a week, 4 to 5 a hill ewe.</summary>
    [Theory]
    [InlineData(Ground.Lowland, 7)]
    [InlineData(Ground.Hill, 5)]
    public void Bedding_runs_from_housing_to_the_last_due_date(Ground ground, int perWeek)
    {
        var straw = Item(FeedingSample.Flock(SixTwins).WithFeeds(f => f with { Ground = ground }), "Bedding straw");
        Assert.Equal(18 * 6 * perWeek / 7.0, (double)straw.Kg!.Value, 1e-9); // 28 December to 14 January
        Assert.Equal((Housed, new LocalDate(2027, 1, 14)), (straw.NeededFrom, straw.NeededTo));
        Assert.Null(straw.Packs);
    }

    [Fact]
    public void Ewes_that_stay_out_want_no_bedding()
    {
        var flock = FeedingSample.Flock(SixTwins);
        flock = flock with { Housing = flock.Housing with { Lambing = LambingPlace.Outdoors } };
        Assert.DoesNotContain(Plan(flock), i => i.Item == "Bedding straw");
        Assert.DoesNotContain(Plan(FeedingSample.Flock(SixTwins), SixTwins, housed: null), i => i.Item == "Bedding straw");
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

    [Fact]
    public void Water_is_counted_and_never_ordered()
    {
        var ewes = FeedingSample.Ewes(10, weight: 73);
        var water = Item(FeedingSample.Flock(ewes), "Water", ewes);
        Assert.Equal((null, null, null), (water.Kg, water.Packs, water.OrderBy));
        Assert.Equal(7 * 72m, water.Weeks[0].Amount);
        Assert.StartsWith("up to 72 litres a day", water.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void Water_is_said_by_the_day_on_which_most_is_drunk()
    {
        // The twins drink from 23 November, the singles from 22 December on; only till 14 January do both.
        var ewes = FeedingSample.Ewes(10, weight: 73).AddRange(FeedingSample.Ewes(5, litter: 1, from: 11, due: 29, weight: 73));
        Assert.StartsWith("up to 108 litres a day", Item(FeedingSample.Flock(ewes), "Water", ewes).Basis, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(FeedMethod.PerLamb, "so much for each lamb carried")]
    [InlineData(FeedMethod.EnergyBalance, "energy balance")]
    public void Concentrate_says_by_which_method_it_was_added_up(FeedMethod method, string words) =>
        Assert.Contains(words, Item(FeedingSample.Flock(SixTwins).WithFeeds(f => f with { Method = method }), "Ewe nuts").Basis, StringComparison.Ordinal);

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
        Assert.Equal(new LocalDate(2026, 11, orderOn), Item(flock, "Ewe nuts").OrderBy);
    }

    [Fact]
    public void A_job_that_is_not_a_closing_moves_nothing()
    {
        var flock = FeedingSample.Flock(SixTwins) with
        {
            OwnJobs = [OwnJob("Market", new LocalDate(2026, 11, 16), closed: false)],
        };
        Assert.Equal(new LocalDate(2026, 11, 16), Item(flock, "Ewe nuts").OrderBy);
    }

    [Fact]
    public void Forage_that_is_enough_by_itself_leaves_no_nuts_to_buy()
    {
        var ewes = FeedingSample.Ewes(3, litter: 1);
        var flock = FeedingSample.Flock(ewes).WithFeeds(f => f with
        {
            Method = FeedMethod.EnergyBalance,
            Forage = f.Forage with { Energy = 12, Intake = 0.02m },
        });
        Assert.Equal(["Hay", "Bedding straw", "Water"], Plan(flock, ewes).Select(i => i.Item));
    }

    [Fact]
    public void Nobody_in_lamb_needs_nothing() => Assert.Empty(Plan(FeedingSample.Flock(), []));

    private static OwnJob OwnJob(string title, LocalDate on, bool closed) =>
        new(title, on, null, null, false, closed, SourceSpan.WholeFile);

    private static StoreItem Item(Flock flock, string name, ImmutableArray<EwePlan>? ewes = null) =>
        Assert.Single(Plan(flock, ewes), i => i.Item == name);

    private static ImmutableArray<StoreItem> Plan(Flock flock, ImmutableArray<EwePlan>? ewes = null) =>
        Plan(flock, ewes ?? SixTwins, Housed);

    private static ImmutableArray<StoreItem> Plan(Flock flock, ImmutableArray<EwePlan> ewes, LocalDate? housed)
    {
        var (groups, _) = TroughGroups.Plan(flock, ewes, _ => housed, HousingPlan.None);
        return StoresPlanner.Plan(flock, groups, _ => housed);
    }
}
