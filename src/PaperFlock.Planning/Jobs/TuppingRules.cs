namespace PaperFlock.Planning.Jobs;

/// <summary>The calendar from the first check to scanning, hung on the day the tup goes in.</summary>
internal static class TuppingRules
{
    public static IEnumerable<JobRule> For(TuppingGroup group, Practice practice)
    {
        // Semen from a straw needs no tup looked over; a tup that is named is there to be looked at, whatever the mating.
        if (group.Mating != Mating.Artificial || group.Tup is not null)
        {
            yield return new(
                JobKind.TupCheck, JobAnchor.TupIn, new(-77, -70, -63), Handled: false, JobReason.TimeToReplaceTheTup, FigureSource.TupCheck);
        }

        if (!group.IsOneDay || group.Tup is not null)
        {
            yield return new(
                JobKind.BoughtTup, JobAnchor.TupIn, new(-56, -42, -28), Handled: false, JobReason.StrangerMayCarryDisease, FigureSource.CommonPractice);
        }

        yield return new(
            JobKind.AbortionVaccine, JobAnchor.TupIn, new(-84, -63, -42), Handled: false, JobReason.ImmuneBeforeTupping, FigureSource.AbortionVaccine);

        var check = new JobWindow(-63, -56, -42).MovedTo(-7 * practice.TeethToesTeatsWeeksBeforeTupping);
        yield return new(
            JobKind.TeethToesTeats, JobAnchor.TupIn, check, Handled: true, JobReason.TimeToMendFeetAndCondition, FigureSource.EweCondition);

        if (practice.Shear == Shearing.BeforeTupping)
        {
            yield return new(
                JobKind.Shear, JobAnchor.TupIn, new(-70, -56, -14), Handled: true, JobReason.ShornBeforeTupping, FigureSource.CommonPractice);
        }

        yield return OnTheDay(JobKind.TupIn, JobAnchor.TupIn);
        if (!group.IsOneDay)
        {
            foreach (var change in RaddleChanges(group, practice.ChangeoverDays))
            {
                yield return change;
            }

            foreach (var turn in group.Tups.Skip(1))
            {
                yield return OnTheDay(JobKind.TupChange, JobAnchor.TupIn) with { Window = JobWindow.Day(Period.DaysBetween(group.TupIn, turn.In)) };
            }

            yield return OnTheDay(JobKind.TupOut, JobAnchor.TupOut);
        }

        var (first, last) = practice.ScanDaysAfterTupIn;
        yield return new(
            JobKind.Scan, JobAnchor.TupIn, new(first, first, last), Handled: true, JobReason.LambsCanBeCounted, FigureSource.Scanning);
    }

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
