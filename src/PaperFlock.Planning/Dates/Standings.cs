namespace PaperFlock.Planning.Dates;

internal static class Standings
{
    /// <summary>
    /// What is known beats what was advised: a lambing, a scan or a raddle mark outweighs the check of teeth, toes and
    /// teats. Only the keeper's own word keeps out a ewe that has been marked.
    /// </summary>
    public static Standing BeforeLoss(Ewe ewe, TupAdvice advice)
    {
        if (ewe.Lambed is not null)
        {
            return Standing.Lambed;
        }

        if (ewe.Scan == 0)
        {
            return Standing.Empty;
        }

        var leftOut = ewe.ToTup switch
        {
            true => false,
            false => true,
            null => advice.Verdict >= TupVerdict.LeaveOut && ewe.Marks.IsEmpty && ewe.Scan is null,
        };
        return leftOut ? Standing.LeftOut : Standing.ToLamb;
    }
}
