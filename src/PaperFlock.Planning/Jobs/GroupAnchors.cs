using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;
using PaperFlock.Planning.Text;

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
        JobAnchor.Feeding => Due.First?.PlusDays(-7 * practice.FeedWeeksBeforeLambing.Twin),
        JobAnchor.Housing => Due.First?.PlusDays(-practice.HouseDaysBeforeLambing),
        JobAnchor.FirstDue => Due.First,
        JobAnchor.LastDue => Due.Last,
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };

    /// <summary>How the day of an anchor is known, in a sentence without its full stop.</summary>
    public string EvidenceFor(JobAnchor anchor, Practice practice) => anchor switch
    {
        JobAnchor.TupIn or JobAnchor.TupOut => "the day the flock file gives, or worked back from the day it wants lambs",
        JobAnchor.Scan => $"{English.CountLoose(practice.ScanDaysAfterTupIn.First, "day", "days")} after the tup goes in on {DateText.Loose(Group.TupIn)}",
        JobAnchor.Feeding => $"{English.CountLoose(practice.FeedWeeksBeforeLambing.Twin, "week", "weeks")} before the first is due: {Due.FirstWhy}",
        JobAnchor.Housing => $"{English.CountLoose(practice.HouseDaysBeforeLambing, "day", "days")} before the first is due: {Due.FirstWhy}",
        JobAnchor.FirstDue => Due.FirstWhy,
        JobAnchor.LastDue => Due.LastWhy,
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };

    /// <returns>Null when the group has no such day.</returns>
    public JobBasis? BasisOf(JobAnchor anchor, Practice practice) =>
        DayOf(anchor, practice) is { } day ? new JobBasis(day, DayWords(anchor), EvidenceFor(anchor, practice)) : null;

    private string DayWords(JobAnchor anchor) => anchor switch
    {
        JobAnchor.TupIn or JobAnchor.TupOut when Group.IsOneDay => "the day of mating",
        JobAnchor.TupIn => "the day the tup goes in",
        JobAnchor.TupOut => "the day the tup comes out",
        JobAnchor.Scan => "scanning",
        JobAnchor.Feeding => "the day feeding starts",
        JobAnchor.Housing => "housing",
        JobAnchor.FirstDue => "the day the first is due",
        JobAnchor.LastDue => "the day the last is due",
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };
}
