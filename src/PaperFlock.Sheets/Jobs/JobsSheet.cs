using System.Collections.Immutable;
using PaperFlock.Layout.Elements;
using PaperFlock.Sheets.House;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Jobs;

/// <summary>Every job month by month, why it is on that day, the last day it is any use, and what became of it.</summary>
internal sealed class JobsSheet : ISheetMaker
{
    public const string KindWord = "jobs";
    private const string Code = "JOBS";

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(Stationery stationery)
    {
        if (stationery.OnlyDays is { } days)
        {
            return DaysJobs.Make(stationery, days, Code);
        }

        var entries = JobEntries.Of(stationery.Plan);
        if (entries.IsEmpty)
        {
            return [];
        }

        var gatherings = stationery.Plan.Gatherings.Length;
        var lead = stationery.Language.Say($"Tick what became of each job. The ewes are gathered on {stationery.Language.Count(gatherings, "day", "days")} in all: the fewest that will do.");
        var head = stationery.Head(stationery.Language.Say("Jobs"), Code, lead);
        var months = entries.GroupBy(e => (e.ShownOn.Year, e.ShownOn.Month)).Select(month => Part(stationery, stationery.Language.Days.Month(month.First().ShownOn), [.. month]));
        var sides = Binder.BothSides(stationery, Code, new Column([.. months, AddedByHand(stationery)], 10), stationery.UprightDesign(Code, head));
        return [new Sheet(Kind, Code, stationery.Language.Say("Jobs"), SheetUse.Binder, sides)];
    }

    public static Element AddedByHand(Stationery stationery) => Ink.Ruled(stationery.Language.Say("Added by hand"), Fount.Heading, stationery.TableRow, 3);

    /// <param name="title">Such as the month.</param>
    public static NeedSpace Part(Stationery stationery, string title, ImmutableArray<JobEntry> entries)
    {
        var language = stationery.Language;
        var tick = stationery.Column(Mm(16), Fount.Label, language.Say("done"), language.Say("not done"), language.Say("not needed"));
        var table = new Table(
            [stationery.DayColumn(Mm(28), Fount.BodyBold), Track.Share(), tick, tick, tick, stationery.Column(Mm(28), Fount.Label, language.Say("day, initials"))],
            [
                new TableRow(
                [
                    Ink.Cell(stationery.Language.Say("day"), Fount.Label), Ink.Cell(stationery.Language.Say("job, and why on that day"), Fount.Label),
                    Ink.Cell(stationery.Language.Say("done"), Fount.Label, TextAlign.Centre), Ink.Cell(stationery.Language.Say("not done"), Fount.Label, TextAlign.Centre),
                    Ink.Cell(stationery.Language.Say("not needed"), Fount.Label, TextAlign.Centre), Ink.Cell(stationery.Language.Say("day, initials"), Fount.Label),
                ]),
            ],
            [.. entries.Select(e => Row(stationery, e))])
        { Name = title };
        return new NeedSpace(
            Ink.Column(4, Ink.Text(title, Fount.Heading), table),
            Mm(38));
    }

    private static TableRow Row(Stationery stationery, JobEntry entry)
    {
        var words = new List<Element> { new Text([new Run(entry.Title, Fount.BodyBold), new Run(entry.GroupWords, Fount.Body)]) };
        if (entry.Job.Trouble is { } trouble)
        {
            var nearest = trouble.NearestDay is { } day ? stationery.Language.Say($"The nearest day that would do is {stationery.Language.Days.Short(day)}.") : "";
            words.Add(Ink.Text(Ink.Sentences(stationery.Language.Say("NOT PLACED."), trouble.Words, nearest), Fount.BodyBold));
        }
        else
        {
            words.Add(Ink.Text(entry.WhyIn(stationery.Language), Fount.Body));
        }

        var day1 = new List<Element>
        {
            Ink.Text(entry.Job.Date is { } date ? stationery.Language.Days.Short(date) : stationery.Language.Say("no day"), Fount.BodyBold),
        };
        if (entry.Job.Handled && entry.Job.Date is not null)
        {
            day1.Add(Ink.Text(stationery.Language.Say("gather"), Fount.Label));
        }

        var tick = Ink.Cell(Ink.Tick(stationery.TableTick));
        return new TableRow(
            [
                Ink.Cell(new Column([.. day1])),
                Ink.Cell(new Column([.. words], 1)),
                tick, tick, tick,
                Ink.Blank(),
            ],
            Math.Max(stationery.TableRow, stationery.TableTick + 5),
            Name: entry.Title);
    }
}
