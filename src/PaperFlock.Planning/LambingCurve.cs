using System.Collections.Immutable;
using NodaTime;

namespace PaperFlock.Planning;

/// <summary>How many ewes lamb each day, as an exact distribution summed over the ewes still to lamb.</summary>
/// <param name="Days">Consecutive; empty when no ewe is in lamb.</param>
/// <param name="ChanceTooFewPens">Chance, 0 to 1, that on some night more pens are wanted than there are; null when the file names no number.</param>
/// <param name="Words">What the curve says in a sentence or two.</param>
public sealed record LambingCurve(ImmutableArray<LambingDay> Days, ImmutableArray<LocalDate> BusiestNights, double? ChanceTooFewPens, string Words)
{
    public LambingDay? On(LocalDate day)
    {
        if (Days.IsEmpty)
        {
            return null;
        }

        var i = Period.DaysBetween(Days[0].Date, day);
        return i >= 0 && i < Days.Length ? Days[i] : null;
    }
}

/// <param name="ExpectedEwes">Mean number of ewes lambing that day.</param>
/// <param name="P10">The smallest number at least as many as which lamb with chance 10 % or more below or at it: the 10 % point.</param>
/// <param name="P90">The 90 % point.</param>
/// <param name="PensNeededP90">90 % point of lambing pens in use that night.</param>
/// <param name="ChanceOverPens">Chance that more pens are wanted than the file names; null when it names none.</param>
public sealed record LambingDay(LocalDate Date, double ExpectedEwes, int P10, int P90, int PensNeededP90, double? ChanceOverPens);
