namespace PaperFlock.Flocks.Editing;

/// <summary>A section or a list of the flock file, by the way to it from the top. Sections have keys, lists have items.</summary>
public sealed class FlockPlace
{
    private FlockPlace(FlockPlace? above, string? key, int item) => (Above, Name, Index) = (above, key, item);

    /// <summary>The section that is the whole file.</summary>
    public static FlockPlace Top { get; } = new(null, null, 0);

    /// <summary>Null for <see cref="Top"/> alone.</summary>
    internal FlockPlace? Above { get; }

    /// <summary>Null for an item of a list.</summary>
    internal string? Name { get; }

    internal int Index { get; }

    /// <param name="index">Her place in <see cref="Flock.Ewes"/>, from 0.</param>
    public static FlockPlace Ewe(int index) => Top.Key("ewes").Item(index);

    public FlockPlace Key(string key) => new(this, key, 0);

    /// <param name="index">From 0.</param>
    public FlockPlace Item(int index) => new(this, null, index);

    public override string ToString() => Above is null ? "" : Name is null ? $"{Above}[{Index}]" : $"{Above}.{Name}".TrimStart('.');
}
