namespace PaperFlock.Pdf;

/// <summary>A file inside the PDF (ISO 32000-1, 7.11.4).</summary>
/// <param name="Name">What it is saved as, such as "issue.json".</param>
/// <param name="MediaType">Such as "application/json".</param>
/// <param name="Description">What it is, for whoever finds it in a reader's list.</param>
public sealed record PdfAttachment(string Name, string MediaType, string Description, ReadOnlyMemory<byte> Bytes);
