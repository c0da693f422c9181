using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Languages;
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
    public string EvidenceFor(JobAnchor anchor, Practice practice, Language language) => anchor switch
    {
        JobAnchor.TupIn or JobAnchor.TupOut => language.Say("the day the flock file gives, or worked back from the day it wants lambs"),
        JobAnchor.Scan => language.Say(
            $"{language.CountLoose(practice.ScanDaysAfterTupIn.First, "day", "days")} after the tup goes in on {language.Days.Loose(Group.TupIn)}"),
        JobAnchor.Feeding => language.Say($"{language.CountLoose(practice.FeedWeeksBeforeLambing, "week", "weeks")} before the first is due: {Due.FirstWhy}"),
        JobAnchor.Housing => language.Say($"{language.CountLoose(practice.HouseDaysBeforeLambing, "day", "days")} before the first is due: {Due.FirstWhy}"),
        JobAnchor.FirstDue => Due.FirstWhy,
        JobAnchor.LastDue => Due.LastWhy,
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };

    /// <returns>Null when the group has no such day.</returns>
    public JobBasis? BasisOf(JobAnchor anchor, Practice practice, Language language) =>
        DayOf(anchor, practice) is { } day ? new JobBasis(day, DayWords(anchor, language), EvidenceFor(anchor, practice, language)) : null;

    private string DayWords(JobAnchor anchor, Language language) => anchor switch
    {
        JobAnchor.TupIn or JobAnchor.TupOut when Group.IsOneDay => language.Say("the day of mating"),
        JobAnchor.TupIn => language.Say("the day the tup goes in"),
        JobAnchor.TupOut => language.Say("the day the tup comes out"),
        JobAnchor.Scan => language.Say("scanning"),
        JobAnchor.Feeding => language.Say("the day feeding starts"),
        JobAnchor.Housing => language.Say("housing"),
        JobAnchor.FirstDue => language.Say("the day the first is due"),
        JobAnchor.LastDue => language.Say("the day the last is due"),
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "No such anchor."),
    };
}
