namespace PaperFlock.Pdf;

/// <summary>What came of looking for an attachment in a PDF.</summary>
/// <param name="Bytes">The attachment; empty unless it was found.</param>
public readonly record struct PdfAttachmentReading(PdfAttachmentOutcome Outcome, ReadOnlyMemory<byte> Bytes);
