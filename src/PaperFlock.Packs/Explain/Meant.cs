using PaperFlock.Packs.Figures;

namespace PaperFlock.Packs.Explain;

/// <summary>What somebody may have meant by a few words: days, jobs and ewes of a plan.</summary>
internal sealed record Meant(ImmutableArray<LocalDate> Days, ImmutableArray<Job> Jobs, ImmutableArray<EwePlan> Ewes)
{
    /// <summary>More than this many are listed and not explained.</summary>
    private const int Most = 12;

    /// <summary>Shorter words are in too many titles and tags.</summary>
    private const int ShortestPart = 3;

    private int Count => Days.Length + Jobs.Length + Ewes.Length;

    /// <summary>What is called exactly so; where nothing is, jobs with the words in their title and ewes whose tag ends so.</summary>
    /// <exception cref="PackRequestException">Nothing is meant, or too much.</exception>
    public static Meant By(string text, SeasonPlan plan)
    {
        var finder = new TagFinder(plan.Flock.Ewes);
        var tagged = finder.Find(text);
        var days = SpokenDay.Parse(text, plan);
        if (days.Length > 1)
        {
            throw new PackRequestException(ScreenText.TwoDays(text, days));
        }

        var exact = new Meant(
            days,
            [.. plan.Jobs.Where(j => Same(Codes.Of(j.Kind), text) || Same(JobText.Title(j, plan.Flock), text))],
            [.. plan.Ewes.Where(e => Same(e.Ewe.Name, text) || (finder.IsWhole(text) && tagged.Contains(e.Ewe)))]);
        var meant = exact.Count > 0 || text.Length < ShortestPart
            ? exact
            : new Meant(
                [],
                [.. plan.Jobs.Where(j => JobText.Title(j, plan.Flock).Contains(text, StringComparison.OrdinalIgnoreCase))],
                [.. plan.Ewes.Where(e => tagged.Contains(e.Ewe))]);
        return meant.Count switch
        {
            0 when SpokenDay.IsMeant(text) => throw new PackRequestException($"'{text}' is no date: write it year first, such as 2026-12-27, or as on paper, such as \"27 Dec\""),
            0 => throw new PackRequestException(
                $"no day, job or ewe of this plan is called '{text}'{(NearestWord.Find(text, Names(plan)) is { } nearest ? $"; did you mean '{nearest}'?" : "; `paperflock dates` lists them")}"),
            _ when meant is { Jobs.IsEmpty: true, Ewes.Length: > 1 } && !ReferenceEquals(meant, exact) => throw new SeveralTagsException(text, [.. meant.Ewes.Select(e => e.Ewe)]),
            > Most => throw new PackRequestException(
                $"'{text}' could be any of {meant.Count}: {ScreenText.List([.. meant.Jobs.Select(j => JobText.Title(j, plan.Flock)), .. meant.Ewes.Select(e => e.Ewe.Tag)])}; be more exact"),
            _ => meant,
        };
    }

    private static IEnumerable<string> Names(SeasonPlan plan) =>
        plan.Ewes.Select(e => e.Ewe.Name).OfType<string>()
            .Concat(plan.Jobs.Select(j => JobText.Title(j, plan.Flock)))
            .Concat(plan.Jobs.Select(j => Codes.Of(j.Kind)))
            .Concat(plan.Ewes.Select(e => e.Ewe.Tag));

    private static bool Same(string? name, string text) => string.Equals(name, text, StringComparison.OrdinalIgnoreCase);
}
