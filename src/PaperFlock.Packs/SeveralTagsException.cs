namespace PaperFlock.Packs;

/// <summary>What was typed is the end of more than one tag: whoever typed it can be asked which.</summary>
public sealed class SeveralTagsException(string typed, ImmutableArray<Ewe> ewes)
    : PackRequestException($"'{typed}' could be any of {ewes.Length}: {ScreenText.List(ewes.Select(e => e.Name is null ? e.Tag : $"{e.Tag} {e.Name}"))}; type more of the tag")
{
    public ImmutableArray<Ewe> Ewes => ewes;
}
