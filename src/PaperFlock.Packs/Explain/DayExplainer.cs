using PaperFlock.Sheets.Theme;

namespace PaperFlock.Packs.Explain;

/// <summary>All that falls on a day, and why.</summary>
internal static class DayExplainer
{
    /// <summary>Below this nobody would say that lambs are expected.</summary>
    private const double Worth = 0.05;

    /// <exception cref="PackRequestException">The plan says nothing about the day.</exception>
    public static Explanation Of(LocalDate day, SeasonPlan plan)
    {
        if (day < plan.From || day > plan.To)
        {
            throw new PackRequestException($"the plan runs from {ScreenText.Day(plan.From)} to {ScreenText.Day(plan.To)}, and {ScreenText.Day(day)} is outside it");
        }

        string Name(Job job) => JobText.Title(job, plan.Flock);
        var today = plan.Jobs.Where(j => j.Date == day).ToList();
        var missed = plan.Jobs.Where(j => j.Date is null && j.Best == day).ToList();
        return Explanation.Of(
            ScreenText.Day(day),
            [
                ("keeper", Keeper(day, plan)),
                .. Explanation.List("jobs", today.Select(j => $"{Name(j)}: {JobText.Why(j, plan)}").Concat(missed.Select(j => $"NO DAY for {Name(j)}: {JobText.Trouble(j)}"))),
                .. Explanation.List("could be done", plan.Jobs.Where(j => IsElsewhere(j, day)).Select(j => $"{Name(j)}: planned for {ScreenText.Day(j.Date!.Value)}")),
                .. Rounds(day, plan),
                .. Explanation.List("feed", Feeding(day, plan)),
                .. Explanation.List("order by today", plan.Stores.Where(s => s.OrderBy == day).Select(s => $"{StoreText.Name(s, plan.Flock)}, needed from {ScreenText.Day(s.NeededFrom)}")),
                ("lambing", Lambing(day, plan)),
                .. Explanation.List("most likely", plan.Ewes.Where(e => e.Due?.Likely == day).Select(e => $"{e.Ewe.CallName}: {EvidenceText.Of(e.Due!.Evidence)}")),
            ]);
    }

    private static bool IsElsewhere(Job job, LocalDate day) => job is { IsFixed: false, Date: { } date } && date != day && job.Earliest <= day && day <= job.Latest;

    private static string Keeper(LocalDate day, SeasonPlan plan)
    {
        var days = plan.Flock.KeeperDays;
        return (days.AbsenceOn(day), days.IsFreeWeekday(day)) switch
        {
            ({ } away, _) => $"away, {ScreenText.Span(away.From, away.To)}; {away.Sitter ?? "a sitter"} has the flock: no job is put here that can be on another day",
            (null, true) => "free for jobs",
            _ => "there, but not free for jobs that need hours",
        };
    }

    private static IEnumerable<(string Label, string? Text)> Rounds(LocalDate day, SeasonPlan plan)
    {
        if (plan.Rounds.FirstOrDefault(r => r.Date == day) is not { } rounds)
        {
            yield break;
        }

        var times = rounds.Times.Select(r => $"{DateText.Clock(r.At)} {RoundText.Name(r)}");
        yield return ("rounds", $"{rounds.Times.Length}: {ScreenText.List(times)}");
        yield return ("so many for", RoundText.Why(rounds.Why, plan.Flock.Practice));
        yield return ("daylight", Daylight(rounds));
    }

    private static string Daylight(RoundDay day)
    {
        if (day.IsByClock)
        {
            return "not known: nothing says where the sheep are, so the rounds keep fixed times; add `location` under `holding`";
        }

        if (day is not { Sunrise: { } sunrise, Sunset: { } sunset })
        {
            return "the sun does not rise and set on this day";
        }

        var light = Period.Between(sunrise, sunset, PeriodUnits.Hours | PeriodUnits.Minutes);
        var length = sunset > sunrise ? $", {light.Hours} h {light.Minutes:00} min of day" : string.Empty;
        var twilight = day is { Dawn: { } dawn, Dusk: { } dusk } ? $"; light enough to see from {DateText.Clock(dawn)} to {DateText.Clock(dusk)}" : string.Empty;
        return $"sun up {DateText.Clock(sunrise)}, down {DateText.Clock(sunset)}{length}{twilight}";
    }

    private static IEnumerable<string> Feeding(LocalDate day, SeasonPlan plan)
    {
        var amounts = new Amounts(plan.Flock.Print.Units);
        return plan.Feeding.On(day).Where(t => t.Kind is not null).Select(trough =>
        {
            var chart = plan.Feeding.Charts.First(c => c.Code == trough.Chart);
            var row = chart.On(day)!;
            var together = row.FedAt.IsEmpty
                ? "forage alone"
                : $"{amounts.Plain(row.KgPerFeedByHeads[trough.Ewes.Length - 1])} for all of them at {string.Join(" and ", row.FedAt.Select(t => FeedText.Time(t, plan.Flock.Holding)))}";
            return $"{FeedText.Trough(trough, plan.Feeding)}, {ScreenText.Count(trough.Ewes.Length, "ewe")}: {together}, by {chart.Code}, {RationText.Before(chart, row)}";
        });
    }

    private static string? Lambing(LocalDate day, SeasonPlan plan)
    {
        if (plan.Lambing.On(day) is not { } lambing || lambing.ExpectedEwes < Worth)
        {
            return null;
        }

        var pens = lambing.PensNeededP90 > 0 ? $"; on 9 such nights in 10 {ScreenText.Count(lambing.PensNeededP90, "lambing pen")} would be enough" : string.Empty;
        return FormattableString.Invariant($"about {lambing.ExpectedEwes:0.0} ewes to lamb; on 9 such days in 10 no more than {lambing.P90}") + pens;
    }
}
