namespace PaperFlock.Sheets.Jobs;

/// <summary>
/// The jobs of a sitter's days: first those that are to be done then, and apart from them those that would still be of use then
/// but stand on another day, so that a stranger does not take them for his own.
/// </summary>
internal static class DaysJobs
{
    public static ImmutableArray<Sheet> Make(SheetContext context, DateInterval days)
    {
        var plan = context.Plan;
        var then = JobLine.Of(plan, plan.Jobs.Where(j => days.Contains(j.ShownOn)));
        var other = JobLine.Of(plan, plan.Jobs.Where(j => !days.Contains(j.ShownOn) && context.Concerns(j.Earliest, j.Latest)));
        if (then.IsEmpty && other.IsEmpty)
        {
            return [];
        }

        var parts = new List<Element>();
        if (!then.IsEmpty)
        {
            parts.Add(JobsSheet.Part(context, "To be done in these days", then));
        }

        if (!other.IsEmpty)
        {
            parts.Add(JobsSheet.Part(context, "Planned for another day: ask the keeper first", other));
        }

        var title = $"Jobs, {DateText.Span(days)}";
        var body = new Column([.. parts, JobsSheet.AddedByHand(context)], 10);
        return [Binder.Upright(context, JobsSheet.Definition, title, "Tick what became of each job, with the day and your initials.", body)];
    }
}
