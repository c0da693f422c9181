namespace PaperFlock.Flocks.Editing;

/// <summary>One thing to change in a flock file. Places are those of the file as it is when the change is made.</summary>
/// <param name="Section">Where the key stands, or is to stand.</param>
public abstract record FlockChange(FlockPlace Section, string Key);

/// <summary>Gives a key a value: in place of the one it has, after its colon where there is none, or on a line of its own after the key that usually stands before it.</summary>
public sealed record SetKey(FlockPlace Section, string Key, FlockValue Value) : FlockChange(Section, Key);

/// <summary>Takes a value away, and its line with it unless something else stands there. A key that is not there is left so.</summary>
public sealed record ClearKey(FlockPlace Section, string Key) : FlockChange(Section, Key);

/// <summary>Adds items at the end of the list under a key, which is made if it is not there.</summary>
public sealed record AddToList(FlockPlace Section, string Key, params ImmutableArray<FlockValue> Items) : FlockChange(Section, Key)
{
    /// <summary>Whole new ewes, each a <see cref="FlockValue.Section"/>, after the last one there is.</summary>
    public static AddToList Ewes(params IEnumerable<FlockValue> ewes) => new(FlockPlace.Top, "ewes", [.. ewes]);
}

/// <summary>Takes one item out of a list.</summary>
/// <param name="Index">From 0, in the order of the file.</param>
public sealed record RemoveFromList(FlockPlace Section, string Key, int Index) : FlockChange(Section, Key);
