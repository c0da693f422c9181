using PaperFlock.Flocks;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>Where there may be no ink.</summary>
internal static class Edges
{
    /// <summary>A page is whole points wide, which puts its edges up to 0.3 pt (0.1 mm) from where the paper's are.</summary>
    private const double Allowed = 0.3;

    public static IEnumerable<string> NearAnEdge(SideInPack side)
    {
        var (paper, least) = (side.Ink.Paper, Mm(6) - Allowed);
        return AllInk(side).Where(i => i.Area.Left < least || i.Area.Top < least || i.Area.Right > paper.Width - least || i.Area.Bottom > paper.Height - least)
            .Select(i => $"{i.What} reaches {Inside(i.Area, paper):0.0} mm from the edge");
    }

    public static IEnumerable<string> NearTheFoot(SideInPack side)
    {
        var printed = side with { Ink = side.Printed };
        var (paper, least) = (printed.Ink.Paper, Mm(12) - Allowed);

        // Turned with its head to the binding, a page on its side has the leaf's foot at its left end.
        var turned = printed.IsSideways && printed.IsPunched;
        return AllInk(printed).Where(i => !IsHoleTick(i.Stroke, side with { Ink = printed.Ink }) && (i.Area.Bottom > paper.Height - least || (turned && i.Area.Left < least)))
            .Select(i => $"{i.What} reaches {Math.Min(paper.Height - i.Area.Bottom, turned ? i.Area.Left : double.MaxValue) / PointsPerMillimetre:0.0} mm from the foot");
    }

    public static IEnumerable<string> InTheBindingMargin(SideInPack side)
    {
        if (!side.IsPunched || side.Print.Binding == Binding.None)
        {
            return [];
        }

        var margin = Mm(20) - Allowed;
        return AllInk(side).Where(i => !IsHoleTick(i.Stroke, side) && FromBinding(i.Area, side) < margin)
            .Select(i => $"{i.What} is {FromBinding(i.Area, side) / PointsPerMillimetre:0.0} mm from the binding edge");
    }

    public static IEnumerable<string> HoleTicksAmiss(SideInPack side)
    {
        // A blank back need not be punched by its own ticks: its front has them.
        if (!side.IsPunched || side.IsBlankBack)
        {
            return [];
        }

        var edge = side.IsSideways ? side.Ink.Paper.Width : side.Ink.Paper.Height;
        var wanted = HolesMm(side.Print.Binding).Select(mm => (edge / 2) + Mm(mm)).ToArray();
        var ticks = side.Ink.Strokes.Where(s => IsHoleTick(s, side)).Select(s => side.IsSideways ? s.Area.MiddleX : s.Area.MiddleY).Order().ToArray();
        return wanted.Length == ticks.Length && wanted.Zip(ticks).All(p => Math.Abs(p.First - p.Second) < Mm(0.05))
            ? []
            : [$"ticks at {Millimetres(ticks)} along the edge, wanted at {Millimetres(wanted)}"];
    }

    /// <summary>From the middle of the binding edge.</summary>
    private static ImmutableArray<double> HolesMm(Binding binding) => binding switch
    {
        Binding.TwoHole => [-40, 40],
        Binding.FourHole => [-120, -40, 40, 120],
        Binding.ThreeHole => [-108, 0, 108],
        _ => [],
    };

    private static bool IsHoleTick(Stroke? stroke, SideInPack side)
    {
        if (stroke is null || !side.IsPunched || !(side.IsSideways ? stroke.IsUpright : stroke.IsLevel))
        {
            return false;
        }

        var (near, length) = (FromBinding(stroke.Area, side), side.IsSideways ? stroke.Area.Height : stroke.Area.Width);
        return near >= Mm(6) && near + length < Mm(12) && Math.Abs(length - Mm(3)) < 0.1;
    }

    private static double FromBinding(Area area, SideInPack side) => (side.IsSideways, side.IsFront) switch
    {
        (false, true) => area.Left,
        (false, false) => side.Ink.Paper.Width - area.Right,
        (true, true) => area.Top,
        (true, false) => side.Ink.Paper.Height - area.Bottom,
    };

    private static IEnumerable<(Area Area, string What, Stroke? Stroke)> AllInk(SideInPack side) =>
    [
        .. side.Ink.Words.Select(w => (w.All, $"“{w.Text}”", (Stroke?)null)),
        .. side.Ink.Strokes.Select(s => (s.Area, $"a line at {At(s.Area)}", (Stroke?)s)),
        .. side.Ink.Fills.Select(f => (f, $"a filled box at {At(f)}", (Stroke?)null)),
    ];

    private static double Inside(Area area, Layout.Size paper) =>
        Math.Min(Math.Min(area.Left, area.Top), Math.Min(paper.Width - area.Right, paper.Height - area.Bottom)) / PointsPerMillimetre;

    private static string At(Area area) => $"{area.Left / PointsPerMillimetre:0.0}, {area.Top / PointsPerMillimetre:0.0} mm";

    private static string Millimetres(double[] points) => string.Join(", ", points.Select(p => $"{p / PointsPerMillimetre:0.00} mm"));
}
