using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using PaperFlock.Languages;
using PaperFlock.Layout.Pages;
using PaperFlock.Planning;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Sheets.House;

/// <summary>What tells this printing from another: holding and season, issue, and the last day it may be used.</summary>
/// <param name="Id">Initials of the holding and the year of lambing, such as "HB-2027".</param>
/// <param name="Language">What its words are in.</param>
/// <param name="Issues">Which issue this is, and which each page replaces.</param>
/// <param name="OnlyDays">The only days a sitter's set is for; null for the whole pack.</param>
internal sealed record PackMark(string Id, Language Language, IssueContext Issues, LocalDate Issued, LocalDate NotAfter, DateInterval? OnlyDays = null)
{
    /// <summary>Stands before the control line of a pack that is not in English, in English: whoever hands it out must know that nobody has vouched for its words.</summary>
    public const string TrialWords = "TRIAL TRANSLATION";

    private readonly string _widestDay = WidestDayIn(Language);

    /// <param name="issues">Null for a first issue.</param>
    public static PackMark Of(SeasonPlan plan, DateInterval? days = null, IssueContext? issues = null)
    {
        var year = (plan.Dates.FirstDue ?? plan.Dates.TupIn.PlusDays(plan.Flock.Season.GestationDays)).Year;
        return new PackMark($"{Initials(plan.Flock.Holding.Name)}-{year.ToString(CultureInfo.InvariantCulture)}", plan.Language, issues ?? new IssueContext(null, plan.AsOf, plan.Language, marked: false), plan.AsOf, days?.End ?? plan.To, days);
    }

    private string Trial => Language.IsEnglish ? "" : TrialWords + " · ";

    public int Issue => Issues.Number;

    public string IssueWords => Language.Say($"issue {Issue}, {Language.Days.Long(Issued)}");

    public string ControlLine(string code, PageNumber page) => $"{WhichPage(code, page)} · {Validity(code, page)}";

    /// <summary>As long as any issue and any day may make it, so that neither changes where a page ends.</summary>
    public string WidestControlLine(string code) =>
        $"{Trial}{Id} {code} 999/999 · {Language.Say($"issue {99} {_widestDay}")} · {ReplacesWords(99)} · {Language.Say($"not after {_widestDay}")}";

    /// <summary>As long as <see cref="IssueWords"/> may be.</summary>
    public string WidestIssueWords => Language.Say($"issue {99}, {_widestDay}");

    public string WhichPage(string code, PageNumber page) =>
        $"{Trial}{Id} {code} {page.Number}/{page.Of} · {Language.Say($"issue {Issue} {Language.Days.Long(Issued)}")}";

    public string Validity(string code, PageNumber page) => Joined(Validity(Issues.Replaces(code, page), Language.Days.Long(NotAfter)));

    /// <summary>For a narrow strip: the day of issue beside it says which year it is.</summary>
    public string ShortValidity(string code, PageNumber page) => Joined(ShortValidityParts(code, page));

    /// <summary>The same part by part.</summary>
    public ImmutableArray<string> ShortValidityParts(string code, PageNumber page) => Validity(Issues.Replaces(code, page), Language.Days.Short(NotAfter));

    /// <summary>The foot of a card.</summary>
    /// <param name="face">Front or back, in words.</param>
    public string CardLine(string leaf, string face)
    {
        var replaces = Issues.Replaces(leaf) is { } issue ? $" · {ReplacesWords(issue)}" : "";
        return $"{Trial}{Id} {leaf} {face} · {IssueWords}{replaces}";
    }

    /// <summary>As long as <see cref="CardLine"/> may be, so that what is on a card does not depend on its issue.</summary>
    public string WidestCardLine(string leaf, string face) => $"{Trial}{Id} {leaf} {face} · {WidestIssueWords} · {ReplacesWords(99)}";

    /// <summary>A sitter's leaf replaces none. It says from which day it is instead, because its code may be that of a fuller leaf in the binder.</summary>
    private ImmutableArray<string> Validity(int? replaced, string notAfter) =>
    [
        OnlyDays is { } days ? Language.Say($"from {Language.Days.Short(days.Start)}") : ReplacesWords(replaced),
        Language.Say($"not after {notAfter}"),
    ];

    private static string Joined(ImmutableArray<string> parts) => string.Join(" · ", parts);

    private string ReplacesWords(int? replaced) => replaced is { } issue ? Language.Say($"replaces issue {issue}") : Language.Say("replaces none");

    /// <summary>In any language the longest there is; in English they are all of a length, and this one is wide.</summary>
    private static string WidestDayIn(Language language)
    {
        var widest = language.Days.Long(new LocalDate(2026, 11, 25));
        for (var day = new LocalDate(2026, 1, 20); day.Year == 2026; day = day.PlusDays(1))
        {
            widest = language.Days.Long(day) is var words && words.Length > widest.Length ? words : widest;
        }

        return widest;
    }

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
