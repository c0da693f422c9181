namespace PaperFlock.Planning.Feeding;

/// <summary>What a whole litter is taken to weigh at birth, as a share of its mother's weight.</summary>
/// <remarks>An assumption of this program, not AFRC's: 7.5, 12.5 and 15 % give 5.3, 8.8 and 10.5 kg for a 70 kg ewe's one,
/// two and three lambs, ordinary birth weights for a lowland breed. Four and five are carried on in the same falling steps.
/// Not rounded, so that a heavier ewe is never given less.</remarks>
internal static class LitterWeight
{
    /// <returns>kg; 0 when she carries none.</returns>
    /// <param name="eweWeight">Live weight, kg.</param>
    /// <param name="litter">Lambs carried, or what a flock carries on average; more than five weigh as five.</param>
    public static double AtBirth(double eweWeight, double litter)
    {
        var below = (int)Math.Floor(litter);
        return eweWeight * (Share(below) + ((litter - below) * (Share(below + 1) - Share(below))));
    }

    private static double Share(int litter) => litter switch
    {
        <= 0 => 0,
        1 => 0.075,
        2 => 0.125,
        3 => 0.15,
        4 => 0.165,
        _ => 0.175,
    };
}
