using NodaTime;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests;

/// <summary>Ewes, feeds and a flock to feed, with everything a test does not care about filled in.</summary>
internal static class FeedingSample
{
    public static readonly LocalDate FirstDue = new(2027, 1, 4);

    private const int Gestation = 147;

    public static readonly Forage Hay = new(
        ForageKind.Hay, 8.8m, 90m, 0.85m, new Mass(20), AdLib: true, Intake: null, SubstitutionRate: 0);

    public static readonly Concentrate Nuts = new("Ewe nuts", 12.5m, 180m, 0.86m, new Mass(20), new Mass(1.4m));

    public static readonly Feeds Feeds = new(
        FeedMethod.PerLamb, Mass.FromPounds(1), Hay, Nuts, new Mass(0.5m), null, 7, 0.1m, Ground.Lowland);

    private static readonly Practice Practice = new()
    {
        GestationSpreadDays = 2.3m,
        GestationLitterDays = (0, 0, 0),
        ConceptionPerCycle = 0.85m,
        EwesPerTup = 40,
        LastRound = new LocalTime(22, 0),
        FirstRoundNotBefore = new LocalTime(6, 0),
    };

    public static Flock Flock(params IEnumerable<EwePlan> ewes) => new(
        new Holding("Hollin Bank", "Nell Ashworth", new(54.46m, -2.74m, null), DateTimeZone.Utc, null, null, []),
        new PrintSettings(Paper.A4, PlannerPaper.A3, UnitSystem.Metric, IsoDayOfWeek.Monday, true, Binding.TwoHole, Duplex.LongEdge),
        new Season(new LocalDate(2026, 8, 10), new LocalDate(2026, 9, 21), 147, default),
        [],
        [new TuppingGroup("", null, Mating.Natural, new LocalDate(2026, 8, 10), new LocalDate(2026, 9, 21), [], default)],
        new KeeperDays([.. Enum.GetValues<IsoDayOfWeek>().Where(d => d != IsoDayOfWeek.None)], []),
        Practice,
        [],
        Feeds,
        new Housing(LambingPlace.Indoors, [], null, new DaysInLambingPen(1, 2, 3)),
        [.. ewes.Select(e => e.Ewe)]);

    /// <param name="litter">Null: not scanned.</param>
    /// <param name="due">Days after <see cref="FirstDue"/> of her first-possible date.</param>
    /// <param name="stay">Days from her first- to her last-possible date.</param>
    public static EwePlan Ewe(
        int number, int? litter = 2, int due = 0, int stay = 10, decimal? weight = 70, decimal? condition = 3,
        DayDistribution? chances = null)
    {
        var ewe = new Ewe($"ZZ 0123456 {number:00000}", "", SourceSpan.WholeFile)
        {
            Weight = weight is { } w ? new Mass(w) : null,
            Condition = condition,
            Scan = litter,
        };
        var first = FirstDue.PlusDays(due);
        var evidence = new MatingEvidence(Evidence.TupStay, first.PlusDays(-Gestation), first.PlusDays(stay - Gestation));
        var window = new DueWindow(
            evidence, Gestation, Gestation, first, first.PlusDays(stay / 2), first.PlusDays(stay), chances ?? Even(first, stay + 1));
        return new EwePlan(ewe, Standing.ToLamb, litter ?? 1, window, new TupAdvice([]), null, null) { BeforeLoss = Standing.ToLamb, WasToLamb = true };
    }

    public static ImmutableArray<EwePlan> Ewes(int count, int? litter = 2, int from = 1, int due = 0, decimal? weight = 70) =>
        [.. Enumerable.Range(from, count).Select(i => Ewe(i, litter, due, weight: weight))];

    public static DayDistribution Even(LocalDate first, int days) =>
        new(first, [.. Enumerable.Repeat(1.0 / days, days)]);

    public static Pen Pen(string name, decimal length, decimal width, decimal? trough = null) =>
        new(name, new Length(length), new Length(width), trough is { } t ? new Length(t) : null, default);

    public static Flock WithPens(this Flock flock, params ImmutableArray<Pen> pens) =>
        flock with { Housing = flock.Housing with { Pens = pens } };

    public static Flock WithFeeds(this Flock flock, Func<Feeds, Feeds> change) => flock with { Feeds = change(flock.Feeds) };
}
