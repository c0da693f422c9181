namespace PaperFlock.Pdf;

/// <summary>Finished pages and what a PDF says about them.</summary>
/// <param name="Language">BCP 47, such as "en-GB".</param>
public sealed record PrintDocument(
    string Title,
    string? Author,
    string Language,
    ImmutableArray<PrintPage> Pages,
    ImmutableArray<OutlineEntry> Outline,
    DuplexHint Duplex)
{
    /// <summary>A file that travels in the PDF; null for none.</summary>
    public PdfAttachment? Attachment { get; init; }
}
