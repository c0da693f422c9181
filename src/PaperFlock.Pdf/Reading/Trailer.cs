using PaperFlock.Pdf.Writing;

namespace PaperFlock.Pdf.Reading;

/// <summary>What the newest part of a file says of all of it (ISO 32000-1, 7.5.5).</summary>
/// <param name="CrossReferences">The byte at which its table of where everything is begins.</param>
/// <param name="ObjectCount">The highest number of an object.</param>
/// <param name="Id">The first of its two identifiers, a character a byte: it stays the same through every update.</param>
internal sealed record Trailer(int CrossReferences, int ObjectCount, Reference Catalog, Reference Information, string Id);
