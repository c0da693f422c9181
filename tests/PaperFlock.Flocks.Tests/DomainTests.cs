using NodaTime;
using PaperFlock.Diagnostics;

namespace PaperFlock.Flocks.Tests;

/// <summary>The nouns refuse nonsense when made, whoever makes them.</summary>
public class DomainTests
{
    private static readonly LocalDate Day = new(2026, 8, 10);

    private static readonly LocalDate DayBefore = new(2026, 8, 9);

    public static TheoryData<string, Func<object>> Nonsense => new()
    {
        { "a negative mass", () => new Mass(-1) },
        { "a negative length", () => new Length(-0.1m) },
        { "a latitude past the pole", () => Holding(latitude: 90.1m) },
        { "a longitude past the far side", () => Holding(longitude: -180.1m) },
        { "a holding without a name", () => Holding(name: " ") },
        { "a contact without a role", () => new Contact("", null, null, null) },
        { "a tup that leaves before he comes", () => new Season(Day, DayBefore, 147, default) },
        { "a gestation of four months", () => new Season(Day, Day, 120, default) },
        { "a group that leaves before it comes", () => Group(Mating.Natural, Day, DayBefore) },
        { "artificial mating over two days", () => Group(Mating.Artificial, DayBefore, Day) },
        { "an absence backwards", () => new Absence(Day, DayBefore, null, null, default) },
        { "no free day at all", () => new KeeperDays([], []) },
        { "absences out of order", () => new KeeperDays([IsoDayOfWeek.Monday], [Away(Day), Away(DayBefore)]) },
        { "a window backwards", () => new OwnJobWindow(JobAnchor.Scan, 2, 1) },
        { "a job on no day", () => Job(null, null) },
        { "a job on a day and in a window", () => Job(Day, new OwnJobWindow(JobAnchor.Scan, 1, 2)) },
        { "a pen of no length", () => new Pen("Bay", new Length(0), new Length(1), null, default) },
        { "no days in a pen", () => new DaysInLambingPen(0, 1, 1) },
        { "concentrate of no dry matter", () => new Concentrate("Nuts", 12, 180, 0, new Mass(20), null) },
        { "forage wetter than water", () => new Forage(ForageKind.Hay, 8, 90, 1.1m, null, true, null, 0) },
        { "a bucket for no ewes", () => new Buckets("Bucket", new Mass(20), 0, 14) },
        { "a score of six", () => Ewe("ZZ 1", "", condition: 6) },
        { "six lambs", () => Ewe("ZZ 1", "", scan: 6) },
        { "marks out of order", () => Ewe("ZZ 1", "", marks: [Day, DayBefore]) },
        { "a ewe without a tag", () => Ewe("", "") },
        { "a flock without groups", () => Flock([], []) },
        { "one tag on two ewes", () => Flock([Group(Mating.Natural, Day, Day)], [Ewe("ZZ 1", ""), Ewe("ZZ 1", "")]) },
        { "a ewe in no group", () => Flock([Group(Mating.Natural, Day, Day)], [Ewe("ZZ 1", "Orchard")]) },
    };

    [Theory]
    [MemberData(nameof(Nonsense))]
    public void Nonsense_is_refused(string what, Func<object> make) =>
        Assert.True(Record.Exception(make) is ArgumentException, what);

    [Fact]
    public void Sense_is_not()
    {
        var flock = Flock([Group(Mating.Natural, DayBefore, Day)], [Ewe("ZZ 1", ""), Ewe("ZZ 2", "", 5, 5, [DayBefore, Day])]);
        Assert.Equal("", flock.GroupOf(flock.Ewes[0]).Name);
        Assert.Equal(147, flock.GestationDaysOf(flock.Ewes[0]));
    }

    // Weights and Measures Act 1985, section 1: the pound and the yard, exactly.
    [Fact]
    public void Pounds_and_feet_are_the_legal_ones()
    {
        Assert.Equal(0.45359237m, Mass.FromPounds(1).Kilograms);
        Assert.Equal(0.9144m, 3 * Length.MetresPerFoot);
    }

    private static Holding Holding(string name = "Hollin Bank", decimal latitude = 0, decimal longitude = 0) =>
        new(name, null, new(latitude, longitude, null), DateTimeZone.Utc, null, null, []);

    private static TuppingGroup Group(Mating mating, LocalDate from, LocalDate to) => new("", null, mating, from, to, [], default);

    private static Absence Away(LocalDate day) => new(day, day, null, null, SourceSpan.WholeFile);

    private static OwnJob Job(LocalDate? on, OwnJobWindow? window) => new("Dip", on, window, null, false, false, default);

    private static Ewe Ewe(string tag, string group, decimal? condition = null, int? scan = null, ImmutableArray<LocalDate>? marks = null) =>
        new(tag, group, default) { Condition = condition, Marks = marks ?? [], Scan = scan };

    private static Flock Flock(ImmutableArray<TuppingGroup> groups, ImmutableArray<Ewe> ewes) =>
        Samples.Read("smallest").Flock! is var least
            ? new Flock(least.Holding, least.Print, least.Season, [], groups, least.KeeperDays, least.Practice, [], least.Feeds, least.Housing, ewes)
            : null!;
}
