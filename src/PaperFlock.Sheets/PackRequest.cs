using System.Collections.Immutable;

namespace PaperFlock.Sheets;

/// <param name="Kinds">Words of <see cref="PackComposer.Kinds"/>; empty for every sheet.</param>
public sealed record PackRequest(ImmutableArray<string> Kinds)
{
    public static readonly PackRequest Everything = new([]);

    public bool Wants(string kind) => Kinds.IsEmpty || Kinds.Contains(kind);
}
