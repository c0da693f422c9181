namespace PaperFlock.Pdf.Reading;

/// <summary>A name in a PDF, without the slash before it (ISO 32000-1, 7.3.5).</summary>
internal sealed record PdfName(string Name);
