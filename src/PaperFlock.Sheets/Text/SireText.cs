namespace PaperFlock.Sheets;

/// <summary>Who the sire of a ewe's lambs is: a name where that is certain, otherwise each that may be, with the chance.</summary>
public static class SireText
{
    /// <summary>"Bramley", or "Bramley 80 % or Damson 20 %"; empty where no tup is named, or she carries nothing.</summary>
    public static string Of(EwePlan ewe) => ewe.CertainSire ?? string.Join(" or ", ewe.Sires.Select(s => $"{s.Tup} {Percent(s.Chance)} %"));

    /// <summary>Neither of two that are possible is ever said to be out of the question.</summary>
    private static string Percent(double chance) => chance < 0.01 ? "under 1" : Math.Round(chance * 100).ToString(CultureInfo.InvariantCulture);
}
