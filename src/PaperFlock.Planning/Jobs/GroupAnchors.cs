namespace PaperFlock.Planning.Jobs;

/// <summary>The days of one tupping group that its jobs hang on.</summary>
/// <param name="Due">Null when no ewe of the group can be in lamb.</param>
/// <param name="Ewes">How many it has, in lamb or not.</param>
internal sealed record GroupAnchors(TuppingGroup Group, GroupDueDates? Due, int Ewes)
{
    /// <summary>Null when the group has no such day: nothing can be due where no ewe is in lamb.</summary>
    public LocalDate? DayOf(JobAnchor anchor, Practice practice) => anchor switch
    {
        JobAnchor.TupIn => Group.TupIn,
        JobAnchor.TupOut => Group.TupOut,
        JobAnchor.Scan => Group.TupIn.PlusDays(practice.ScanDaysAfterTupIn.First),
        JobAnchor.Feeding => Due?.First.Day.PlusDays(-7 * practice.FeedWeeksBeforeLambing.Twin),
        JobAnchor.Housing => Due?.First.Day.PlusDays(-practice.HouseDaysBeforeLambing),
        JobAnchor.FirstDue => Due?.First.Day,
        JobAnchor.LastDue => Due?.Last.Day,
        _ => throw new ArgumentOutOfRangeException(nameof(anchor)),
    };
}
