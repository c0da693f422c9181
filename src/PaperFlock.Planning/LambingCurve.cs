namespace PaperFlock.Planning;

/// <summary>How many ewes lamb each day, as an exact distribution summed over the ewes still to lamb.</summary>
/// <param name="Ewes">Still to lamb.</param>
/// <param name="Days">Consecutive, from the first to the last day any ewe's chances cover, so that the expected ewes add up to the ewes in lamb; empty when no ewe is in lamb.</param>
/// <param name="BusiestNights">In date order: the night with the most ewes expected, and every other within a tenth of a ewe of it, too close to rank.</param>
/// <param name="ChanceTooFewPens">Chance, 0 to 1, that on the worst night more pens are wanted than there are: the largest of the nights'
/// own chances. Null when the file names no number, or the ewes lamb outdoors.</param>
public sealed record LambingCurve(int Ewes, ImmutableArray<LambingDay> Days, ImmutableArray<LocalDate> BusiestNights, double? ChanceTooFewPens)
{
    /// <summary>Chance, 0 to 1, that more pens are wanted than there are on some night or other of the season; null as <see cref="ChanceTooFewPens"/>.</summary>
    public double? ChanceTooFewPensOnSomeNight { get; init; }

    /// <summary>Pens that are enough on every night of nine seasons in ten; never none where ewes lamb indoors.</summary>
    public int PensForTheSeason { get; init; }

    public LambingDay? On(LocalDate day) => Days.FirstOrDefault(d => d.Date == day);
}

/// <param name="ExpectedEwes">Mean number of ewes lambing that day.</param>
/// <param name="P10">The 10 % point: the smallest number such that so many or fewer lamb with a chance of at least 10 %.</param>
/// <param name="P90">The 90 % point.</param>
/// <param name="PensNeededP90">90 % point of lambing pens in use that night; 0 where the ewes lamb outdoors.</param>
/// <param name="ChanceOverPens">Chance that more pens are wanted than the file names; null when it names none.</param>
public sealed record LambingDay(LocalDate Date, double ExpectedEwes, int P10, int P90, int PensNeededP90, double? ChanceOverPens);
