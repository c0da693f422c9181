namespace PaperFlock.Planning.Dates;

/// <summary>The halves of a tup's stay that a scanner's "early" and "late" choose between; the middle day of an odd stay is in both.</summary>
internal static class TupStay
{
    public static LocalDate EndOfFirstHalf(TuppingGroup group) => group.TupIn.PlusDays(DaysAfterFirst(group) / 2);

    public static LocalDate StartOfSecondHalf(TuppingGroup group) => group.TupIn.PlusDays((DaysAfterFirst(group) + 1) / 2);

    private static int DaysAfterFirst(TuppingGroup group) => Period.DaysBetween(group.TupIn, group.TupOut);
}
