namespace PaperFlock.Sheets;

/// <summary>What a job is called, why it is on its day, and what is wrong when it has none.</summary>
public static class JobText
{
    /// <summary>More than this many jobs sharing a gathering are counted, not named.</summary>
    private const int MostNamed = 3;

    /// <summary>Short words for the planner, such as "Raddle to orange".</summary>
    public static string Title(Job job, Flock flock)
    {
        // The tup's name tells the jobs of several groups apart.
        var tup = flock.Groups.Length > 1 ? job.Group?.Tup : null;
        return job.Kind switch
        {
            JobKind.AbortionVaccine => "Ask the vet about abortion vaccines",
            JobKind.BoughtTup => "Keep a bought tup apart, as vet advised",
            JobKind.FlukeAndWorms => "Ask the vet about fluke and worms",
            JobKind.LookOver => "Feel every back: hold score 2.5 to 3",
            JobKind.RingAndTag => "Ring and tag lambs by the day local rules set",
            JobKind.Turnout => "Turn out the first ewes with lambs",
            JobKind.TeethToesTeats => "Teeth, toes, teats and condition",
            JobKind.TupCheck => tup is null ? "Check the tup" : $"Check tup {tup}",
            JobKind.Shear => "Shear",
            JobKind.TupIn => Mating(job.Group!, tup),
            JobKind.RaddleChange => job.Group!.Raddle.Length == 1 ? $"Fresh {job.Rule.Colour} raddle" : $"Raddle to {job.Rule.Colour}",
            JobKind.TupOut => tup is null ? "Tup out" : $"Tup {tup} out",
            JobKind.Scan => "Scan",
            JobKind.Sort => "Sort by lambs carried",
            JobKind.FeedFrom => $"Start feeding by {job.Rule.Chart}",
            JobKind.BucketsOut => "Buckets out",
            JobKind.Booster => job.Batch is { } due ? $"Booster for ewes due {DateText.Span(due).Replace('\u00a0', ' ')}, as vet advised" : "Booster, as vet advised",
            JobKind.TwoFeeds => $"Two feeds a day by {job.Rule.Chart}",
            JobKind.HeavyRounds => $"{English.CountLoose(flock.Practice.ChecksPerDay.Heavy, "round", "rounds")} a day",
            JobKind.ShedReady => flock.Housing.Lambing == LambingPlace.Indoors ? "Shed and lambing kit ready" : "Lambing field and kit ready",
            JobKind.House => "House",
            JobKind.Dag => job.Rule.Reason switch
            {
                JobReason.CleanWhenHoused => "Dag before housing",
                JobReason.CleanTeat => "Dag before lambing",
                _ => "Dag",
            },
            JobKind.FirstDue => "First lambs due",
            JobKind.LastDue => "Last lambs due",
            JobKind.Own => job.Rule.Own!.Title,
            _ => throw new ArgumentOutOfRangeException(nameof(job)),
        };
    }

    /// <summary>With its group where groups have names: "Scan (Orchard)".</summary>
    public static string Named(Job job, Flock flock) =>
        job.Group is { Name.Length: > 0 } group ? $"{Title(job, flock)} ({group.Name})" : Title(job, flock);

    /// <summary>Why it is on that day, in a sentence a stranger understands.</summary>
    public static string Why(Job job, SeasonPlan plan)
    {
        IEnumerable<string?> parts =
        [
            Reason(job, plan.Flock.Practice),
            job.WhyThatDay switch
            {
                DayReason.NoDay => "it has no day yet: the keeper is away for the whole of its window",
                DayReason.SavesGathering => $"moved from {DateText.Loose(job.Best)} to save a gathering",
                _ => Moved(job),
            },
            job.Rule.Late switch
            {
                LateHandling.KeptBefore => "kept out of the last six weeks, when no ewe is turned over",
                LateHandling.Standing => "it falls in the last six weeks, so handle her standing",
                _ => null,
            },
            Shared(job, plan),
        ];
        return English.Sentence(string.Join("; ", parts.OfType<string>()));
    }

    /// <summary>Why it is not on its best day, or what is odd about its day; null when there is nothing to say.</summary>
    public static string? Moved(Job job) => job.WhyThatDay switch
    {
        DayReason.StandsThoughAway => "the keeper is away that day",
        DayReason.NearestFree => "the nearest free day",
        DayReason.NearestFreeSinceAway => $"the nearest free day, as the keeper is away on {DateText.Loose(job.Best)}",
        DayReason.SavesGathering => "to save a gathering",
        DayReason.NobodyFree => "nobody is free on any day of its window, so it is on one that is not",
        _ => null,
    };

