using PaperFlock.Pdf.Structure;

namespace PaperFlock.Pdf.Painting;

/// <param name="Page">0-based.</param>
/// <param name="Area">In points from the top left corner of the paper, y downwards.</param>
/// <param name="Target">Name of the anchor.</param>
/// <param name="Element">The link it belongs to; null where it is in something that is not read out.</param>
internal sealed record LinkArea(int Page, Bounds Area, string Target, string Says, StructureElement? Element);
