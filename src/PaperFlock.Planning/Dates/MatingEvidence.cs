using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Dates;

/// <summary>The strongest word there is on when a ewe was mated.</summary>
/// <param name="FirstDay">First day it allows, included.</param>
/// <param name="LastDay">Last day it allows, included.</param>
/// <param name="Words">As printed beside her dates, such as "marked Fri 14 Aug".</param>
internal sealed record MatingEvidence(Evidence Kind, LocalDate FirstDay, LocalDate LastDay, string Words)
{
    /// <summary>One day is known, not only a stretch of days.</summary>
    public bool IsOneDay => Kind is Evidence.MatingDay or Evidence.Mark;

    /// <summary>For a ewe that has been, or is to go, to the tup; whether she has lambed since does not matter here.</summary>
    public static MatingEvidence Of(Ewe ewe, TuppingGroup group, Practice practice)
    {
        if (group.IsOneDay)
        {
            return new(Evidence.MatingDay, group.TupIn, group.TupIn, $"mated {DateWords.Day(group.TupIn)}");
        }

        if (!ewe.Marks.IsEmpty)
        {
            return ByMark(ewe, practice);
        }

        return ewe.ScanStage switch
        {
            ScanStage.Early => new(Evidence.ScanStage, group.TupIn, TupStay.EndOfFirstHalf(group), "no mark; scanner said early"),
            ScanStage.Late => new(Evidence.ScanStage, TupStay.StartOfSecondHalf(group), group.TupOut, "no mark; scanner said late"),
            _ => new(Evidence.TupStay, group.TupIn, group.TupOut, $"no mark seen; tup in {DateWords.Day(group.TupIn)} to {DateWords.Day(group.TupOut)}"),
        };
    }

    private static MatingEvidence ByMark(Ewe ewe, Practice practice)
    {
        var heats = Heats.Of(ewe.Marks, practice.ChangeoverDays);
        if (heats.Length == 1)
        {
            return On(heats[0], "marked", "");
        }

        return ewe.ScanStage switch
        {
            ScanStage.Early => On(heats[0], "marked", "; scanner said early"),
            ScanStage.Late => On(heats[^1], "marked again", "; scanner said late"),
            _ => On(heats[^1], "marked again", ""),
        };

        static MatingEvidence On(LocalDate mark, string how, string scanner) =>
            new(Evidence.Mark, mark, mark, $"{how} {DateWords.Day(mark)}{scanner}");
    }
}
