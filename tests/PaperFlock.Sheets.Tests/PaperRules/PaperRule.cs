namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>Something that must hold on paper.</summary>
/// <param name="Name">What must hold, figure and all.</param>
/// <param name="Source">Where the figure comes from.</param>
/// <param name="Broken">What breaks it on a side, each in words; nothing where it holds.</param>
internal sealed record PaperRule(string Name, string Source, Func<SideInPack, IEnumerable<string>> Broken)
{
    public override string ToString() => Name;
}

/// <summary>Something that must hold between the sheets of a pack.</summary>
internal sealed record PackRule(string Name, string Source, Func<PackInHand, IEnumerable<string>> Broken)
{
    public override string ToString() => Name;
}

/// <param name="Sheet">The word for its kind, or "pack".</param>
/// <param name="Where">Label of the side.</param>
internal sealed record BrokenRule(string Sheet, string Where, string Rule, string What);
