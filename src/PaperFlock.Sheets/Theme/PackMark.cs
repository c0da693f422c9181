namespace PaperFlock.Sheets.Theme;

/// <summary>What tells this printing from another: holding and season, issue, and the last day it may be used.</summary>
/// <param name="Id">Initials of the holding and the year of lambing, such as "HB-2027".</param>
/// <param name="Issues">Which issue this is, and which each page replaces.</param>
/// <param name="OnlyDays">The only days a sitter's set is for; null for the whole pack.</param>
/// <param name="IsDraft">It is to be looked at and never filed.</param>
internal sealed record PackMark(string Id, IssueContext Issues, LocalDate NotAfter, DateInterval? OnlyDays = null, bool IsDraft = false)
{
    private const string Draft = "DRAFT";

    // Days are all of a length, and this one is wide.
    private static readonly string WidestDay = DateText.Long(new LocalDate(2026, 11, 25));

    /// <param name="request">Null for the whole pack.</param>
    /// <param name="issues">Null for a first issue.</param>
    public static PackMark Of(SeasonPlan plan, PackRequest? request = null, IssueContext? issues = null) => new(
        IdOf(plan),
        issues ?? new IssueContext(1, plan.AsOf, null, marked: false),
        request?.Days?.End ?? plan.To,
        request?.Days,
        request?.Draft == true);

    /// <summary>What tells the packs of one holding and season from those of others, such as "HB-2027".</summary>
    public static string IdOf(SeasonPlan plan)
    {
        var year = (plan.Dates.FirstDue ?? plan.Dates.TupIn.PlusDays(plan.Flock.Season.GestationDays)).Year;
        return $"{plan.Flock.Holding.Code ?? Initials(plan.Flock.Holding.Name)}-{year.ToString(CultureInfo.InvariantCulture)}";
    }

    public int Issue => Issues.Number;

    public string IssueWords => IsDraft ? $"draft, {DateText.Long(Issues.On)}" : Words((Issue, Issues.On));

    public string ControlLine(string code, PageNumber page) => $"{WhichPage(code, page)} · {Validity(code, page)}";

    /// <summary>As long as any issue and any day may make it, so that neither changes where a page ends.</summary>
    public string WidestControlLine(string code) =>
        $"{Id} {code} 999/999 · issue 99 {WidestDay} · {ReplacesWords(99)} · not after {WidestDay}";

    /// <summary>As long as <see cref="IssueWords"/> may be.</summary>
    public static string WidestIssueWords => $"issue 99, {WidestDay}";

    public string WhichPage(string code, PageNumber page)
    {
        var (issue, on) = Issues.Of(code, page);
        return IsDraft
            ? $"{Draft} · {Draft} · {Id} {code} {page.Number}/{page.Of} · {DateText.Long(on)}"
            : $"{Id} {code} {page.Number}/{page.Of} · issue {issue} {DateText.Long(on)}";
    }

    /// <summary>A sitter's leaf replaces none. It says from which day it is instead, because its code may be that of a fuller leaf in the binder.</summary>
    public string Validity(string code, PageNumber page) => IsDraft ? $"{Draft} · {Draft} · {Draft}" : $"{(OnlyDays is { } days ? $"from {DateText.Short(days.Start)}" : ReplacesWords(Issues.Replaces(code, page)))} · not after {DateText.Long(NotAfter)}";

    /// <summary>The foot of a card.</summary>
    /// <param name="face">Front or back, in words.</param>
    public string CardLine(string leaf, string face)
    {
        var replaces = Issues.Replaces(leaf) is { } issue ? $" · {ReplacesWords(issue)}" : "";
        return IsDraft ? $"{Draft} · {Id} {leaf} {face} · {Draft} · {Draft}" : $"{Id} {leaf} {face} · {Words(Issues.Of(leaf))}{replaces}";
    }

    /// <summary>As long as <see cref="CardLine"/> may be, so that what is on a card does not depend on its issue.</summary>
    public string WidestCardLine(string leaf, string face) => $"{Id} {leaf} {face} · {WidestIssueWords} · {ReplacesWords(99)}";

    private static string ReplacesWords(int? replaced) => replaced is { } issue ? $"replaces issue {issue}" : "replaces none";

    private static string Words((int Number, LocalDate On) issue) => $"issue {issue.Number}, {DateText.Long(issue.On)}";

    /// <summary>First letters of the first four words; a single word gives its first two letters.</summary>
    private static string Initials(string name)
    {
        var words = name.Split([' ', '-', '\''], StringSplitOptions.RemoveEmptyEntries)
            .Where(w => char.IsLetterOrDigit(w[0])).Take(4).ToArray();
        var letters = words.Length switch
        {
            0 => "PF",
            1 => words[0].Length > 1 ? words[0][..2] : words[0],
            _ => string.Concat(words.Select(w => w[0])),
        };
        return letters.ToUpperInvariant();
    }
}
