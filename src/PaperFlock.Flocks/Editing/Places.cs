namespace PaperFlock.Flocks.Editing;

/// <summary>Finds a place in a tree, and makes the tree that has something else there.</summary>
internal static class Places
{
    /// <exception cref="ArgumentException">There is no such place.</exception>
    public static Node Find(Node root, FlockPlace place) =>
        TryFind(root, place) ?? throw new ArgumentException($"There is no `{place}` in this file.", nameof(place));

    /// <returns>Null when there is no such place.</returns>
    public static Node? TryFind(Node root, FlockPlace place) => place.Above is not { } above
        ? root
        : (TryFind(root, above), place.Name) switch
        {
            (Mapping mapping, { } name) => mapping.Entries.FirstOrDefault(e => e.Key.Text == name)?.Value,
            (Sequence sequence, null) when place.Index >= 0 && place.Index < sequence.Items.Length => sequence.Items[place.Index],
            _ => null,
        };

    /// <exception cref="ArgumentException">There is no such section.</exception>
    public static Mapping Section(Node root, FlockPlace place) =>
        Find(root, place) as Mapping ?? throw new ArgumentException($"`{place}` is not a section.", nameof(place));

    public static Node With(Node root, FlockPlace place, Node changed)
    {
        if (place.Above is not { } above)
        {
            return changed;
        }

        Node parent = Find(root, above) switch
        {
            Mapping mapping => mapping with
            {
                Entries = [.. mapping.Entries.Select(e => e.Key.Text == place.Name ? e with { Value = changed } : e)],
            },
            Sequence sequence => sequence with { Items = sequence.Items.SetItem(place.Index, changed) },
            _ => throw new ArgumentException($"There is no `{place}` in this file.", nameof(place)),
        };
        return With(root, above, parent);
    }
}
