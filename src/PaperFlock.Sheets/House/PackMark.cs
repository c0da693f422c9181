using System.Globalization;
using NodaTime;
using PaperFlock.Layout.Pages;
using PaperFlock.Planning;

namespace PaperFlock.Sheets.House;

/// <summary>What tells this printing from another: holding and season, issue, and the last day it may be used.</summary>
/// <param name="Id">Initials of the holding and the year of lambing, such as "HB-2027".</param>
/// <param name="OnlyDays">The only days a sitter's set is for; null for the whole pack.</param>
internal sealed record PackMark(string Id, int Issue, LocalDate Issued, int? Replaces, LocalDate NotAfter, DateInterval? OnlyDays = null)
{
    public static PackMark Of(SeasonPlan plan, DateInterval? days = null)
    {
        var year = (plan.Dates.FirstDue ?? plan.Dates.TupIn.PlusDays(plan.Flock.Season.GestationDays)).Year;
        return new PackMark($"{Initials(plan.Flock.Holding.Name)}-{year.ToString(CultureInfo.InvariantCulture)}", 1, plan.AsOf, null, days?.End ?? plan.To, days);
    }

    public string IssueWords => $"issue {Issue.ToString(CultureInfo.InvariantCulture)}, {Days.Long(Issued)}";

    public string ControlLine(string code, PageNumber page) => $"{WhichPage(code, page)} · {Validity}";

    public string WhichPage(string code, PageNumber page) =>
        string.Create(CultureInfo.InvariantCulture, $"{Id} {code} {page.Number}/{page.Of} · issue {Issue} {Days.Long(Issued)}");

    public string Validity =>
        $"{(OnlyDays is { } days ? $"from {Days.Short(days.Start)}" : ReplacesWords)} · not after {Days.Long(NotAfter)}";

    /// <summary>A sitter's leaf replaces none. It says from which day it is instead, because its code may be that of a fuller leaf in the binder.</summary>
    private string ReplacesWords => Replaces is { } issue ? $"replaces issue {issue.ToString(CultureInfo.InvariantCulture)}" : "replaces none";

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
