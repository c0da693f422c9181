namespace PaperFlock.Sheets;

/// <summary>What a job is called, why it is on its day, and what is wrong when it has none.</summary>
public static class JobText
{
    /// <summary>More than this many jobs sharing a gathering are counted, not named.</summary>
    private const int MostNamed = 3;

    /// <summary>Ewes that were named just before.</summary>
    internal const string Them = "them";

    private const string All = "the ewes";

    /// <summary>What to do, the verb first, such as "Bring in Bramley's ewes".</summary>
    public static string Title(Job job, Flock flock) => Title(job, flock, Ewes([job], flock));

    /// <param name="ewes">Whom it is done to, as <see cref="Ewes"/> has it; "them" where the words before have named them.</param>
    internal static string Title(Job job, Flock flock, string ewes) => job.Kind switch
    {
        JobKind.AbortionVaccine => "Ask the vet about abortion vaccines",
        JobKind.BoughtTup => "Keep a bought tup apart, as vet advised",
        JobKind.FlukeAndWorms => "Ask the vet about fluke and worms",
        JobKind.LookOver => $"Feel the backs of {ewes}",
        JobKind.RingAndTag => "Ring and tag lambs by local rules",
        JobKind.Turnout => $"Turn out {Lambs("first", ewes)}",
        JobKind.TeethToesTeats => $"Check teeth, toes, teats and condition of {ewes}",
        JobKind.TupCheck => $"Check {Tup(job, flock)}",
        JobKind.Shear => $"Shear {ewes}",
        JobKind.TupIn => Mating(job, flock, ewes),
        JobKind.RaddleChange when job.Group!.Raddle.Length == 1 => $"Put fresh {job.Rule.Colour} raddle on {Tup(job, flock)}",
        JobKind.RaddleChange => $"Change the raddle on {Tup(job, flock)} to {job.Rule.Colour}",
        JobKind.TupChange => Change(job.Group!, job.Best),
        JobKind.TupOut => $"Take out {Tup(job, flock)}",
        JobKind.Scan => $"Scan {ewes}",
        JobKind.Sort => $"Sort {ewes} by lambs carried",
        JobKind.FeedFrom => $"Start feeding: {ewes}",
        JobKind.BucketsOut => $"Put buckets out for {ewes}",
        JobKind.Booster when job.Batch is { } due => $"Give {(ewes == Them ? "those" : ewes)} due {DateText.Span(due).Replace('\u00a0', ' ')} their booster, as vet advised",
        JobKind.Booster => $"Give {ewes} their booster, as vet advised",
        JobKind.TwoFeeds => $"Feed twice a day: {ewes}",
        JobKind.HeavyRounds => $"Go round {FeedText.Times(flock.Practice.ChecksPerDay.Heavy)} a day",
        JobKind.ShedReady => flock.Housing.Lambing == LambingPlace.Indoors ? "Get the shed and lambing kit ready" : "Get the lambing field and kit ready",
        JobKind.House => $"Bring in {ewes}",
        JobKind.Dag => $"Dag {ewes}",
        JobKind.FirstDue => $"Expect {Lambs("first", ewes)}",
        JobKind.LastDue => $"Expect {Lambs("last", ewes)}",
        JobKind.Own => job.Group is null || ewes is All or Them ? job.Rule.Own!.Title : $"{job.Rule.Own!.Title}: {ewes}",
        _ => throw new ArgumentOutOfRangeException(nameof(job)),
    };

    /// <summary>"Bramley's ewes", by their tup, or by the group where he has another too; "the ewes" for all of them. Where they are fed by a chart, its code.</summary>
    /// <param name="jobs">The same job of some groups, or by some charts.</param>
    internal static string Ewes(IReadOnlyCollection<Job> jobs, Flock flock)
    {
        if (jobs.Any(j => j.Rule.Chart is not null))
        {
            return English.List([.. jobs.Select(j => j.Rule.Chart!)]);
        }

        var groups = jobs.Select(j => j.Group).OfType<TuppingGroup>().Distinct().ToArray();
        return groups.Length == 0 || groups.Length == flock.Groups.Length
            ? All
            : $"{English.List([.. groups.Select(g => g.OneTup is { } tup && flock.Groups.Count(other => other.Tup == tup) == 1 ? $"{tup}\u2019s" : $"the {g.Name}")])} ewes";
    }

    private static string Lambs(string which, string ewes) => ewes.EndsWith(" ewes", StringComparison.Ordinal) ? $"{ewes[..^5]} {which} lambs" : $"the {which} lambs";

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
        [.. plan.GatheringOf(job)?.Jobs.Where(j => !ReferenceEquals(j, job)).OrderBy(j => j.Kind == JobKind.Own).Select(j => Title(j, plan.Flock)) ?? []];

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

    private static string Mating(Job job, Flock flock, string ewes) => job.Group! switch
    {
        { Mating: Flocks.Mating.Artificial } => $"Inseminate {ewes}",
        { Mating: Flocks.Mating.Hand } => $"Take {ewes} to the tup",
        { Raddle: [var colour, ..] } => $"Put in {Tup(job, flock)}, raddle {colour}",
        _ => $"Put in {Tup(job, flock)}",
    };

    private static string Change(TuppingGroup group, LocalDate day)
    {
        var (before, next) = (group.TupOn(day.PlusDays(-1)), group.TupOn(day));
        return group.Tups.First(t => t.Name == before).Out < day ? $"Put in tup {next}" : $"Take out tup {before}, put in tup {next}";
    }

    /// <summary>By name where there are several, with the group where he has none of his own.</summary>
    private static string Tup(Job job, Flock flock) => (flock.Groups.Length, job.Group) switch
    {
        (_, { Tups: { Length: > 1 } tups }) => job.Kind == JobKind.TupCheck ? $"tups {English.List([.. tups.Select(t => t.Name).Distinct()])}" : $"tup {job.Group.TupOn(job.Best)}",
        (1, _) or (_, null) => "the tup",
        (_, { Tup: { } tup }) when flock.Groups.Count(g => g.Tup == tup) == 1 => $"tup {tup}",
        (_, var group) => $"the {group.Name} tup",
    };

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
            JobReason.ConditionBeforeLambing => $"{before}, to hold score 2.5 to 3: too thin or too fat is put right slowly, and a fat ewe is never cut late{(best > -42 ? "; handle her standing" : "")}",
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
