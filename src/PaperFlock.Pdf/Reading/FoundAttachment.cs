using PaperFlock.Pdf.Writing;

namespace PaperFlock.Pdf.Reading;

/// <param name="Stream">The object that holds it.</param>
/// <param name="Subtype">Its media type as a name of a PDF, without the slash before it.</param>
/// <param name="Size">In bytes, as the file says.</param>
internal sealed record FoundAttachment(Reference Stream, string Subtype, ReadOnlyMemory<byte> Compressed, long Size);
