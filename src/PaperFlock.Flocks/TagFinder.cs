namespace PaperFlock.Flocks;

/// <summary>Finds ewes by what somebody typed of a tag: the same in a spreadsheet, at the keys and after a command.</summary>
public sealed class TagFinder(IEnumerable<Ewe> ewes)
{
    private readonly ImmutableArray<(string Key, Ewe Ewe)> _ewes = [.. ewes.Select(e => (TagKey.Of(e.Tag), e))];
    private ILookup<string, Ewe>? _whole;

    /// <returns>The ewe whose whole tag it is, by <see cref="TagKey"/>; else every ewe whose tag ends so, in their order. None for a text without a letter or a figure.</returns>
    public ImmutableArray<Ewe> Find(string typed)
    {
        _whole ??= _ewes.ToLookup(e => e.Key, e => e.Ewe, StringComparer.Ordinal);
        var key = TagKey.Of(typed);
        return !key.Any(char.IsLetterOrDigit) ? []
            : _whole[key].Any() ? [.. _whole[key]]
            : [.. _ewes.Where(e => e.Key.EndsWith(key, StringComparison.Ordinal)).Select(e => e.Ewe)];
    }

    /// <summary>Whether it is the whole tag of one of them.</summary>
    public bool IsWhole(string typed) => _ewes.Any(e => e.Key == TagKey.Of(typed));
}
