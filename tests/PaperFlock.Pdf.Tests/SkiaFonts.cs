using PaperFlock.Layout;
using SkiaSharp;

namespace PaperFlock.Pdf.Tests;

/// <summary>The four faces as a drawing library reads them, which shares no code with ours.</summary>
internal static class SkiaFonts
{
    public static SKTypeface Of(Face face)
    {
        using var data = SKData.CreateCopy(FontLibrary.Of(face).Bytes.Span);
        return SKTypeface.FromData(data);
    }

    /// <summary>Nothing snapped to the pixels of a screen.</summary>
    public static SKFont At(Face face, float size) => new(Of(face), size)
    {
        Hinting = SKFontHinting.None,
        Subpixel = true,
        LinearMetrics = true,
        BaselineSnap = false,
    };
}
