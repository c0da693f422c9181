using PaperFlock.Layout;

namespace PaperFlock.Packs;

/// <summary>What a shop calls a size of paper.</summary>
internal static class PaperName
{
    /// <summary>Half a millimetre: more than rounding, less than the difference between any two.</summary>
    private const double Tolerance = 0.5 * Units.PointsPerMillimetre;

    /// <summary>Millimetres, upright. A sizes from ISO 216; Letter and Tabloid are 8½ × 11 and 11 × 17 inches.</summary>
    private static readonly (string Name, double Width, double Height)[] Sizes =
    [
        ("A2", 420, 594),
        ("A3", 297, 420),
        ("A4", 210, 297),
        ("Letter", 215.9, 279.4),
        ("Tabloid", 279.4, 431.8),
    ];

    /// <param name="paper">Points; upright or on its side.</param>
    public static string Of(Size paper)
    {
        var (narrow, wide) = (Math.Min(paper.Width, paper.Height), Math.Max(paper.Width, paper.Height));
        var known = Sizes.FirstOrDefault(s => Math.Abs(narrow - Units.Mm(s.Width)) < Tolerance && Math.Abs(wide - Units.Mm(s.Height)) < Tolerance);
        return known.Name ?? string.Create(CultureInfo.InvariantCulture, $"{narrow / Units.PointsPerMillimetre:0} × {wide / Units.PointsPerMillimetre:0} mm paper");
    }
}
