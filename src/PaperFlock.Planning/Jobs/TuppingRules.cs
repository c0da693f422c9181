using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;
using static PaperFlock.Planning.Jobs.JobSources;

namespace PaperFlock.Planning.Jobs;

/// <summary>The calendar from the first check to scanning, hung on the day the tup goes in.</summary>
internal static class TuppingRules
{
    /// <param name="named">The flock has several groups, so the tup's name tells their jobs apart.</param>
    public static IEnumerable<JobRule> For(TuppingGroup group, Practice practice, bool named)
    {
        var tup = named && group.Tup is { } name ? $"Tup {name}" : "Tup";

        // Semen from a straw needs no tup looked over; a tup that is named is there to be looked at, whatever the mating.
        if (group.Mating != Mating.Artificial || group.Tup is not null)
        {
            yield return new(
                JobIds.TupCheck, named && group.Tup is not null ? $"Check tup {group.Tup}" : "Check the tup",
                JobAnchor.TupIn, new(-77, -70, -63), Handled: false,
                "10 weeks before the tup goes in, so that there is time to replace one that fails",
                "Otago Daily Times farm advice: 8 to 10 weeks before mating; Teagasc: sperm take 5 to 7 weeks to make");
        }

        var check = new JobWindow(-63, -56, -42).MovedTo(-7 * practice.TeethToesTeatsWeeksBeforeTupping);
        yield return new(
            JobIds.TeethToesTeats, "Teeth, toes, teats and condition", JobAnchor.TupIn, check, Handled: true,
            $"{DateWords.Span(-check.Best)} before the tup goes in, so that there is time to mend feet and condition",
            "common practice; Teagasc: a ewe takes 8 to 10 weeks to gain one condition score");

        if (practice.Shear == Shearing.BeforeTupping)
        {
            yield return new(
                JobIds.Shear, "Shear", JobAnchor.TupIn, new(-70, -56, -14), Handled: true,
                "8 weeks before the tup goes in", CommonPractice);
        }

        yield return JobRule.Fixed(
            JobIds.TupIn, MatingTitle(group, tup), JobAnchor.TupIn, 0, handled: true, "the day the flock file gives", FlockFile);

        if (!group.IsOneDay)
        {
            foreach (var change in RaddleRules.For(group, practice.ChangeoverDays))
            {
                yield return change;
            }

            yield return JobRule.Fixed(
                JobIds.TupOut, $"{tup} out", JobAnchor.TupOut, 0, handled: true, "the day the flock file gives", FlockFile);
        }

        var (first, last) = practice.ScanDaysAfterTupIn;
        yield return new(
            JobIds.Scan, "Scan", JobAnchor.TupIn, new(first, first, last), Handled: true,
            $"{DateWords.Count(first, "day")} after the tup went in, when lambs can be counted",
            "common practice; Teagasc: best 80 to 90 days after the ram is turned out");
    }

    private static string MatingTitle(TuppingGroup group, string tup) => group.Mating switch
    {
        Mating.Artificial => "Artificial insemination",
        Mating.Hand => "Hand mating",
        _ => group.Raddle.IsEmpty ? $"{tup} in" : $"{tup} in, raddle {group.Raddle[0]}",
    };
}
