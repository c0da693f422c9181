using PaperFlock.Flocks.Reading.Yaml;

namespace PaperFlock.Flocks.Editing;

/// <summary>From a change to the characters that make it.</summary>
internal static class ChangeMaker
{
    /// <returns>Ways to make it, the tidiest first, each to be tried in turn; none when the layout leaves no way without touching something else.</returns>
    /// <exception cref="ArgumentException">It is of a place that is not there.</exception>
    public static IEnumerable<Splice> Ways(FlockChange change, Layout layout, Node root) => change switch
    {
        SetKey c => Only(new SectionChange(layout, root, c.Section).Set(c.Key, c.Value)),
        ClearKey c => new SectionChange(layout, root, c.Section).Clear(c.Key),
        AddToList c => Only(new ListChange(layout, root, c.Section, c.Key).Add(c.Items)),
        RemoveFromList c => new ListChange(layout, root, c.Section, c.Key).Remove(c.Index),
        _ => throw new ArgumentOutOfRangeException(nameof(change)),
    };

    private static IEnumerable<Splice> Only(Splice? way) => way is null ? [] : [way];
}
