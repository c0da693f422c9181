using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Text;

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
            return new(Evidence.MatingDay, group.TupIn, group.TupIn, $"mated {DateText.Loose(group.TupIn)}");
        }

        if (!ewe.Marks.IsEmpty)
        {
            return ByMark(ewe, practice);
        }

        return ewe.ScanStage switch
        {
            ScanStage.Early => new(Evidence.ScanStage, group.TupIn, TupStay.EndOfFirstHalf(group), "no mark; scanner said early"),
            ScanStage.Late => new(Evidence.ScanStage, TupStay.StartOfSecondHalf(group), group.TupOut, "no mark; scanner said late"),
            _ => new(Evidence.TupStay, group.TupIn, group.TupOut, $"no mark seen; tup in {DateText.Loose(group.TupIn)} to {DateText.Loose(group.TupOut)}"),
        };
    }

    private static MatingEvidence ByMark(Ewe ewe, Practice practice)
    {
        var heats = Heats.Of(ewe.Marks, practice.ChangeoverDays);
        var (first, last) = (heats[0], heats[^1]);
        string Day(LocalDate day) => DateText.Loose(day);
        return (heats.Length, ewe.ScanStage) switch
        {
            (1, _) => On(first, $"marked {Day(first)}"),
            (_, ScanStage.Early) => On(first, $"marked {Day(first)}; scanner said early"),
            (_, ScanStage.Late) => On(last, $"marked again {Day(last)}; scanner said late"),
            _ => On(last, $"marked again {Day(last)}"),
        };

        static MatingEvidence On(LocalDate mark, string words) => new(Evidence.Mark, mark, mark, words);
    }
}
