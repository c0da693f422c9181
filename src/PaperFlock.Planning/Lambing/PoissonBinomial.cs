using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Lambing;

/// <summary>How many of several independent, unequal yes/no chances come out yes: the Poisson-binomial distribution, exact.</summary>
internal sealed class PoissonBinomial
{
    private readonly double[] _chances;

    private PoissonBinomial(double[] chances, double mean)
    {
        _chances = chances;
        Mean = mean;
    }

    /// <summary>The sum of the chances.</summary>
    public double Mean { get; }

    /// <summary>Built by convolution, one chance at a time: n(n+1)/2 steps for n chances above zero.</summary>
    /// <param name="chances">Each 0 to 1; a hair outside, from rounding, is drawn in.</param>
    public static PoissonBinomial Of(IEnumerable<double> chances)
    {
        var trials = chances.Where(p => p > 0).Select(p => Math.Min(p, 1)).ToArray();
        var counts = new double[trials.Length + 1];
        counts[0] = 1;
        for (var n = 0; n < trials.Length; n++)
        {
            var yes = trials[n];
            var no = 1 - yes;
            for (var k = n + 1; k > 0; k--)
            {
                counts[k] = (counts[k] * no) + (counts[k - 1] * yes);
            }

            counts[0] *= no;
        }

        return new PoissonBinomial(counts, trials.Sum());
    }

    /// <summary>Chance of exactly so many.</summary>
    public double Exactly(int count) => count >= 0 && count < _chances.Length ? _chances[count] : 0;

    /// <summary>Chance of more than so many.</summary>
    public double MoreThan(int count)
    {
        // Summed from the small end, so that a chance of one in a million is not lost in the rounding of one minus the rest.
        var sum = 0.0;
        for (var k = _chances.Length - 1; k > Math.Max(count, -1); k--)
        {
            sum += _chances[k];
        }

        return Math.Min(sum, 1);
    }

    /// <summary>The smallest number such that so many or fewer has at least this chance.</summary>
    /// <param name="share">0 to 1.</param>
    public int Quantile(double share) => Quantiles.Of(_chances, share);
}
