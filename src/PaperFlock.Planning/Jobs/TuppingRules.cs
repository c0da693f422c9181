namespace PaperFlock.Planning.Jobs;

/// <summary>The calendar from the first check to scanning, hung on the day the tup goes in.</summary>
internal static class TuppingRules
{
    public static IEnumerable<JobRule> For(TuppingGroup group, Practice practice)
    {
        var check = new JobWindow(-63, -56, -42).MovedTo(-7 * practice.TeethToesTeatsWeeksBeforeTupping);
        var (first, last) = practice.ScanDaysAfterTupIn;
        JobRule?[] rules =
        [
            // Semen from a straw needs no tup looked over; a tup that is named is there to be looked at, whatever the mating.
            group.Mating != Mating.Artificial || group.Tup is not null ? Counted(JobKind.TupCheck, new(-77, -70, -63), false, JobReason.TimeToReplaceTheTup, FigureSource.TupCheck) : null,
            !group.IsOneDay || group.Tup is not null ? Counted(JobKind.BoughtTup, new(-56, -42, -28), false, JobReason.StrangerMayCarryDisease, FigureSource.CommonPractice) : null,
            Counted(JobKind.AbortionVaccine, new(-84, -63, -42), false, JobReason.ImmuneBeforeTupping, FigureSource.AbortionVaccine),
            Counted(JobKind.TeethToesTeats, check, true, JobReason.TimeToMendFeetAndCondition, FigureSource.EweCondition),
            practice.Shear == Shearing.BeforeTupping ? Counted(JobKind.Shear, new(-70, -56, -14), true, JobReason.ShornBeforeTupping, FigureSource.CommonPractice) : null,
            OnTheDay(JobKind.TupIn, JobAnchor.TupIn),
            .. group.IsOneDay ? [] : WhileHeIsIn(group, practice.ChangeoverDays),
            Counted(JobKind.Scan, new(first, first, last), true, JobReason.LambsCanBeCounted, FigureSource.Scanning),
        ];
        return rules.OfType<JobRule>();
    }

    private static IEnumerable<JobRule> WhileHeIsIn(TuppingGroup group, int changeoverDays) =>
    [
        .. RaddleChanges(group, changeoverDays),
        .. group.Tups.Skip(1).Select(turn => OnTheDay(JobKind.TupChange, JobAnchor.TupIn) with { Window = JobWindow.Day(Period.DaysBetween(group.TupIn, turn.In)) }),
        OnTheDay(JobKind.TupOut, JobAnchor.TupOut),
    ];

    private static JobRule Counted(JobKind kind, JobWindow window, bool handled, JobReason reason, FigureSource source) => new(kind, JobAnchor.TupIn, window, handled, reason, source);

    private static JobRule OnTheDay(JobKind kind, JobAnchor anchor) =>
        new(kind, anchor, JobWindow.Day(0), Handled: true, JobReason.FlockFileGivesTheDay, FigureSource.FlockFile) { IsFixed = true };

    /// <summary>
    /// A new crayon colour each cycle, so that a ewe that did not hold shows it; none on the day the tup leaves. Advice on the
    /// interval runs from 14 days (Sheep Canada, spring 2011: day 14 or 15) to the 17 of a whole cycle (Raising Sheep: 17 days,
    /// range 14 to 19).
    /// </summary>
    private static IEnumerable<JobRule> RaddleChanges(TuppingGroup group, int changeoverDays) => group.Raddle.IsEmpty
        ? []
        : RaddlePeriod.Of(group, changeoverDays).Skip(1).Select(worn => new JobRule(
            JobKind.RaddleChange, JobAnchor.TupIn, JobWindow.Day(Period.DaysBetween(group.TupIn, worn.From)), Handled: false,
            JobReason.SecondColourShowsReturn, FigureSource.RaddleChange)
        { IsFixed = true, Colour = worn.Colour });
}
