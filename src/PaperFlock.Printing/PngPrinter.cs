using PaperFlock.Layout.Pages;

namespace PaperFlock.Printing;

/// <summary>A page as a picture for the screen, from the same items as the PDF.</summary>
public static class PngPrinter
{
    /// <param name="dotsPerInch">72 gives a pixel a point.</param>
    public static byte[] Paint(Page page, double dotsPerInch) => throw new NotSupportedException($"{page}{dotsPerInch}");
}
