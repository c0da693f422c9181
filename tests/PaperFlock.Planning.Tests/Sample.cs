using NodaTime;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests;

/// <summary>
/// Flocks in code. <see cref="Flock(Ewe[])"/> is the demonstration season: tup in Mon 10 Aug 2026 for six weeks, a keeper with
/// weekends and a sitter over New Year, every practice at its default.
/// </summary>
internal static class Sample
{
    public static readonly LocalDate TupIn = new(2026, 8, 10);
    public static readonly LocalDate TupOut = new(2026, 9, 21);

    public static ImmutableArray<IsoDayOfWeek> EveryDay { get; } =
    [
        IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday,
        IsoDayOfWeek.Friday, IsoDayOfWeek.Saturday, IsoDayOfWeek.Sunday,
    ];

    public static ImmutableArray<IsoDayOfWeek> Weekend { get; } = [IsoDayOfWeek.Saturday, IsoDayOfWeek.Sunday];

    public static Flock Flock(params Ewe[] ewes) => Flock([Group()], ewes);

    /// <param name="groups">Every ewe's must be among them.</param>
    public static Flock Flock(ImmutableArray<TuppingGroup> groups, params Ewe[] ewes) => new(
        Holding(),
        Print(),
        Season(),
        Breeds: [],
        groups,
        new KeeperDays(Weekend, [Away("2026-12-27", "2027-01-02")]),
        Practice(),
        OwnJobs: [],
        Feeds(),
        Housing(),
        [.. ewes]);

    public static Holding Holding(decimal latitude = 54.46m, decimal longitude = -2.74m, string zone = "Europe/London") => new(
        "Hollin Bank", "Nell Ashworth", new(latitude, longitude, null), DateTimeZoneProviders.Tzdb[zone], null, null, []);

    public static PrintSettings Print() => new(
        Paper.A4, PlannerPaper.A3, UnitSystem.Metric, IsoDayOfWeek.Monday, Gloves: true, Binding.TwoHole, Duplex.LongEdge);

    public static Season Season(LocalDate? tupIn = null, LocalDate? tupOut = null, int gestation = 147) =>
        new(tupIn ?? TupIn, tupOut ?? tupIn?.PlusDays(42) ?? TupOut, gestation, new SourceSpan(2, 1, 1));

    public static TuppingGroup Group(string name = "", LocalDate? tupIn = null, LocalDate? tupOut = null, string? tup = null) => new(
        name, tup, Mating.Natural, tupIn ?? TupIn, tupOut ?? tupIn?.PlusDays(42) ?? TupOut,
        ["yellow", "orange", "red", "blue"], new SourceSpan(3, 1, 1));

    public static TuppingGroup OneDay(string name, LocalDate day, Mating mating = Mating.Artificial, string? tup = null) => new(
        name, tup, mating, day, day, [], new SourceSpan(3, 1, 1));

    public static Practice Practice() => new() { FirstRoundNotBefore = new LocalTime(5, 30) };

    public static Feeds Feeds() => new(
        FeedMethod.PerLamb,
        Mass.FromPounds(1),
        new Forage(ForageKind.Hay, 8.8m, 90, 0.85m, new Mass(20), AdLib: true, Intake: null, SubstitutionRate: 0),
        new Concentrate("Ewe nuts", 12.5m, 180, 0.86m, new Mass(20), new Mass(1.4m)),
        new Mass(0.5m),
        new Buckets("Mineral bucket", new Mass(22), EwesPerBucket: 20, Days: 14),
        OrderLeadDays: 7,
        Margin: 0.1m,
        Ground.Lowland);

    public static Flocks.Housing Housing(LambingPlace place = LambingPlace.Indoors) =>
        new(place, Pens: [], LambingPens: 4, new DaysInLambingPen(1, 2, 3));

    /// <param name="marks">ISO days, in order, separated by spaces.</param>
    public static Ewe Ewe(string name = "Bracken", string group = "", string marks = "", int? scan = null, ScanStage? stage = null) =>
        new($"ZZ 0123456 {name}", group, new SourceSpan(10, 5, 4))
        {
            Name = name,
            Weight = new Mass(72),
            Condition = 3,
            Teeth = Teeth.Sound,
            Toes = Toes.Sound,
            Teats = Teats.Sound,
            Marks = [.. marks.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Day)],
            Scan = scan,
            ScanStage = stage,
        };

    /// <param name="title">A handled job of the keeper's in a window of days from an anchor.</param>
    public static OwnJob Own(string title, JobAnchor anchor, int firstDay, int lastDay, bool handled = true) => new(
        title, On: null, new OwnJobWindow(anchor, firstDay, lastDay), MinutesPerEwe: null, handled, Closed: false, new SourceSpan(20, 5, 4));

    public static OwnJob OwnOn(string title, string day, bool handled = true) => new(
        title, Day(day), Window: null, MinutesPerEwe: null, handled, Closed: false, new SourceSpan(21, 5, 4));

    public static Absence Away(string from, string to) => new(Day(from), Day(to), "Tom Birkett", "01632 960 303", default);

    public static KeeperDays Free(ImmutableArray<IsoDayOfWeek> free, params Absence[] away) => new(free, [.. away]);

    /// <summary>An ISO date, such as 2026-08-10.</summary>
    public static LocalDate Day(string iso) => NodaTime.Text.LocalDatePattern.Iso.Parse(iso).Value;
}
