namespace PaperFlock.Packs.Calendar;

/// <summary>The jobs of a plan as an iCalendar file: an event that lasts all day for each. The same plan gives the same bytes.</summary>
internal static class JobCalendar
{
    /// <summary>Revisions are numbered by the days since, so that a later as-of date always outranks an earlier one.</summary>
    private static readonly LocalDate FirstRevision = new(2000, 1, 1);

    public static byte[] Of(SeasonPlan plan)
    {
        var lines = new ContentLines();
        lines.Add("BEGIN", "VCALENDAR");
        lines.Add("VERSION", "2.0");
        lines.Add("PRODID", "-//PaperFlock//PaperFlock//EN");
        lines.Add("CALSCALE", "GREGORIAN");
        lines.Add("METHOD", "PUBLISH");
        // The second is RFC 7986; the first is what most programs read.
        lines.AddText("X-WR-CALNAME", plan.Flock.Holding.Name);
        lines.AddText("NAME", plan.Flock.Holding.Name);
        foreach (var (job, uid) in plan.Jobs.Zip(JobIdentities.Of(plan)))
        {
            Event(lines, plan, job, uid);
        }

        lines.Add("END", "VCALENDAR");
        return lines.ToBytes();
    }

    private static void Event(ContentLines lines, SeasonPlan plan, Job job, string uid)
    {
        lines.Add("BEGIN", "VEVENT");
        lines.Add("UID", uid);
        lines.AddMoment("DTSTAMP", plan.AsOf);
        lines.AddMoment("LAST-MODIFIED", plan.AsOf);
        lines.AddNumber("SEQUENCE", Math.Max(0, Period.DaysBetween(FirstRevision, plan.AsOf)));
        lines.AddDay("DTSTART", job.ShownOn);
        // Excluded: the day after.
        lines.AddDay("DTEND", job.ShownOn.PlusDays(1));
        lines.AddText("SUMMARY", CalendarText.Summary(plan, job));
        lines.AddText("DESCRIPTION", CalendarText.Description(plan, job));
        lines.Add("STATUS", job.Date is null ? "TENTATIVE" : "CONFIRMED");
        // A job does not make the keeper busy all day.
        lines.Add("TRANSP", "TRANSPARENT");
        lines.Add("END", "VEVENT");
    }
}
