using PaperFlock.Pdf.Structure;

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

/// <param name="Page">0-based.</param>
/// <param name="Area">In points from the top left corner of the paper, y downwards.</param>
/// <param name="Target">Name of the anchor.</param>
/// <param name="Element">The link it belongs to; null where it is in something that is not read out.</param>
internal sealed record LinkArea(int Page, Bounds Area, string Target, string Says, StructureElement? Element);

/// <param name="Page">0-based.</param>
/// <param name="X">In points from the left of the paper; <paramref name="Y"/> from its top.</param>
internal readonly record struct AnchorPlace(int Page, double X, double Y);
