namespace PaperFlock.Planning.Feeding;

/// <summary>What a thin ewe is given over her plain need.</summary>
internal static class ConditionCorrection
{
    /// <summary>Below this score at tupping a ewe has no back fat to draw on in the last weeks.</summary>
    public const double Thin = 2.5;

    /// <summary>A twentieth more for each half score under 2.5, in proportion; nothing is taken off a fat ewe.</summary>
    /// <remarks>From memory: the trade feeds thin ewes more, and AFRC (1993) adds 5 % to every allowance for safety; here that
    /// one margin is spent on each half score she is thin. Fat ewes are not cut: a fat ewe short of energy
    /// is the one that goes down with twin lamb disease.</remarks>
    /// <param name="score">Body condition score, 1 to 5; null where nobody scored her.</param>
    /// <returns>What to multiply her energy need by; at least 1.</returns>
    public static double Factor(decimal? score) =>
        score is { } s && (double)s < Thin ? 1 + (0.1 * (Thin - (double)s)) : 1;
}
