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

    public static Element? Upright(Size paper, Binding binding, PageSide side)
    {
        var heights = Offsets(binding);
        if (heights.IsEmpty)
        {
            return null;
        }

        var middle = paper.Height / 2;
        var (from, to) = side == PageSide.Front ? (Mm(FromMm), Mm(ToMm)) : (paper.Width - Mm(ToMm), paper.Width - Mm(FromMm));
        return new Picture(paper, [.. heights.Select(h => (Item)new LineItem(from, middle + Mm(h), to, middle + Mm(h), Lines.Grid))]);
    }

    public static Element? Sideways(Size paper, Binding binding, PageSide side)
    {
        var offsets = Offsets(binding);
        if (offsets.IsEmpty)
        {
            return null;
        }

        var middle = paper.Width / 2;
        var (from, to) = side == PageSide.Front ? (Mm(FromMm), Mm(ToMm)) : (paper.Height - Mm(ToMm), paper.Height - Mm(FromMm));
        return new Picture(paper, [.. offsets.Select(o => (Item)new LineItem(middle + Mm(o), from, middle + Mm(o), to, Lines.Grid))]);
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
