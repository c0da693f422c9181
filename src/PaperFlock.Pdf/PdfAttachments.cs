using System.Buffers.Text;
using PaperFlock.Pdf.Writing;

namespace PaperFlock.Pdf;

/// <summary>
/// Finds the file attached to a PDF that <see cref="PdfPrinter"/> wrote, and puts another in its place, by the very words it writes: no other PDF is read here. Whatever else it is
/// given, it says so, at once and without an exception.
/// </summary>
public static class PdfAttachments
{
    /// <summary>Bytes of a PDF beyond which it is none of ours: a pack of two thousand ewes has 30 MB.</summary>
    public const int MostBytes = 64 << 20;

    private const int TailLength = 64;

    /// <param name="name">As in <see cref="PdfAttachment.Name"/>.</param>
    /// <param name="limit">Bytes beyond which an attachment is too large, however little it was compressed to.</param>
    public static PdfAttachmentReading Read(ReadOnlyMemory<byte> pdf, string name, int limit) =>
        pdf.Length > MostBytes ? new(PdfAttachmentOutcome.TooLarge)
        : !IsOurs(pdf.Span) ? new(PdfAttachmentOutcome.Foreign)
        : !IsWhole(pdf.Span) ? new(PdfAttachmentOutcome.Damaged)
        : pdf.Span.IndexOf(Attachment.Begin(name).Written) is var specification && specification < 0 ? new(PdfAttachmentOutcome.Missing)
        : Find(pdf, specification) is not { } found ? new(PdfAttachmentOutcome.Damaged)
        : found.Size > limit ? new(PdfAttachmentOutcome.TooLarge)
        : Flate.Inflate(found.Compressed, found.Size) is { } bytes ? new(PdfAttachmentOutcome.Found, bytes)
        : new(PdfAttachmentOutcome.Damaged);

    /// <summary>The same PDF with another file attached in the place of one: byte for byte what <see cref="PdfPrinter"/> would have written with it.</summary>
    /// <param name="name">Of both.</param>
    /// <returns>Null where <see cref="Read"/> finds no such attachment.</returns>
    public static byte[]? Replace(ReadOnlyMemory<byte> pdf, string name, ReadOnlySpan<byte> bytes) =>
        pdf.Length <= MostBytes && IsOurs(pdf.Span) && IsWhole(pdf.Span)
        && pdf.Span.IndexOf(Attachment.Begin(name).Written) is >= 0 and var specification && Find(pdf, specification) is { } found
            ? AttachmentSwap.Of(pdf.Span, found.Start, found.End, bytes)
            : null;

    /// <summary>What a PDF of ours says is its title (ISO 32000-1, 14.3.2).</summary>
    /// <returns>Null where it is none of ours, or says nothing.</returns>
    public static string? TitleOf(ReadOnlySpan<byte> pdf)
    {
        if (!IsOurs(pdf) || pdf.IndexOf(Metadata.BeforeTitle) is not (>= 0 and var before))
        {
            return null;
        }

        var title = pdf[(before + Metadata.BeforeTitle.Length)..];
        return title.IndexOf("<"u8) is > 0 and var end ? Encoding.UTF8.GetString(title[..end]).Replace("&lt;", "<", StringComparison.Ordinal).Replace("&gt;", ">", StringComparison.Ordinal).Replace("&quot;", "\"", StringComparison.Ordinal).Replace("&apos;", "'", StringComparison.Ordinal).Replace("&amp;", "&", StringComparison.Ordinal) : null;
    }

    /// <summary>Both stand in the clear in each of our files.</summary>
    private static bool IsOurs(ReadOnlySpan<byte> pdf) => pdf.StartsWith("%PDF-"u8) && pdf.IndexOf("/Producer(PaperFlock)"u8) >= 0;

    /// <summary>It ends as ours do, and the table of where everything is stands where that says.</summary>
    private static bool IsWhole(ReadOnlySpan<byte> pdf)
    {
        var tail = pdf[Math.Max(0, pdf.Length - TailLength)..];
        return NumberAfter(tail, "startxref\n"u8) is { } start && start < pdf.Length
            && tail.EndsWith(Encoding.ASCII.GetBytes($"startxref\n{start}\n%%EOF\n"))
            && Utf8Parser.TryParse(pdf[start..], out int _, out var digits)
            && pdf[(start + digits)..].StartsWith(" 0 obj\n<</Length "u8);
    }

    /// <param name="specification">Where that of the attachment begins.</param>
    /// <returns>What is attached, and where the object of it begins and ends; null where it is not as it was written.</returns>
    private static (ReadOnlyMemory<byte> Compressed, int Size, int Start, int End)? Find(ReadOnlyMemory<byte> pdf, int specification)
    {
        var stream = NumberAfter(pdf.Span[specification..], "/EF<</F "u8) is { } number ? pdf.Span.IndexOf(Encoding.ASCII.GetBytes($"\n{number} 0 obj\n")) : -1;
        if (stream < 0)
        {
            return null;
        }

        var from = pdf[stream..];
        var begin = from.Span.IndexOf(">>\nstream\n"u8) + ">>\nstream\n".Length;
        return NumberAfter(from.Span, "<</Length "u8) is { } length && length <= from.Length - begin && NumberAfter(from.Span, "/Params<</Size "u8) is { } size
            && from.Span[(begin + length)..].StartsWith(AttachmentSwap.AfterStream)
            ? (from.Slice(begin, length), size, stream + 1, stream + begin + length + AttachmentSwap.AfterStream.Length)
            : null;
    }

    private static int? NumberAfter(ReadOnlySpan<byte> text, ReadOnlySpan<byte> word) =>
        text.IndexOf(word) is >= 0 and var at && Utf8Parser.TryParse(text[(at + word.Length)..], out int number, out _) && number >= 0 ? number : null;
}
