namespace PaperFlock.Sheets.Jobs;

/// <summary>When a sheet for certain jobs is worth printing.</summary>
internal static class JobDays
{
    /// <summary>Before that too much may change (common practice, no source).</summary>
    private const int WorthPrintingDays = 56;

    /// <returns>The last day of the jobs; null where they are over, or so far off that the sheet would be printed again, and nobody asks for it by name.</returns>
    public static LocalDate? Last(SheetContext context, SheetDefinition sheet, params JobKind[] kinds)
    {
        var plan = context.Plan;
        var days = plan.Jobs.Where(j => kinds.Contains(j.Kind)).Select(j => j.Date ?? j.Latest).ToArray();
        return days.Length > 0 && (context.IsNamed(sheet) || (plan.AsOf <= days.Max() && plan.AsOf >= days.Min().PlusDays(-WorthPrintingDays))) ? days.Max() : null;
    }
}