    /// <summary>The other jobs for which ewes are gathered with it, the trade's before the keeper's; empty when there are none.</summary>
    public static IReadOnlyList<string> OthersGathered(Job job, SeasonPlan plan) =>
        [.. plan.GatheringOf(job)?.Jobs.Where(j => !ReferenceEquals(j, job)).OrderBy(j => j.Kind == JobKind.Own).Select(j => Named(j, plan.Flock)) ?? []];

    /// <summary>What is wrong, in a sentence; null where it has a day.</summary>
    public static string? Trouble(Job job)
    {
        if (job.Date is not null)
        {
            return null;
        }

        var away = job.Earliest == job.Latest
            ? $"The keeper is away on {DateText.Loose(job.Best)}, the one day it may be done"
            : $"The keeper is away on every day it may be done, {DateText.Loose(job.Earliest)} to {DateText.Loose(job.Latest)}";
        return job.NearestDay is { } day
            ? $"{away}; the nearest day that would do is {DateText.Loose(day)}."
            : $"{away}; no day within a year would do.";
    }

    /// <summary>The day its window is counted from, such as "the day the tup goes in" or "housing"; null for a job that the flock file puts on a day.</summary>
    public static string? CountedFrom(Job job) => job.Rule.Anchor switch
    {
        null when job.Kind == JobKind.Booster => "the day the first of them is likely to lamb",
        null when job.Rule.Reason == JobReason.AutumnFluke => "the middle month of autumn",
        null => job.Rule.Chart is null ? null : "the day their weeks are counted back from",
        JobAnchor.TupIn or JobAnchor.TupOut when job.Group!.IsOneDay => "the day of mating",
        JobAnchor.Scan => "scanning",
        JobAnchor.Housing => "housing",
        { } anchor => $"the day {Event(anchor)}",
    };

    /// <summary>How that day is known, in a sentence without its full stop; null as above.</summary>
    public static string? KnownBy(Job job, SeasonPlan plan)
    {
        if (job.Rule.Chart is { } chart)
        {
            return $"the first of the ewes fed by {chart}";
        }

        if (job.Kind == JobKind.Sort)
        {
            return "the day they are scanned";
        }

        if (job is not { Rule.Anchor: { } anchor, Group: { } group })
        {
            return null;
        }

        var due = plan.Groups.First(g => g.Group == group).Due;
        return anchor switch
        {
            JobAnchor.TupIn or JobAnchor.TupOut => "the date in the flock file, or worked back from the day it wants lambs",
            JobAnchor.Scan => $"{Days(group.TupIn, job.Anchor)} after the tup goes in on {DateText.Loose(group.TupIn)}",
            JobAnchor.Feeding => $"{DateText.Length(Period.DaysBetween(job.Anchor, due!.First.Day))} before the first is due: {EvidenceText.First(due.First)}",
            JobAnchor.Housing => $"{Days(job.Anchor, due!.First.Day)} before the first is due: {EvidenceText.First(due.First)}",
            JobAnchor.FirstDue => EvidenceText.First(due!.First),
            JobAnchor.LastDue => EvidenceText.Last(due!.Last),
            _ => throw new ArgumentOutOfRangeException(nameof(job)),
        };
    }

    private static string Mating(TuppingGroup group, string? tup) => (group.Mating, group.Raddle) switch
    {
        (Flocks.Mating.Artificial, _) => "Artificial insemination",
        (Flocks.Mating.Hand, _) => "Hand mating",
        (_, [var colour, ..]) => $"{TupIn(tup)}, raddle {colour}",
        _ => TupIn(tup),
    };

    private static string TupIn(string? tup) => tup is null ? "Tup in" : $"Tup {tup} in";

