namespace PaperFlock.Planning.Feeding;

/// <summary>What goes into a trough, rounded down to what can be measured: the one rounding behind every sheet.</summary>
internal sealed class TroughAmounts(Feeds feeds, UnitSystem units)
{
    private const decimal FewHeads = 2;

    /// <summary>By so much less than the plain sum, and no more: a tenth, or this many kilograms where that is more.</summary>
    private const decimal Loss = 0.05m;

    /// <summary>What one mark of the scales or one half scoop is, kg.</summary>
    private (decimal Fine, decimal Coarse) Marks => units == UnitSystem.Imperial
        ? (0.1m * Mass.KilogramsPerPound, 0.2m * Mass.KilogramsPerPound)
        : (0.05m, 0.1m);

    public decimal? HalfScoop => !feeds.Scales && feeds.Concentrate.Scoop is { } scoop ? scoop.Kilograms / 2 : null;

    /// <summary>Kilograms for so many heads at one feed. Where half a scoop is more than that, as if there were scales: nothing is not a ration.</summary>
    /// <param name="each">Of one head at one feed, kg.</param>
    public decimal For(decimal each, int heads)
    {
        var whole = each * heads;
        if (HalfScoop is { } half && Down(whole, half) is > 0 and var scooped)
        {
            return scooped;
        }

        var coarse = Down(whole, Marks.Coarse);
        return heads > FewHeads && whole - coarse < Math.Max(whole / 10, Loss) ? coarse : Down(whole, Marks.Fine);
    }

    /// <summary>For one head, two, and so on.</summary>
    public ImmutableArray<decimal> ByHeads(decimal each, int most) => [.. Enumerable.Range(1, most).Select(heads => For(each, heads))];

    private static decimal Down(decimal kilograms, decimal mark) => Math.Floor((kilograms / mark) + 0.000001m) * mark;
}
