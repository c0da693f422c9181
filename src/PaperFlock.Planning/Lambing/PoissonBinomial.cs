using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Lambing;

/// <summary>How many of several independent, unequal yes/no chances come out yes: the Poisson-binomial distribution, exact to rounding.</summary>
/// <param name="chances">Of none, one, two, and so on.</param>
/// <param name="mean">The sum of the chances it is made of.</param>
internal sealed class PoissonBinomial(double[] chances, double mean)
{
    /// <summary>So small a chance is left out. All that are, for any flock, come to less than rounding does.</summary>
    private const double Never = 1e-30;

    public double Mean => mean;

    /// <summary>Built by convolution, one chance at a time: for each a step for every count that is then possible.</summary>
    /// <param name="chances">Each 0 to 1; a hair outside, from rounding, is drawn in.</param>
    public static PoissonBinomial Of(IEnumerable<double> chances)
    {
        var trials = chances.Where(p => p > 0).Select(p => Math.Min(p, 1)).ToArray();
        var counts = new double[trials.Length + 1];
        counts[0] = 1;
        // The counts that have a chance: of two thousand ewes a hundred lamb on a day, or two hundred, but never one and never a thousand.
        var (least, most) = (0, 0);
        foreach (var yes in trials)
        {
            var no = 1 - yes;
            counts[most + 1] = counts[most] * yes;
            for (var k = most; k > least; k--)
            {
                counts[k] = (counts[k] * no) + (counts[k - 1] * yes);
            }

            counts[least] *= no;
            for (most++; counts[most] < Never; most--)
            {
                counts[most] = 0;
            }

            for (; counts[least] < Never; least++)
            {
                counts[least] = 0;
            }
        }

        return new PoissonBinomial(counts, trials.Sum());
    }

    /// <summary>Chance of exactly so many.</summary>
    public double Exactly(int count) => count >= 0 && count < chances.Length ? chances[count] : 0;

    /// <summary>Chance of more than so many.</summary>
    public double MoreThan(int count) =>
        // Summed from the small end, so that a chance of one in a million is not lost in the rounding of one minus the rest.
        Math.Min(chances.Skip(count + 1).Reverse().Sum(), 1);

    /// <summary>The smallest number such that so many or fewer has at least this chance.</summary>
    /// <param name="share">0 to 1.</param>
    public int Quantile(double share) => Quantiles.Of(chances, share);
}
