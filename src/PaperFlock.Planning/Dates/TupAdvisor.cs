namespace PaperFlock.Planning.Dates;

/// <summary>
/// What the check of teeth, toes and teats says about putting a ewe to the tup. Broken mouths, bad udders and lasting
/// lameness are the culls that Raising Sheep (page 282) and Teagasc name. A caesarean, a prolapse or mastitis keeps her back: common practice, no source.
/// </summary>
internal static class TupAdvisor
{
    /// <summary>Under this she is thin for the tup, over <see cref="FatAbove"/> too fat: common practice, no source.</summary>
    private const decimal ThinBelow = 2;

    private const decimal FatAbove = 4;

    public static TupAdvice Advise(Ewe ewe) => new([.. Enum.GetValues<TupFinding>().Where(finding => Has(ewe, finding))]);

    private static bool Has(Ewe ewe, TupFinding finding) => finding switch
    {
        TupFinding.LostHalfUdder => ewe.Teats == Teats.LostHalf,
        TupFinding.BrokenMouth => ewe.Teeth == Teeth.Broken,
        TupFinding.LumpyUdder => ewe.Teats == Teats.Lumpy,
        TupFinding.HadCaesarean => ewe.History.Contains(PastTrouble.Caesarean),
        TupFinding.HadProlapse => ewe.History.Contains(PastTrouble.Prolapse),
        TupFinding.HadMastitis => ewe.History.Contains(PastTrouble.Mastitis),
        TupFinding.KeptBack => ewe.ToTup == false,
        TupFinding.Lame => ewe.Toes == Toes.Lame,
        TupFinding.FeetTreated => ewe.Toes == Toes.Treated,
        TupFinding.WornTeeth => ewe.Teeth == Teeth.Worn,
        TupFinding.Thin => ewe.Condition < ThinBelow,
        TupFinding.TooFat => ewe.Condition > FatAbove,
        _ => throw new ArgumentOutOfRangeException(nameof(finding)),
    };
}
