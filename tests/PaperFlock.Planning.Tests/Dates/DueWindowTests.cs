using CsCheck;
using MathNet.Numerics.Distributions;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Tests.Dates;

public class DueWindowTests
{
    /// <summary>
    /// One-figure gestation tables, mating day to due day. The dates are plain calendar sums and can be counted on any wall
    /// calendar; 1 October to 23 February at 145 days is printed by Teagasc (ten tips for managing rams, Agriland).
    /// </summary>
    [Theory]
    [InlineData("2026-10-01", 145, "2027-02-23")]
    [InlineData("2026-08-10", 147, "2027-01-04")]
    [InlineData("2026-08-14", 147, "2027-01-08")]
    // 29 February is born in a leap year and in no other.
    [InlineData("2027-10-05", 147, "2028-02-29")]
    [InlineData("2026-10-05", 147, "2027-03-01")]
    [InlineData("2023-10-05", 147, "2024-02-29")]
    // 2100 is no leap year, 2000 was one.
    [InlineData("2099-10-05", 147, "2100-03-01")]
    [InlineData("1999-10-05", 147, "2000-02-29")]
    // Over the year end and on it.
    [InlineData("2026-08-06", 147, "2026-12-31")]
    [InlineData("2026-08-07", 147, "2027-01-01")]
    // Southern season: mated in April, lambing in September; 150 days is the Western Australian planning figure.
    [InlineData("2026-04-10", 150, "2026-09-07")]
    [InlineData("2028-02-29", 147, "2028-07-25")]
    public void A_mating_day_and_a_gestation_length_give_the_due_day(string mated, int gestation, string due)
    {
        var day = Sample.Day(mated);
        var flock = Sample.Flock([Sample.OneDay("G", day)], Sample.Ewe(group: "G")) with { Season = Sample.Season(day, day, gestation) };

        var window = DueWindows.Of(flock, flock.Ewes[0]);

        Assert.Equal(Sample.Day(due), window.Likely);
        Assert.Equal(Sample.Day(due), window.FirstPossible);
        Assert.Equal(Sample.Day(due), window.LastPossible);
    }

    [Theory]
    [InlineData(null, "2027-01-08")]
    [InlineData(1, "2027-01-09")]
    [InlineData(2, "2027-01-08")]
    [InlineData(3, "2027-01-07")]
    [InlineData(5, "2027-01-07")]
    public void A_larger_litter_is_carried_less_long(int? scan, string likely)
    {
        var flock = Sample.Flock(Sample.Ewe(marks: "2026-08-14", scan: scan));

        var window = DueWindows.Of(flock, flock.Ewes[0]);

        Assert.Equal(Sample.Day(likely), window.Likely);
        Assert.Equal(new LocalDate(2027, 1, 8), window.FirstPossible);
    }

    [Fact]
    public void A_breed_with_its_own_gestation_length_keeps_it()
    {
        var flock = Sample.Flock(Sample.Ewe(marks: "2026-08-14") with { Breed = "Finn" }) with
        {
            Breeds = [new Breed("Finn", 144, null), new Breed("Ryeland", null, null)],
        };

        Assert.Equal(new LocalDate(2027, 1, 5), DueWindows.Of(flock, flock.Ewes[0]).Likely);
    }

    /// <summary>
    /// Against the normal distribution of MathNet.Numerics. The points are whole days, so ours may lie at most half a day,
    /// and the little a density at whole days differs from an area, off its inverse.
    /// </summary>
    [Theory]
    [InlineData(1.5)]
    [InlineData(2.0)]
    [InlineData(2.5)]
    [InlineData(2.9)]
    [InlineData(4.0)]
    public void The_spread_of_gestation_follows_the_normal_distribution(double spread)
    {
        var flock = Sample.Flock([Sample.OneDay("G", Sample.TupIn)], Sample.Ewe(group: "G")) with
        {
            Practice = Sample.Practice() with { GestationSpreadDays = (decimal)spread },
        };
        var window = DueWindows.Of(flock, flock.Ewes[0]);
        var mean = Sample.TupIn.PlusDays(147);

        Assert.Equal(mean, window.Likely);
        foreach (var (day, share) in new[] { (window.Earliest, 0.05), (window.Latest, 0.95) })
        {
            Assert.InRange(Period.DaysBetween(mean, day), Normal.InvCDF(0, spread, share) - 0.55, Normal.InvCDF(0, spread, share) + 0.55);
        }

        var variance = window.Chances.Chances
            .Select((chance, i) => chance * Math.Pow(Period.DaysBetween(mean, window.Chances.First.PlusDays(i)), 2))
            .Sum();
        // Cutting the tails at four deviations takes a thousandth off.
        Assert.InRange(Math.Sqrt(variance), spread * 0.998, spread * 1.0001);
    }

    [Fact]
    public void Without_spread_or_doubt_she_lambs_on_the_day()
    {
        var flock = Sample.Flock([Sample.OneDay("G", Sample.TupIn)], Sample.Ewe(group: "G")) with
        {
            Practice = Sample.Practice() with { GestationSpreadDays = 0 },
        };

        var window = DueWindows.Of(flock, flock.Ewes[0]);

        Assert.Equal(new LocalDate(2027, 1, 4), window.Chances.First);
        Assert.Equal([1.0], window.Chances.Chances);
        Assert.Equal(window.Earliest, window.Latest);
    }

