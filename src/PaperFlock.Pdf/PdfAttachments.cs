using PaperFlock.Pdf.Reading;
using PaperFlock.Pdf.Writing;

namespace PaperFlock.Pdf;

/// <summary>Finds and replaces files attached to a PDF that <see cref="PdfPrinter"/> wrote. Whatever else it is given, it says so, at once and without an exception.</summary>
public static class PdfAttachments
{
    /// <summary>Bytes of a PDF beyond which it is none of ours: a pack of two thousand ewes has 30 MB.</summary>
    public const int MostBytes = 128 << 20;

    /// <param name="name">As in <see cref="PdfAttachment.Name"/>.</param>
    /// <param name="limit">Bytes beyond which an attachment is too large, however little it was compressed to.</param>
    public static PdfAttachmentReading Read(ReadOnlyMemory<byte> pdf, string name, int limit)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (pdf.Length > MostBytes)
        {
            return new PdfAttachmentReading(PdfAttachmentOutcome.TooLarge, default);
        }

        try
        {
            if (!IsOurs(pdf.Span))
            {
                return new PdfAttachmentReading(PdfAttachmentOutcome.Foreign, default);
            }

            if (new FileReader(pdf).FindAttachment(name) is not { } found)
            {
                return new PdfAttachmentReading(PdfAttachmentOutcome.Missing, default);
            }

            return Flate.Inflate(found.Compressed, limit) is { } bytes
                ? new PdfAttachmentReading(bytes.Length == found.Size ? PdfAttachmentOutcome.Found : PdfAttachmentOutcome.Damaged, bytes.Length == found.Size ? bytes : default)
                : new PdfAttachmentReading(PdfAttachmentOutcome.TooLarge, default);
        }
        catch (InvalidDataException)
        {
            return new PdfAttachmentReading(PdfAttachmentOutcome.Damaged, default);
        }
    }

    /// <summary>The same PDF with another content of an attachment, as an incremental update (ISO 32000-1, 7.5.6): every byte there was stands before it.</summary>
    /// <returns>Null where <see cref="Read"/> would not find it.</returns>
    public static byte[]? Replace(ReadOnlyMemory<byte> pdf, string name, ReadOnlySpan<byte> bytes)
    {
        if (Read(pdf, name, int.MaxValue).Outcome != PdfAttachmentOutcome.Found || new FileReader(pdf) is not { } file || file.FindAttachment(name) is not { } found)
        {
            return null;
        }

        using var output = new MemoryStream();
        output.Write(pdf.Span);
        var update = new PdfFile(output, file.Trailer);
        update.WriteStream(found.Stream, Flate.Compress(bytes), Attachments.Entries(found.Subtype, bytes.Length));
        update.Finish(file.Trailer.Catalog, file.Trailer.Information);
        return output.ToArray();
    }

    /// <summary>Both stand in the clear in each of our files.</summary>
    private static bool IsOurs(ReadOnlySpan<byte> pdf) => pdf.StartsWith("%PDF-"u8) && pdf.IndexOf("/Producer(PaperFlock)"u8) >= 0;
}
