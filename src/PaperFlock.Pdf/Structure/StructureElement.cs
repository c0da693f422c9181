using PaperFlock.Pdf.Writing;

namespace PaperFlock.Pdf.Structure;

/// <summary>An element of the structure tree while pages are painted.</summary>
/// <param name="parent">Null for the document.</param>
/// <param name="tag">Null for the document, and for what holds the label and the body of a list item.</param>
/// <param name="type">A standard structure type (ISO 32000-1, 14.8.4).</param>
/// <param name="page">0-based, where it begins.</param>
internal class StructureElement(StructureElement? parent, StructureTag? tag, string type, int page) : StructureKid
{
    public StructureElement? Parent { get; set; } = parent;

    public StructureTag? Tag => tag;

    public StructureKind? Kind => tag?.Kind;

    public string Type => type;

    public int Page => page;

    /// <summary>Its object in the file, once it has one.</summary>
    public Reference Number { get; set; }

    public List<StructureKid> Kids { get; } = new(1);

    public IEnumerable<StructureElement> Elements => Kids.OfType<StructureElement>();

    /// <summary>It and all in it, each before what is in it; that is not asked for until it has been passed.</summary>
    public IEnumerable<StructureElement> All
    {
        get
        {
            var ahead = new Stack<StructureElement>([this]);
            while (ahead.TryPop(out var element))
            {
                yield return element;
                for (var i = element.Kids.Count - 1; i >= 0; i--)
                {
                    if (element.Kids[i] is StructureElement inner)
                    {
                        ahead.Push(inner);
                    }
                }
            }
        }
    }

    /// <summary>Whether words may stand in it, and not only other elements.</summary>
    public bool HoldsContent => Kind is StructureKind.Heading or StructureKind.Paragraph or StructureKind.ListItem or StructureKind.Label
        or StructureKind.HeaderCell or StructureKind.Cell or StructureKind.Figure or StructureKind.Link;

    /// <summary>Whether a paragraph in it is no paragraph of its own.</summary>
    public bool TakesParagraphs => Kind is StructureKind.Heading or StructureKind.Paragraph or StructureKind.Label or StructureKind.Link;
}

/// <param name="box">In points from the lower left corner of the paper; <see cref="Bounds.Y"/> is its lower edge.</param>
internal sealed class FigureElement(StructureElement parent, StructureTag tag, string type, int page, Bounds box) : StructureElement(parent, tag, type, page)
{
    public Bounds Box => box;
}
