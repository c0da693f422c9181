using System.Collections.Immutable;

namespace PaperFlock.Printing.Painting;

/// <summary>The links and anchors met while painting a document, in paper coordinates, y downwards.</summary>
internal sealed class LinkMap
{
    private readonly Dictionary<string, Anchor> _anchors = new(StringComparer.Ordinal);
    private readonly List<Link> _links = [];

    public void AddLink(int page, Box area, string target) => _links.Add(new Link(page, area, target));

    /// <summary>Keeps the first of a name: a head that is repeated on every page leads to where its table begins.</summary>
    public void AddAnchor(int page, double x, double y, string name) => _anchors.TryAdd(name, new Anchor(page, x, y));

    /// <summary>Adds those of the pages that follow.</summary>
    public void Add(LinkMap following)
    {
        _links.AddRange(following._links);
        foreach (var (name, anchor) in following._anchors)
        {
            _anchors.TryAdd(name, anchor);
        }
    }

    /// <returns>Every link with where it leads, in the order they were met.</returns>
    /// <exception cref="InvalidOperationException">Nothing in the document has the name a link leads to.</exception>
    public ImmutableArray<(Link Link, Anchor Anchor)> Resolve() => [.. _links.Select(link => (link, Find(link.Target)))];

    private Anchor Find(string target) => _anchors.TryGetValue(target, out var anchor)
        ? anchor
        : throw new InvalidOperationException($"a link leads to \"{target}\", which is nowhere in the document");

    /// <param name="Page">0-based.</param>
    internal readonly record struct Link(int Page, Box Area, string Target);

    /// <param name="Page">0-based.</param>
    internal readonly record struct Anchor(int Page, double X, double Y);
}
