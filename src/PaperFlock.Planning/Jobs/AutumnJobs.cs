namespace PaperFlock.Planning.Jobs;

/// <summary>What hangs on the time of year and on no group: liver fluke is picked up in autumn. Common practice, no source.</summary>
internal static class AutumnJobs
{
    public static IEnumerable<Job> Of(Flock flock, IReadOnlyList<GroupPlan> groups)
    {
        var month = flock.Holding.IsSouthern ? 4 : 10;
        var (first, last) = (groups.Min(g => g.Group.TupIn).PlusDays(-63), groups.Max(g => g.Due?.First.Day));
        return from year in Enumerable.Range(first.Year, 2)
               let day = new LocalDate(year, month, 1)
               where day >= first && day <= last
               select new Job(new JobRule(JobKind.FlukeAndWorms, null, JobWindow.Day(0), Handled: false, JobReason.AutumnFluke, FigureSource.CommonPractice) { IsFixed = true }, null, day);
    }
}
