using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Layout.Elements;
using PaperFlock.Sheets.House;

namespace PaperFlock.Sheets.Jobs;

/// <summary>
/// The jobs of a sitter's days: first those that are to be done then, and apart from them those that would still be of use then
/// but stand on another day, so that a stranger does not take them for his own.
/// </summary>
internal static class DaysJobs
{
    public static ImmutableArray<Sheet> Make(Stationery stationery, DateInterval days, string code)
    {
        var plan = stationery.Plan;
        var then = JobEntries.Of(plan, plan.Jobs.Where(j => days.Contains(j.ShownOn)));
        var other = JobEntries.Of(plan, plan.Jobs.Where(j => !days.Contains(j.ShownOn) && stationery.Concerns(j.Earliest, j.Latest)));
        if (then.IsEmpty && other.IsEmpty)
        {
            return [];
        }

        var parts = new List<Element>();
        if (!then.IsEmpty)
        {
            parts.Add(JobsSheet.Part(stationery, stationery.Language.Say("To be done in these days"), then));
        }

        if (!other.IsEmpty)
        {
            parts.Add(JobsSheet.Part(stationery, stationery.Language.Say("Planned for another day: ask the keeper first"), other));
        }

        var title = stationery.Language.Say($"Jobs, {stationery.Language.Days.Span(days)}");
        var head = stationery.Head(title, code, stationery.Language.Say("Tick what became of each job, with the day and your initials."));
        var body = new Column([.. parts, JobsSheet.AddedByHand(stationery)], 10);
        return [new Sheet(JobsSheet.KindWord, code, title, SheetUse.Binder, Binder.BothSides(stationery, code, body, stationery.UprightDesign(code, head)))];
    }
}
