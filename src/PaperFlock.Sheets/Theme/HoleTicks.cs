namespace PaperFlock.Sheets.Theme;

/// <summary>
/// Small ticks in the binding margin at the height of each hole. Two holes 80 mm apart, 12 mm in (ISO 838); four holes with two
/// more 80 mm outside them; three holes 108 mm (4 1/4 in) apart as usual in North America. All symmetrical about the middle of the edge.
/// </summary>
internal static class HoleTicks
{
    // Outside the edge that printers cannot reach, short of the hole itself.
    private const double FromMm = 7;
    private const double ToMm = 10;

    public static Picture? Upright(Size paper, Binding binding, PageSide side) =>
        Of(paper, paper.Width, binding, side, (from, to, along) => new LineItem(from, (paper.Height / 2) + along, to, (paper.Height / 2) + along, Lines.Grid));

    public static Picture? Sideways(Size paper, Binding binding, PageSide side) =>
        Of(paper, paper.Height, binding, side, (from, to, along) => new LineItem((paper.Width / 2) + along, from, (paper.Width / 2) + along, to, Lines.Grid));

    /// <param name="across">Points from the binding edge to the one opposite.</param>
    /// <param name="tick">From and to so many points from that edge, so far from its middle.</param>
    private static Picture? Of(Size paper, double across, Binding binding, PageSide side, Func<double, double, double, Item> tick)
    {
        var (from, to) = side == PageSide.Front ? (Mm(FromMm), Mm(ToMm)) : (across - Mm(ToMm), across - Mm(FromMm));
        return Offsets(binding) is { IsEmpty: false } offsets ? new Picture(paper, [.. offsets.Select(offset => tick(from, to, Mm(offset)))]) : null;
    }

    /// <summary>Millimetres from the middle of the binding edge.</summary>
    private static ImmutableArray<double> Offsets(Binding binding) => binding switch
    {
        Binding.TwoHole => [-40, 40],
        Binding.FourHole => [-120, -40, 40, 120],
        Binding.ThreeHole => [-108, 0, 108],
        _ => [],
    };
}
