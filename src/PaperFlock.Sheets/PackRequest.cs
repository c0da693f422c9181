using System.Collections.Immutable;
using NodaTime;

namespace PaperFlock.Sheets;

/// <param name="Kinds">Words of <see cref="PackComposer.Kinds"/>; empty for every sheet.</param>
/// <param name="Days">Only what a sitter needs on these days, both ends included; null for the whole season.</param>
/// <param name="Split">Each way of printing becomes a file of its own: logs are then printed on one side, a page to a leaf, and no link leads out of the binder.</param>
public sealed record PackRequest(ImmutableArray<string> Kinds, DateInterval? Days = null, bool Split = false)
{
    public static readonly PackRequest Everything = new([]);

    public bool Wants(string kind) =>
        (Kinds.IsEmpty || Kinds.Contains(kind)) && (Days is null || PackComposer.KindsForDays.Contains(kind));
}
