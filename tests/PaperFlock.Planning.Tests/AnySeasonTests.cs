using CsCheck;
using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests;

/// <summary>
/// Seasons from 1950 to 2100, from pole to pole and in the zones farthest from Greenwich, against the calendar of another
/// library: the .NET runtime's <see cref="DateOnly"/>, which counts days by arithmetic of its own.
/// </summary>
public class AnySeasonTests
{
    private static readonly string[] Zones =
    [
        "Europe/London", "Pacific/Auckland", "Pacific/Kiritimati", "Pacific/Pago_Pago", "Pacific/Chatham", "Australia/Lord_Howe",
        "Pacific/Apia", "Arctic/Longyearbyen", "Antarctica/McMurdo", "America/St_Johns", "Africa/Casablanca", "UTC",
    ];

    /// <summary>Leap years and none, and years of 53 weeks by ISO 8601.</summary>
    private static readonly int[] OddYears = [1952, 1976, 2000, 2020, 2026, 2096, 2100];

    private static readonly Gen<LocalDate> AnyTupIn = Gen.OneOf(
        Gen.Int[0, 151 * 365].Select(d => new LocalDate(1949, 8, 1).PlusDays(d)),
        Gen.Select(Gen.Int[0, OddYears.Length - 1], Gen.Int[-160, 90], (year, day) => new LocalDate(OddYears[year], 1, 1).PlusDays(day)));

    [Fact]
    public void Days_are_those_of_another_calendar_in_any_year_and_place() =>
        Gen.Select(AnyTupIn, Gen.Int[-90, 90], Gen.Int[0, Zones.Length - 1], Gen.Int[1, 60], Gen.Int[1, 7]).Sample(
            (tupIn, latitude, zone, stay, weekStarts) =>
            {
                var flock = Sample.Flock([Sample.Group("", tupIn, tupIn.PlusDays(stay))], Sample.Ewe()) with
                {
                    Holding = Sample.Holding(latitude, zone: Zones[zone]),
                    Print = Sample.Print() with { WeekStarts = (IsoDayOfWeek)weekStarts },
                    Season = Sample.Season(tupIn, tupIn.PlusDays(stay)),
                    KeeperDays = new KeeperDays(Sample.Weekend, []),
                };
                var plan = SeasonPlanner.Plan(flock, tupIn);
                var first = Other(tupIn).AddDays(147);

                Assert.Equal(first, Other(plan.Dates.FirstDue!.Value));
                Assert.Equal(first.AddDays(stay), Other(plan.Dates.LastDue!.Value));
                Assert.Equal((DayOfWeek)(weekStarts % 7), Other(plan.From).DayOfWeek);

                // The day before and the day after are days like any other, whatever the clocks do between them.
                Assert.All(plan.Rounds.Zip(plan.Rounds.Skip(1)), p => Assert.Equal(Other(p.First.Date).AddDays(1), Other(p.Second.Date)));
                Assert.All(plan.Rounds, r => Assert.NotEmpty(r.Times));
                Assert.All(plan.Rounds, r => Assert.True(r.Times.Zip(r.Times.Skip(1)).All(t => t.First.At < t.Second.At)));
                Assert.All(
                    plan.Jobs.Where(j => j.Date is not null),
                    j => Assert.InRange(Other(j.Date!.Value).DayNumber, Other(j.Earliest).DayNumber, Other(j.Latest).DayNumber));
            },
            iter: 300, threads: 2);

    private static DateOnly Other(LocalDate date) => new(date.Year, date.Month, date.Day);
}
