using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;
using PaperFlock.Planning.Text;
using static PaperFlock.Planning.Jobs.JobSources;

namespace PaperFlock.Planning.Jobs;

/// <summary>The calendar from the first check to scanning, hung on the day the tup goes in.</summary>
internal static class TuppingRules
{
    /// <param name="named">The flock has several groups, so the tup's name tells their jobs apart.</param>
    public static IEnumerable<JobRule> For(TuppingGroup group, Practice practice, bool named)
    {
        // The tup's name tells the jobs of several groups apart.
        var tup = named ? group.Tup : null;

        // Semen from a straw needs no tup looked over; a tup that is named is there to be looked at, whatever the mating.
        if (group.Mating != Mating.Artificial || group.Tup is not null)
        {
            yield return new(
                JobIds.TupCheck, tup is not null ? $"Check tup {tup}" : "Check the tup",
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
                "8 weeks before the tup goes in", CommonPractice());
        }

        yield return JobRule.Fixed(
            JobIds.TupIn, MatingTitle(group, tup), JobAnchor.TupIn, 0, handled: true, FileGivesTheDay(), FlockFile());

        if (!group.IsOneDay)
        {
            foreach (var change in RaddleRules.For(group, practice.ChangeoverDays))
            {
                yield return change;
            }

            yield return JobRule.Fixed(
                JobIds.TupOut, tup is null ? "Tup out" : $"Tup {tup} out", JobAnchor.TupOut, 0, handled: true, FileGivesTheDay(), FlockFile());
        }

        var (first, last) = practice.ScanDaysAfterTupIn;
        yield return new(
            JobIds.Scan, "Scan", JobAnchor.TupIn, new(first, first, last), Handled: true,
            $"{English.CountLoose(first, "day", "days")} after the tup went in, when lambs can be counted",
            "common practice; Teagasc: best 80 to 90 days after the ram is turned out");
    }

    private static string MatingTitle(TuppingGroup group, string? tup) => (group.Mating, group.Raddle, tup) switch
    {
        (Mating.Artificial, _, _) => "Artificial insemination",
        (Mating.Hand, _, _) => "Hand mating",
        (_, [], null) => "Tup in",
        (_, [], _) => $"Tup {tup} in",
        (_, [var colour, ..], null) => $"Tup in, raddle {colour}",
        (_, [var colour, ..], _) => $"Tup {tup} in, raddle {colour}",
    };
}
