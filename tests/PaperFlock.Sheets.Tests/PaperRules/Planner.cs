using System.Text.RegularExpressions;
using PaperFlock.Layout;
using PaperFlock.Sheets.Jobs;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>What is said on the planner, and how.</summary>
internal static partial class Planner
{
    /// <summary>Every word in bold below the heading is one of a job, or its day.</summary>
    public static IEnumerable<string> BoldAmiss(SideInPack side)
    {
        if (!side.IsPlanner || side.IsBlankBack)
        {
            return [];
        }

        var jobs = JobLine.Of(side.Plan, side.Plan.Jobs).ToArray();
        var said = jobs.SelectMany(l => Words($"{l.Title}. {JobText.Title(l.Job, side.Plan.Flock, JobText.Them)} {DateText.WeekdayNumber(l.Job.ShownOn)} {(l.Job.NearestDay is { } n ? DateText.Short(n) : "")}"))
            .Concat(Words("NO DAY for Nearest day")).ToHashSet(StringComparer.Ordinal);
        var heading = side.Ink.Words.Where(w => w.Text.Contains(side.Plan.Flock.Holding.Name.Split(' ')[0], StringComparison.Ordinal)).Min(w => w.Baseline);
        return side.Ink.Words.Where(w => w.Style.Face == Face.TextBold && w.Baseline > heading + 30)
            .Where(w => w.Core.Left > side.Ink.Paper.Width * 0.925 || Words(w.Text).Any(word => !said.Any(s => s.Contains(word, StringComparison.Ordinal))))
            .Select(w => $"\u201c{w.Text}\u201d");
    }

    private static IEnumerable<string> Words(string text) => Word().Matches(text).Select(m => m.Value);

    [GeneratedRegex(@"[^\s.,:]+")]
    private static partial Regex Word();
}
