namespace PaperFlock.Flocks.Reading.Sections;

/// <param name="Made">Null where its dates are wrong and reported: nothing is checked against it.</param>
/// <param name="Span">Its name in the file.</param>
internal sealed record GroupDraft(string Name, TuppingGroup? Made, SourceSpan Span);

/// <summary>The tupping groups as far as they could be made out, and which one a ewe is in.</summary>
/// <param name="AreListed">False for the one unnamed group of a file that lists none.</param>
/// <param name="AreAllNamed">False when a name is wrong and reported: then an unknown name may be that one, and nothing more is said.</param>
internal sealed record GroupsDraft(ImmutableArray<GroupDraft> Groups, bool AreListed, bool AreAllNamed)
{
    /// <summary>A ewe's group; null when it cannot be told, and then the reason has been reported.</summary>
    public GroupDraft? Of(Section ewe, string callName)
    {
        var names = Groups.Select(g => g.Name).ToArray();
        return ewe.IsGiven("group") ? ewe.Find("group") is { } field && field.AsText() is { } typed ? Named(field, typed, names) : null
            : !AreAllNamed ? null
            : Groups.Length == 1 ? Groups[0]
            : ewe.IsMistyped("group") ? null
            : ewe.Bag.Refuse<GroupDraft>(FlockMessages.NoGroupGiven(ewe.Span, callName, names));
    }

    private GroupDraft? Named(Field field, string typed, string[] names)
    {
        var found = AreListed ? Groups.FirstOrDefault(g => g.Name == typed) : null;
        field.Bag.Add(found is null && AreAllNamed ? FlockMessages.UnknownGroup(field.Span, typed, AreListed ? names : []) : null);
        return found;
    }
}
