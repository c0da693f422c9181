namespace PaperFlock.Pdf;

/// <summary>What came of looking for an attachment in a PDF.</summary>
/// <param name="Bytes">The attachment; empty unless it was found.</param>
public readonly record struct PdfAttachmentReading(PdfAttachmentOutcome Outcome, ReadOnlyMemory<byte> Bytes = default);

public enum PdfAttachmentOutcome
{
    Found,

    /// <summary>Our PDF, whole, with no attachment of that name.</summary>
    Missing,

    /// <summary>No PDF, or one that another program has written.</summary>
    Foreign,

    /// <summary>Our PDF, but cut short, altered, or saved anew by another program.</summary>
    Damaged,

    /// <summary>The file or the attachment is larger than one of ours ever is.</summary>
    TooLarge,
}
