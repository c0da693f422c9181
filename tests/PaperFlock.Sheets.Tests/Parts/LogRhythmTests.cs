using CsCheck;
using NodaTime;
using PaperFlock.Pdf;
using PaperFlock.Planning;
using PaperFlock.Sheets.RoundLog;
using PaperFlock.Sheets.Tests.WorstCases;
using PaperFlock.Sheets.Theme;

namespace PaperFlock.Sheets.Tests.Parts;

public sealed class LogRhythmTests
{
    private static readonly SeasonPlan Plan = Composed.PlanOf(
        new FlockText { Ewes = FlockText.Many(6, n => $"scan: {n % 4}"), Print = "week-starts: Sunday\nlog-weeks: 52" }.ToString(), new(2026, 6, 1));

    [Fact]
    public void Every_day_for_the_weeks_ahead_is_on_exactly_one_side_and_on_the_same_leaf_tomorrow() =>
        Gen.Select(Gen.Int[-40, 330], Gen.Int[1, 4], Gen.Int[1, 7], Gen.Int[2, 12], Gen.Bool).Sample((day, heavyDays, quietDays, weeks, empty) =>
        {
            var asOf = Plan.From.PlusDays(day);
            var flock = new FlockText { Ewes = FlockText.Many(2, _ => empty ? "scan: 0" : "scan: 2"), Print = $"log-weeks: {weeks}" };
            var today = Leaves(flock, asOf, heavyDays, quietDays);
            var days = today.SelectMany(l => l.Sides).SelectMany(s => s.Days).Select(d => d.Date).ToArray();

            Assert.Equal(days.Distinct().Order(), days);
            Assert.All(days.Zip(days.Skip(1)), pair => Assert.Equal(pair.First.PlusDays(1), pair.Second));
            if (days.Length > 0)
            {
                Assert.True(asOf < Plan.From || days.Contains(asOf), "today is on no leaf");
                Assert.InRange(Period.DaysBetween(asOf, days[^1]), 0, (weeks * 7) + 14);
            }

            var tomorrow = Leaves(flock, asOf.PlusDays(1), heavyDays, quietDays);
            var until = days.DefaultIfEmpty(asOf).Max();
            Assert.Equal(
                today.Where(l => l.Last > asOf).Select(l => (l.From, l.Last)),
                tomorrow.Where(l => l.From <= until).Select(l => (l.From, l.Last)));
        }, iter: 60);

    [Fact]
    public void A_sitters_log_has_the_days_asked_for_and_no_others()
    {
        var days = new DateInterval(new(2026, 12, 27), new(2027, 1, 2));
        var leaves = LogRhythm.Of(new SheetContext(Plan, FontLibrary.Measurer, new PackRequest([], days)), _ => 3);
        Assert.Equal(days, leaves.SelectMany(l => l.Sides).SelectMany(p => p.Days).Select(d => d.Date));
    }

    [Fact]
    public void A_quiet_side_begins_with_the_keepers_week()
    {
        var quiet = LogRhythm.Of(new SheetContext(Plan, FontLibrary.Measurer), _ => 7).SelectMany(l => l.Sides).Where(s => s.Days[0].Why == RoundReason.OutsideHeavyWeeks).Skip(1)
            .TakeWhile(s => s.Days.Length == 7).ToArray();
        Assert.NotEmpty(quiet);
        Assert.All(quiet, p => Assert.Equal(IsoDayOfWeek.Sunday, p.Days[0].Date.DayOfWeek));
    }

    [Fact]
    public void All_three_paces_follow_each_other_in_a_season()
    {
        var paces = LogRhythm.Of(new SheetContext(Plan, FontLibrary.Measurer), _ => 3).SelectMany(l => l.Sides).Select(p => p.Days[0].Why).ToArray();
        var turns = paces.Where((p, i) => i == 0 || paces[i - 1] != p).ToArray();
        Assert.Equal([RoundReason.OutsideHeavyWeeks, RoundReason.HeavyWeeks, RoundReason.Lambing], turns.Take(3));
    }

    private static ImmutableArray<LogLeaf> Leaves(FlockText flock, LocalDate asOf, int heavyDays, int quietDays) => LogRhythm.Of(
        new SheetContext(Composed.PlanOf(flock.ToString(), asOf), FontLibrary.Measurer), why => why == RoundReason.OutsideHeavyWeeks ? quietDays : heavyDays);
}
