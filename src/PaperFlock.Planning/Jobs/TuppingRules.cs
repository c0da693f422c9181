using PaperFlock.Flocks;
using PaperFlock.Languages;
using PaperFlock.Planning.Dates;
using static PaperFlock.Planning.Jobs.JobSources;

namespace PaperFlock.Planning.Jobs;

/// <summary>The calendar from the first check to scanning, hung on the day the tup goes in.</summary>
internal static class TuppingRules
{
    /// <param name="named">The flock has several groups, so the tup's name tells their jobs apart.</param>
    public static IEnumerable<JobRule> For(TuppingGroup group, Practice practice, bool named, Language language)
    {
        // The tup's name tells the jobs of several groups apart.
        var tup = named ? group.Tup : null;

        // Semen from a straw needs no tup looked over; a tup that is named is there to be looked at, whatever the mating.
        if (group.Mating != Mating.Artificial || group.Tup is not null)
        {
            yield return new(
                JobIds.TupCheck, tup is not null ? language.Say($"Check tup {tup}") : language.Say("Check the tup"),
                JobAnchor.TupIn, new(-77, -70, -63), Handled: false,
                language.Say("10 weeks before the tup goes in, so that there is time to replace one that fails"),
                language.Say("Otago Daily Times farm advice: 8 to 10 weeks before mating; Teagasc: sperm take 5 to 7 weeks to make"));
        }

        var check = new JobWindow(-63, -56, -42).MovedTo(-7 * practice.TeethToesTeatsWeeksBeforeTupping);
        yield return new(
            JobIds.TeethToesTeats, language.Say("Teeth, toes, teats and condition"), JobAnchor.TupIn, check, Handled: true,
            language.Say($"{DateWords.Span(-check.Best, language)} before the tup goes in, so that there is time to mend feet and condition"),
            language.Say("common practice; Teagasc: a ewe takes 8 to 10 weeks to gain one condition score"));

        if (practice.Shear == Shearing.BeforeTupping)
        {
            yield return new(
                JobIds.Shear, language.Say("Shear"), JobAnchor.TupIn, new(-70, -56, -14), Handled: true,
                language.Say("8 weeks before the tup goes in"), CommonPractice(language));
        }

        yield return JobRule.Fixed(
            JobIds.TupIn, MatingTitle(group, tup, language), JobAnchor.TupIn, 0, handled: true, FileGivesTheDay(language), FlockFile(language));

        if (!group.IsOneDay)
        {
            foreach (var change in RaddleRules.For(group, practice.ChangeoverDays, language))
            {
                yield return change;
            }

            yield return JobRule.Fixed(
                JobIds.TupOut, tup is null ? language.Say("Tup out") : language.Say($"Tup {tup} out"), JobAnchor.TupOut, 0, handled: true, FileGivesTheDay(language), FlockFile(language));
        }

        var (first, last) = practice.ScanDaysAfterTupIn;
        yield return new(
            JobIds.Scan, language.Say("Scan"), JobAnchor.TupIn, new(first, first, last), Handled: true,
            language.Say($"{language.CountLoose(first, "day", "days")} after the tup went in, when lambs can be counted"),
            language.Say("common practice; Teagasc: best 80 to 90 days after the ram is turned out"));
    }

    private static string MatingTitle(TuppingGroup group, string? tup, Language language) => (group.Mating, group.Raddle, tup) switch
    {
        (Mating.Artificial, _, _) => language.Say("Artificial insemination"),
        (Mating.Hand, _, _) => language.Say("Hand mating"),
        (_, [], null) => language.Say("Tup in"),
        (_, [], _) => language.Say($"Tup {tup} in"),
        (_, [var colour, ..], null) => language.Say($"Tup in, raddle {colour}"),
        (_, [var colour, ..], _) => language.Say($"Tup {tup} in, raddle {colour}"),
    };
}