    /// <summary>By hand: 17 days flat at 0.8, 17 at 0.16, 9 days of the third cycle at 9/17 of 0.032, scaled to 1.</summary>
    [Fact]
    public void Without_a_mark_conception_falls_off_cycle_by_cycle()
    {
        var chances = ConceptionDays.Given(
            MatingEvidence.Of(Sample.Ewe(), Sample.Group(), Sample.Practice()), Sample.Group(), Sample.Practice());
        const double total = 0.8 + 0.16 + (0.032 * 9 / 17);

        Assert.Equal(43, chances.Chances.Length);
        Assert.Equal(0.8 / 17 / total, chances.On(Sample.TupIn), 12);
        Assert.Equal(0.8 / 17 / total, chances.On(Sample.TupIn.PlusDays(16)), 12);
        Assert.Equal(0.16 / 17 / total, chances.On(Sample.TupIn.PlusDays(17)), 12);
        Assert.Equal(0.032 / 17 / total, chances.On(Sample.TupOut), 12);
        Assert.Equal(0, chances.On(Sample.TupOut.PlusDays(1)));
    }

    [Fact]
    public void A_sure_first_cycle_still_gives_chances_in_a_later_one()
    {
        var practice = Sample.Practice() with { ConceptionPerCycle = 1 };
        var late = MatingEvidence.Of(Sample.Ewe(stage: ScanStage.Late), Sample.Group(), practice);

        var chances = ConceptionDays.Given(late, Sample.Group(), practice);

        Assert.Equal(1, chances.Chances.Sum(), 12);
        Assert.Equal(1.0 / 22, chances.On(Sample.TupOut), 12);
    }

    [Theory]
    [InlineData("2026-09-04", true)]
    [InlineData("2026-09-05", false)]
    public void A_return_without_a_mark_is_allowed_for_while_the_tup_stays_long_enough(string marked, bool mayReturn)
    {
        var evidence = MatingEvidence.Of(Sample.Ewe(marks: marked), Sample.Group(), Sample.Practice());

        var chances = ConceptionDays.Given(evidence, Sample.Group(), Sample.Practice());

        Assert.Equal(mayReturn ? 0.01 : 0, chances.On(Sample.Day(marked).PlusDays(17)), 12);
    }

    [Fact]
    public void Early_comes_before_an_unsure_date_and_late_after_it()
    {
        var flock = Sample.Flock(Sample.Ewe(), Sample.Ewe("Fern", stage: ScanStage.Early), Sample.Ewe("Sedge", stage: ScanStage.Late));
        var (unsure, early, late) = (DueWindows.Of(flock, flock.Ewes[0]), DueWindows.Of(flock, flock.Ewes[1]), DueWindows.Of(flock, flock.Ewes[2]));

        Assert.True(early.Likely <= unsure.Likely && early.Latest < unsure.Latest);
        Assert.True(late.Earliest > unsure.Earliest && late.Likely > unsure.Likely);
    }

    [Fact]
    public void Windows_are_ordered_and_their_chances_sum_to_one() =>
        Gen.Select(GenSeason, GenMarks, Gen.Int[-1, 5], Gen.Int[0, 2], Gen.Int[0, 100]).Sample((season, marks, scan, stage, spread) =>
        {
            var window = Window(season, marks, scan, stage, spread / 10m);

            Assert.Equal(1, window.Chances.Chances.Sum(), 9);
            Assert.All(window.Chances.Chances, chance => Assert.InRange(chance, 0, 1));
            Assert.True(window.Earliest <= window.Likely && window.Likely <= window.Latest);
            Assert.True(window.FirstPossible <= window.LastPossible);
        });

    [Fact]
    public void A_later_mark_never_gives_an_earlier_date() =>
        Gen.Select(GenSeason, GenMarks, Gen.Int[1, 20], Gen.Int[-1, 5], Gen.Int[0, 2], Gen.Int[0, 90]).Sample((season, marks, after, scan, stage, spread) =>
        {
            int[] before = [0, .. marks.Where(m => m <= season.Stay).Distinct().Order()];
            before = before.Length > 1 ? before[1..] : before;
            var later = Math.Min(before[^1] + after, season.Stay);
            if (later <= before[^1])
            {
                return;
            }

            var was = Window(season, before, scan, stage, spread / 10m);
            var now = Window(season, [.. before, later], scan, stage, spread / 10m);

            Assert.True(now.Earliest >= was.Earliest, $"earliest {was.Earliest} became {now.Earliest}");
            Assert.True(now.Likely >= was.Likely, $"likely {was.Likely} became {now.Likely}");
            Assert.True(now.Latest >= was.Latest, $"latest {was.Latest} became {now.Latest}");
        }, iter: 10_000);

    private static readonly Gen<(int Start, int Stay, int Conception, int Cycle)> GenSeason =
        Gen.Select(Gen.Int[0, 4000], Gen.Int[0, 80], Gen.Int[1, 100], Gen.Int[14, 20]);

    private static readonly Gen<int[]> GenMarks = Gen.Int[0, 80].Array[0, 4];

    private static DueWindow Window((int Start, int Stay, int Conception, int Cycle) season, int[] marks, int scan, int stage, decimal spread)
    {
        var tupIn = new LocalDate(2023, 1, 1).PlusDays(season.Start);
        var group = Sample.Group(tupIn: tupIn, tupOut: tupIn.PlusDays(season.Stay));
        var ewe = Sample.Ewe(scan: scan < 1 ? null : scan, stage: stage switch { 1 => ScanStage.Early, 2 => ScanStage.Late, _ => null }) with
        {
            Marks = [.. marks.Where(m => m <= season.Stay).Distinct().Order().Select(m => tupIn.PlusDays(m))],
        };
        var flock = Sample.Flock([group], ewe) with
        {
            Practice = Sample.Practice() with
            {
                GestationSpreadDays = spread,
                ConceptionPerCycle = season.Conception / 100m,
                ChangeoverDays = season.Cycle,
            },
        };
        return DueWindows.Of(flock, ewe);
    }
}
