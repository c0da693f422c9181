using PaperFlock.Printing.Pdf;
using SkiaSharp;

namespace PaperFlock.Printing.Fonts;

/// <summary>A font file as a PDF embeds it, and what the PDF says of it. Lengths are in thousandths of the em.</summary>
/// <param name="Name">The font's PostScript name.</param>
/// <param name="Compressed">The file.</param>
/// <param name="Length">Of the file before it was compressed, in bytes.</param>
/// <param name="Bounds">Room for any of its glyphs, y upwards from the baseline.</param>
/// <param name="Stem">Width of an upright stroke.</param>
internal sealed record FontProgram(
    string Name,
    byte[] Compressed,
    int Length,
    bool IsFixedPitch,
    (double Left, double Lowest, double Right, double Highest) Bounds,
    double Stem)
{
    private const double Em = 1000;

    public static FontProgram Of(string file, SKTypeface typeface)
    {
        var bytes = FontFace.Read(file);
        using var flate = new Flate();
        using var font = FontFace.FontAtEm(typeface);
        var metrics = font.Metrics;
        // The bar of a face is nothing but a stem.
        _ = font.MeasureText("|", out var bar);
        return new FontProgram(
            typeface.PostScriptName ?? throw new InvalidOperationException($"{file} has no name"),
            flate.Compress(bytes),
            bytes.Length,
            typeface.IsFixedPitch,
            (Ems(metrics.XMin), Ems(-metrics.Bottom), Ems(metrics.XMax), Ems(-metrics.Top)),
            Ems(bar.Width));

        double Ems(float units) => Math.Round(units * Em / typeface.UnitsPerEm);
    }
}
