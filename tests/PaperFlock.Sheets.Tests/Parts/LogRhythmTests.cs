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
        new FlockText { Ewes = FlockText.Many(6, n => $"scan: {n % 4}"), Print = "week-starts: Sunday" }.ToString(), new(2026, 6, 1));

    [Fact]
    public void Every_day_from_today_to_the_end_is_on_exactly_one_page() =>
        Gen.Select(Gen.Int[-40, 330], Gen.Int[1, 4], Gen.Int[1, 4], Gen.Int[1, 5], Gen.Bool).Sample((day, heavyDays, normal, heavy, empty) =>
        {
            var asOf = Plan.From.PlusDays(day);
            var flock = new FlockText
            {
                Ewes = FlockText.Many(2, _ => empty ? "scan: 0" : "scan: 2"),
                Practice = $"checks-per-day: {{normal: {normal}, heavy: {Math.Max(normal, heavy)}}}",
            };
            var plan = Composed.PlanOf(flock.ToString(), asOf);
            var pages = LogRhythm.Of(new SheetContext(plan, FontLibrary.Measurer), heavyDays).SelectMany(l => l.Pages).ToArray();
            var days = pages.SelectMany(p => p.Days).Select(d => d.Date).ToArray();

            var first = LocalDate.Max(asOf, plan.From);
            Assert.Equal(Enumerable.Range(0, Math.Max(0, Period.DaysBetween(first, plan.To) + 1)).Select(first.PlusDays), days);
            Assert.All(pages, page =>
            {
                Assert.All(page.Days, d => Assert.Equal(page.Pace, LogRhythm.PaceOf(plan, LogRhythm.Lambing(plan), d)));
                Assert.InRange(page.Days.Length, 1, page.Pace switch { LogPace.QuietWeek => 7, LogPace.HeavyDays => heavyDays, _ => 1 });
            });
        }, iter: 60);

    [Fact]
    public void A_sitters_log_has_the_days_asked_for_and_no_others()
    {
        var days = new DateInterval(new(2026, 12, 27), new(2027, 1, 2));
        var pages = LogRhythm.Of(new SheetContext(Plan, FontLibrary.Measurer, new PackRequest([], days)), 3).SelectMany(l => l.Pages);
        Assert.Equal(days, pages.SelectMany(p => p.Days).Select(d => d.Date));
    }

    [Fact]
    public void A_quiet_page_begins_with_the_keepers_week()
    {
        var quiet = LogRhythm.Of(new SheetContext(Plan, FontLibrary.Measurer), 3).SelectMany(l => l.Pages).Where(p => p.Pace == LogPace.QuietWeek).Skip(1).TakeWhile(p => p.Days.Length == 7).ToArray();
        Assert.NotEmpty(quiet);
        Assert.All(quiet, p => Assert.Equal(IsoDayOfWeek.Sunday, p.Days[0].Date.DayOfWeek));
    }

    [Fact]
    public void All_three_paces_follow_each_other_in_a_season()
    {
        var paces = LogRhythm.Of(new SheetContext(Plan, FontLibrary.Measurer), 3).SelectMany(l => l.Pages).Select(p => p.Pace).ToArray();
        var turns = paces.Where((p, i) => i == 0 || paces[i - 1] != p).ToArray();
        Assert.Equal([LogPace.QuietWeek, LogPace.HeavyDays, LogPace.LambingDay], turns.Take(3));
    }
}
