using PaperFlock.Sheets.Jobs;

namespace PaperFlock.Sheets.WallPlanner;

/// <summary>What a row of the planner says: jobs by the day, who is in charge, and below them who is due.</summary>
internal sealed class WeekWords(SheetContext context, PlannerFormat format, double width)
{
    /// <summary>Points that names of ewes may take of a row; where there are more, they are counted.</summary>
    private readonly double _namesHeight = 5 * format.Near.Size * Text.UsualLeading;

    /// <param name="job">How jobs are set.</param>
    public Element? Of(PlannerWeek week, TextStyle job)
    {
        ImmutableArray<Element> parts = [.. Jobs(week, job), .. Due(week)];
        return parts.IsEmpty ? null : new Column(parts, 3);
    }

    private IEnumerable<Text> Jobs(PlannerWeek week, TextStyle style)
    {
        var bold = Block.Bold(style);
        foreach (var day in week.Days)
        {
            var called = DateText.WeekdayNumber(day.Date);
            if (day.Away is { } away && (day == week.Days[0] || away.From == day.Date))
            {
                yield return Block.Text($"{called} {away.Sitter ?? "A sitter"} is in charge, to {DateText.Short(away.To)}.", style, leading: 1.15);
            }

            var placed = day.Jobs.Where(l => l.Job.Date is not null).ToArray();
            if (placed.Length > 0)
            {
                yield return new Text(Unbroken($"{called} {string.Join(' ', placed.Select((line, i) => Called(line, placed[..i], context.Flock) + "."))}", bold), Leading: 1.15);
            }

            foreach (var line in day.Jobs.Where(l => l.Job.Date is null))
            {
                var nearest = line.Job.NearestDay is { } n ? $"Nearest day: {DateText.Short(n)}." : "";
                yield return Block.Text(Block.Sentences($"NO DAY for: {line.Title}.", nearest), bold, leading: 1.15);
            }
        }
    }

    /// <summary>The code of a chart is never parted at its hyphens.</summary>
    private static ImmutableArray<Run> Unbroken(string words, TextStyle style) =>
        [.. DateText.Whole(words).Split(' ').Select((word, i) => new Run(i == 0 ? word : " " + word, style, Whole: word.StartsWith("FEED-", StringComparison.Ordinal)))];

    /// <summary>Ewes are "them" where they are the last that were named that day.</summary>
    private static string Called(JobLine line, JobLine[] before, Flock flock) =>
        line.Job.Rule.Chart is null && before.LastOrDefault(l => l.Title.Contains(l.Ewes, StringComparison.Ordinal))?.Ewes == line.Ewes ? JobText.Title(line.Job, flock, JobText.Them) : line.Title;

    private IEnumerable<Text> Due(PlannerWeek week)
    {
        if (week.Due.IsEmpty)
        {
            yield break;
        }

        var names = Joined(week.Due.Select(e => (IEnumerable<Run>)[new Run($"{DateText.WeekdayNumber(e.Due!.Likely)}\u00a0", format.Near), Who.Called(e.Ewe, format.Near), Dots.After(e, format.Near)]));
        yield return Heights.Of(names, width, context) <= _namesHeight
            ? names
            : Joined([.. week.Due.GroupBy(e => e.Due!.Likely).Select(g => (IEnumerable<Run>)[new Run($"{DateText.WeekdayNumber(g.Key)}\u00a0{English.Count(g.Count(), "ewe", "ewes")}", format.Near)]), [new Run("names on DUE", format.Near)]]);
    }

    /// <summary>Lines are no further apart for the dots on them than the tallest letters need.</summary>
    private Text Joined(IEnumerable<IEnumerable<Run>> entries) =>
        new([.. entries.SelectMany((entry, i) => i == 0 ? entry : entry.Prepend(new Run(" · ", format.Near)))], Leading: 1.1);
}
