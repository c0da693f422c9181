namespace PaperFlock.Pdf.Painting;

/// <summary>The links and anchors met while painting a document.</summary>
internal sealed class Links
{
    private readonly Dictionary<string, AnchorPlace> _anchors = new(StringComparer.Ordinal);
    private readonly List<LinkArea> _areas = [];

    /// <summary>In the order they were met.</summary>
    public IReadOnlyList<LinkArea> Areas => _areas;

    public void Add(LinkArea area) => _areas.Add(area);

    /// <summary>Keeps the first of a name: a head that is repeated on every page leads to where its table begins.</summary>
    public void AddAnchor(string name, AnchorPlace place) => _anchors.TryAdd(name, place);

    /// <returns>Null when nothing in the document has that name.</returns>
    public AnchorPlace? Find(string target) => _anchors.TryGetValue(target, out var place) ? place : null;
}
