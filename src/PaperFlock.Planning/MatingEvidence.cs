using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning;

/// <summary>The strongest word there is on when a ewe was mated.</summary>
/// <param name="FirstDay">First day it allows, included.</param>
/// <param name="LastDay">Last day it allows, included.</param>
public sealed record MatingEvidence(Evidence Kind, LocalDate FirstDay, LocalDate LastDay)
{
    /// <summary>The mark is the last of several heats: she did not hold to the first.</summary>
    public bool MarkedAgain { get; init; }

    /// <summary>What the scanner said, where it chose between halves of the tup's stay or between marks; otherwise null.</summary>
    public ScanStage? Stage { get; init; }

    /// <summary>One day is known, not only a stretch of days.</summary>
    public bool IsOneDay => Kind is Evidence.Mating or Evidence.Mark;

    /// <summary>For a ewe that has been, or is to go, to the tup; whether she has lambed since does not matter here.</summary>
    internal static MatingEvidence Of(Ewe ewe, TuppingGroup group, Practice practice)
    {
        if (group.IsOneDay)
        {
            return new(Evidence.Mating, group.TupIn, group.TupIn);
        }

        if (!ewe.Marks.IsEmpty)
        {
            var heats = Heats.Of(ewe.Marks, practice.ChangeoverDays);
            var early = ewe.ScanStage == ScanStage.Early;
            var mark = early ? heats[0] : heats[^1];
            return new(Evidence.Mark, mark, mark)
            {
                MarkedAgain = heats.Length > 1 && !early,
                Stage = heats.Length > 1 ? ewe.ScanStage : null,
            };
        }

        return ewe.ScanStage switch
        {
            ScanStage.Early => new(Evidence.Scan, group.TupIn, TupStay.EndOfFirstHalf(group)) { Stage = ScanStage.Early },
            ScanStage.Late => new(Evidence.Scan, TupStay.StartOfSecondHalf(group), group.TupOut) { Stage = ScanStage.Late },
            _ => new(Evidence.TupStay, group.TupIn, group.TupOut),
        };
    }
}

/// <summary>Strongest first.</summary>
public enum Evidence
{
    Lambed,
    Mating,
    Mark,
    Scan,
    TupStay,
}