    private static string Reason(Job job, Practice practice)
    {
        var best = job.Rule.Window.Best;
        var span = DateText.Length(Math.Abs(best));
        var before = best < 0 ? $"{span} before the first is due" : "when the first is due";
        return job.Rule.Reason switch
        {
            JobReason.FlockFileGivesTheDay => "the keeper\u2019s date",
            JobReason.FlockFileGivesTheWindow => Asked(job.Rule.Own!.Window!),
            JobReason.ImmuneBeforeTupping => $"{span} before the tup goes in: they must be given at least four weeks before",
            JobReason.StrangerMayCarryDisease => $"{span} before the tup goes in: a stranger may bring disease",
            JobReason.AutumnFluke => "fluke is picked up in autumn, and what a field needs differs",
            JobReason.CleanOfWormsWhenHoused => $"{before}, before they come in; handle her standing",
            JobReason.ConditionBeforeLambing => $"{before}: too thin or too fat is put right slowly, and a fat ewe is never cut late{(best > -42 ? "; handle her standing" : "")}",
            JobReason.LocalRulesSetTheDay => "lambs must have sucked and know their mother first; local rules set the days",
            JobReason.LambsFitForGrass => $"{span} after the first is due, when her lambs are strong and it is dry",
            JobReason.TimeToReplaceTheTup => $"{span} before the tup goes in, so that there is time to replace one that fails",
            JobReason.TimeToMendFeetAndCondition => $"{span} before the tup goes in, so that there is time to mend feet and condition",
            JobReason.ShornBeforeTupping => $"{span} before the tup goes in",
            JobReason.SecondColourShowsReturn => $"{DateText.Length(practice.ChangeoverDays)} after the last colour: a ewe marked in both did not hold to the first",
            JobReason.LambsCanBeCounted => $"{English.CountLoose(best, "day", "days")} after the tup went in, when lambs can be counted",
            JobReason.ScanTellsLambs => "the scan says who carries how many",
            JobReason.FeedChartSaysSo => $"{job.Rule.Chart} says so",
            JobReason.WithTheFeeding => $"{before}, with the feeding",
            JobReason.HeavyEweOnHerBack => $"{before}: a heavy ewe on her back cannot right herself",
            JobReason.FirstMilkProtectsLambs => $"{before}, so that her first milk carries it to her lambs; handle her standing",
            JobReason.EarlyLambs => $"{before}, in case she is early",
            JobReason.SettledBeforeLambing => $"{before}, so that they are settled before lambs come",
            JobReason.GatheredOnceWithHousing => "with housing, so that they are gathered once; handle her standing",
            JobReason.CleanWhenHoused => $"{before}, so that they go in clean; handle her standing",
            JobReason.CleanTeat => $"{before}, so that lambs find a clean teat; handle her standing",
            JobReason.Gestation => $"gestation length after the {(job.Kind == JobKind.FirstDue ? "first" : "last")} day any could have been mated",
            JobReason.LambsOnTheirFeet => $"{span} after the last is due, with the lambs on their feet",
            _ => throw new ArgumentOutOfRangeException(nameof(job)),
        };
    }

    private static string Asked(OwnJobWindow window) => "the flock file asks for it " + window switch
    {
        { FirstDay: 0, LastDay: 0 } => "on the same day as",
        { LastDay: <= 0 } => $"{Range(-window.FirstDay, -window.LastDay)} before",
        { FirstDay: >= 0 } => $"{Range(window.FirstDay, window.LastDay)} after",
        _ => $"from {English.CountLoose(-window.FirstDay, "day", "days")} before to {English.CountLoose(window.LastDay, "day", "days")} after",
    } + " " + Event(window.Anchor);

    private static string Range(int from, int to) =>
        from == to ? English.CountLoose(from, "day", "days") : $"{from} to {English.CountLoose(to, "day", "days")}";

    private static string Event(JobAnchor anchor) => anchor switch
    {
        JobAnchor.TupIn => "the tup goes in",
        JobAnchor.TupOut => "the tup comes out",
        JobAnchor.Scan => "scanning",
        JobAnchor.Feeding => "feeding starts",
        JobAnchor.Housing => "housing",
        JobAnchor.FirstDue => "the first is due",
        JobAnchor.LastDue => "the last is due",
        _ => throw new ArgumentOutOfRangeException(nameof(anchor)),
    };

    private static string? Shared(Job job, SeasonPlan plan)
    {
        var others = OthersGathered(job, plan);
        var more = others.Count > MostNamed ? $" and {others.Count - MostNamed} more" : "";
        return others.Count == 0 ? null : $"one gathering with {string.Join(", ", others.Take(MostNamed))}{more}";
    }

    private static string Days(LocalDate from, LocalDate to) => English.CountLoose(Period.DaysBetween(from, to), "day", "days");
}
