namespace PaperFlock.Sheets.TestPage;

/// <summary>
/// Outlines of the punched holes, with the ticks that every leaf of a pack has. Two holes: 6 mm across, centres 80 mm apart and 12 mm
/// from the edge (ISO 838). Three holes as usual in North America: centres 108 mm (4 1/4 in) apart and about 9.5 mm (3/8 in) from the edge, which differs
/// from punch to punch; drawn at 6 mm across too.
/// </summary>
internal static class PunchHoles
{
    public const double Diameter = 6;
    private const double TwoHoleDeep = 12;
    private const double ThreeHoleDeep = 9.5;
    private static readonly double[] TwoHoles = [-40, 40];
    private static readonly double[] ThreeHoles = [-108, 0, 108];

    /// <summary>At the left of a front; a back shows them at its right, where they come to lie when the leaf is turned on its long edge.</summary>
    public static IEnumerable<Item> On(Size paper, PageSide side) =>
    [
        .. Circles(paper, side, TwoHoleDeep, TwoHoles), .. Circles(paper, side, ThreeHoleDeep, ThreeHoles),
        .. HoleTicks.Upright(paper, Binding.TwoHole, side)!.Items, .. HoleTicks.Upright(paper, Binding.ThreeHole, side)!.Items,
    ];

    private static IEnumerable<Item> Circles(Size paper, PageSide side, double deep, double[] places) => places.Select(
        mm => new CircleItem(side == PageSide.Front ? Mm(deep) : paper.Width - Mm(deep), (paper.Height / 2) + Mm(mm), Mm(Diameter / 2), Lines.Grid));
}
