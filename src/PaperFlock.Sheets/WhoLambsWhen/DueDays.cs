namespace PaperFlock.Sheets.WhoLambsWhen;

/// <summary>The days across a page.</summary>
internal sealed record DueDays(LocalDate First, int Count)
{
    /// <summary>From the beginning of the week in which the first may lamb.</summary>
    public static DueDays Of(ImmutableArray<DueRow> rows, IsoDayOfWeek weekStarts)
    {
        var first = rows.Min(r => r.Window.Earliest);
        first = first.DayOfWeek == weekStarts ? first : first.Previous(weekStarts);
        return new(first, Period.DaysBetween(first, rows.Max(r => r.Window.Latest)) + 1);
    }

    public IEnumerable<LocalDate> All => Enumerable.Range(0, Count).Select(First.PlusDays);

    /// <summary>How far a day begins from the left of a row of the given width.</summary>
    public double Left(LocalDate day, double width) => Period.DaysBetween(First, day) * width / Count;

    public bool BeginsWeek(LocalDate day) => day.DayOfWeek == First.DayOfWeek;
}
