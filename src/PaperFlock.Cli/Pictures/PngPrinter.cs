using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Painting;
using SkiaSharp;

namespace PaperFlock.Cli.Pictures;

/// <summary>A page as a picture for the screen, from the same items as the PDF.</summary>
internal static class PngPrinter
{
    // Fixed here, so that a library that changes its mind does not change the picture's bytes.
    private static readonly SKPngEncoderOptions Encoding = new(SKPngEncoderFilterFlags.AllFilters, 6);

    /// <summary>Black and greys on white, the whole paper, rounded to whole pixels.</summary>
    /// <param name="dotsPerInch">72 gives a pixel a point.</param>
    public static byte[] Paint(Page page, double dotsPerInch)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dotsPerInch);
        var scale = dotsPerInch / 72;
        var info = new SKImageInfo(Pixels(page.Paper.Width, scale), Pixels(page.Paper.Height, scale), SKColorType.Gray8, SKAlphaType.Opaque);
        using var surface = SKSurface.Create(info) ?? throw new ArgumentOutOfRangeException(nameof(dotsPerInch), dotsPerInch, "the picture would be too large");
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale((float)scale);
        using (var canvas = new SkiaCanvas(surface.Canvas))
        {
            PiecePainter.Paint(page, canvas);
        }

        using var pixels = surface.PeekPixels();
        using var png = new MemoryStream();
        return pixels.Encode(png, Encoding) ? png.ToArray() : throw new InvalidOperationException("the picture could not be encoded");
    }

    private static int Pixels(double points, double scale) => Math.Max(1, (int)Math.Round(points * scale, MidpointRounding.AwayFromZero));
}
