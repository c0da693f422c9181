using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Jobs;

/// <summary>The days of one tupping group that its jobs hang on.</summary>
internal sealed record GroupAnchors(TuppingGroup Group, GroupDueDates Due, int Ewes)
{
    /// <summary>Null when the group has no such day: nothing can be due where no ewe is in lamb.</summary>
    public LocalDate? DayOf(JobAnchor anchor, Practice practice) => anchor switch
    {
        JobAnchor.TupIn => Group.TupIn,
        JobAnchor.TupOut => Group.TupOut,
        JobAnchor.Scan => Group.TupIn.PlusDays(practice.ScanDaysAfterTupIn.First),
        JobAnchor.Feeding => Due.First?.PlusDays(-7 * practice.FeedWeeksBeforeLambing),
        JobAnchor.Housing => Due.First?.PlusDays(-practice.HouseDaysBeforeLambing),
        JobAnchor.FirstDue => Due.First,
        JobAnchor.LastDue => Due.Last,
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };

    /// <summary>How the anchor is named after "days before".</summary>
    public static string Words(JobAnchor anchor) => anchor switch
    {
        JobAnchor.TupIn => "the tup goes in",
        JobAnchor.TupOut => "the tup comes out",
        JobAnchor.Scan => "scanning",
        JobAnchor.Feeding => "feeding starts",
        JobAnchor.Housing => "housing",
        JobAnchor.FirstDue => "the first is due",
        JobAnchor.LastDue => "the last is due",
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };
}
