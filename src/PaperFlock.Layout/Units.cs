namespace PaperFlock.Layout;

/// <summary>Paper is measured in millimetres, type is set in points.</summary>
public static class Units
{
    public const double PointsPerMillimetre = 72 / 25.4;

    /// <summary>Millimetres to points.</summary>
    public static double Mm(double millimetres) => millimetres * PointsPerMillimetre;
}
