namespace PaperFlock.Pdf.Structure;

/// <summary>What the pages are to whoever has them read out (ISO 32000-1, 14.7), as it is met while they are painted. Knows nothing of how they look.</summary>
internal sealed class StructureTree
{
    private readonly Dictionary<StructureId, StructureElement> _known = [];
    private readonly List<List<StructureElement>> _contents = [];

    // What is open: an element, and the kind of artifact that all in it is.
    private readonly Stack<(StructureElement Element, StructureKind? Artifact)> _open = new();
    private int _links;

    public StructureTree() => _open.Push((Document, null));

    public StructureElement Document { get; } = new(null, null, "Document", 0);

    /// <summary>The innermost element that is open.</summary>
    public StructureElement Current => _open.Peek().Element;

    /// <summary>What all that is painted now is, if it is not to be read out.</summary>
    public StructureKind? Artifact => _open.Peek().Artifact;

    /// <summary>For each page the element that holds each piece of marked content, by its number.</summary>
    public IReadOnlyList<IReadOnlyList<StructureElement>> Contents => _contents;

    private int Page => _contents.Count - 1;

    public void BeginPage() => _contents.Add([]);

    /// <param name="box">In points from the lower left corner of the paper.</param>
    public void Begin(StructureTag tag, StructureId? id, Bounds box)
    {
        var (current, artifact) = _open.Peek();
        var isPart = artifact is not null || current.Kind == StructureKind.Figure || (tag.Kind == StructureKind.Paragraph && current.TakesParagraphs);
        _open.Push(isPart ? (current, artifact) : tag.IsArtifact ? (current, tag.Kind) : (Find(tag, id, box), null));
    }

    public void End() => _open.Pop();

    /// <summary>Something is painted that belongs to the current element.</summary>
    /// <returns>Its number on the page.</returns>
    public int AddContent()
    {
        var contents = _contents[^1];
        contents.Add(Current);
        Current.Kids.Add(new StructureKid.Content(Page, contents.Count - 1));
        return contents.Count - 1;
    }

    /// <summary>The next link of the document has its area here.</summary>
    /// <returns>The element it belongs to; null where nothing is read out.</returns>
    public StructureElement? Link()
    {
        var annotation = new StructureKid.Annotation(_links++);
        if (Artifact is not null)
        {
            return null;
        }

        var link = Current.Kind == StructureKind.Link ? Current : Add(StructureTag.Link, default);
        link.Kids.Add(annotation);
        return link;
    }

    /// <summary>
    /// A paragraph that is alone in a cell or list item is that itself: it would say nothing more, and take as much room again. A cell that is a paragraph and
    /// nothing round it comes here as one already; see <see cref="Piece.As"/>.
    /// </summary>
    public void Simplify()
    {
        foreach (var element in Document.All)
        {
            if (element is { Kind: StructureKind.Cell or StructureKind.HeaderCell or StructureKind.ListItem, Kids: [StructureElement { Kind: StructureKind.Paragraph } only] })
            {
                element.Kids.Clear();
                element.Kids.AddRange(only.Kids);
                foreach (var content in only.Kids.OfType<StructureKid.Content>())
                {
                    _contents[content.Page][content.Number] = element;
                }

                foreach (var inner in only.Elements)
                {
                    inner.Parent = element;
                }
            }
        }
    }

    private StructureElement Find(StructureTag tag, StructureId? id, Bounds box)
    {
        if (id is null)
        {
            return Add(tag, box);
        }

        return _known.TryGetValue(id, out var known) ? known : _known[id] = Add(tag, box);
    }

    private StructureElement Add(StructureTag tag, Bounds box)
    {
        switch (tag.Kind)
        {
            case StructureKind.ListItem:
                var item = Append(Current, new StructureElement(Current, null, "LI", Page));
                return Append(item, new StructureElement(item, tag, "LBody", Page));
            case StructureKind.Label when Current is { Kind: StructureKind.ListItem, Parent: { } whole }:
                var label = New(whole);
                whole.Kids.Insert(0, label);
                return label;
            case StructureKind.Link when !Current.HoldsContent:
                // A link is part of a line, and stands in a paragraph.
                var paragraph = Append(Current, new StructureElement(Current, StructureTag.Paragraph, "P", Page));
                return Append(paragraph, New(paragraph));
            default:
                return Append(Current, New(Current));
        }

        StructureElement New(StructureElement parent) =>
            tag.Kind == StructureKind.Figure ? new FigureElement(parent, tag, TypeOf(tag), Page, box) : new StructureElement(parent, tag, TypeOf(tag), Page);
    }

    private static StructureElement Append(StructureElement parent, StructureElement kid)
    {
        parent.Kids.Add(kid);
        return kid;
    }

    private static string TypeOf(StructureTag tag) => tag.Kind switch
    {
        StructureKind.Section => "Sect",
        StructureKind.Heading => string.Create(CultureInfo.InvariantCulture, $"H{tag.Level}"),
        StructureKind.Paragraph => "P",
        StructureKind.List => "L",
        StructureKind.Label => "Lbl",
        StructureKind.Table => "Table",
        StructureKind.Row => "TR",
        StructureKind.HeaderCell => "TH",
        StructureKind.Cell => "TD",
        StructureKind.Figure => "Figure",
        StructureKind.Link => "Link",
        _ => throw new ArgumentOutOfRangeException(nameof(tag), tag, null),
    };
}
