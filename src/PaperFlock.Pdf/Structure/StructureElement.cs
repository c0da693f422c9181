namespace PaperFlock.Pdf.Structure;

/// <summary>An element of the structure tree while pages are painted.</summary>
/// <param name="parent">Null for the document.</param>
/// <param name="kind">Null for the document, and for what holds the label and the body of a list item.</param>
/// <param name="type">A standard structure type (ISO 32000-1, 14.8.4).</param>
/// <param name="page">0-based, where it begins.</param>
internal sealed class StructureElement(StructureElement? parent, StructureKind? kind, string type, int page)
{
    public StructureElement? Parent { get; set; } = parent;

    public StructureKind? Kind => kind;

    public string Type => type;

    public int Page => page;

    /// <summary>The number of its object in the file, once it has one.</summary>
    public int Number { get; set; }

    public List<StructureKid> Kids { get; } = new(1);

    /// <summary>Of a header cell.</summary>
    public HeaderScope? Scope { get; init; }

    /// <summary>Of a cell: the columns it covers.</summary>
    public int Columns { get; init; } = 1;

    /// <summary>Of a heading.</summary>
    public int Level { get; init; }

    /// <summary>Of a figure: what somebody sees in it.</summary>
    public string? Says { get; init; }

    /// <summary>Of a figure: where it is, in points from the lower left corner of the paper; <see cref="Bounds.Y"/> is its lower edge.</summary>
    public Bounds Box { get; init; }

    public IEnumerable<StructureElement> Elements
    {
        get
        {
            foreach (var kid in Kids)
            {
                if (kid is StructureKid.Nested { Inner: var inner })
                {
                    yield return inner;
                }
            }
        }
    }

    /// <summary>Whether words may stand in it, and not only other elements.</summary>
    public bool HoldsContent => kind is StructureKind.Heading or StructureKind.Paragraph or StructureKind.ListItem or StructureKind.Label
        or StructureKind.HeaderCell or StructureKind.Cell or StructureKind.Figure or StructureKind.Link;

    /// <summary>Whether a paragraph in it is no paragraph of its own.</summary>
    public bool TakesParagraphs => kind is StructureKind.Heading or StructureKind.Paragraph or StructureKind.Label or StructureKind.Link;
}
