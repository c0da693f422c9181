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

    /// <summary>How the day of an anchor is known, in a sentence without its full stop.</summary>
    public string EvidenceFor(JobAnchor anchor, Practice practice) => anchor switch
    {
        JobAnchor.TupIn or JobAnchor.TupOut => "the day the flock file gives, or worked back from the day it wants lambs",
        JobAnchor.Scan => $"{DateWords.Count(practice.ScanDaysAfterTupIn.First, "day")} after the tup goes in on {DateWords.Day(Group.TupIn)}",
        JobAnchor.Feeding => $"{DateWords.Count(practice.FeedWeeksBeforeLambing, "week")} before the first is due: {Due.FirstWhy}",
        JobAnchor.Housing => $"{DateWords.Count(practice.HouseDaysBeforeLambing, "day")} before the first is due: {Due.FirstWhy}",
        JobAnchor.FirstDue => Due.FirstWhy,
        JobAnchor.LastDue => Due.LastWhy,
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };

    /// <returns>Null when the group has no such day.</returns>
    public JobBasis? BasisOf(JobAnchor anchor, Practice practice) =>
        DayOf(anchor, practice) is { } day ? new JobBasis(day, DayWords(anchor), EvidenceFor(anchor, practice)) : null;

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

    private string DayWords(JobAnchor anchor) => anchor switch
    {
        JobAnchor.TupIn or JobAnchor.TupOut when Group.IsOneDay => "the day of mating",
        JobAnchor.Scan or JobAnchor.Housing => Words(anchor),
        _ => $"the day {Words(anchor)}",
    };
}
