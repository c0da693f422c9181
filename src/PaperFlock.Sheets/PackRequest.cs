namespace PaperFlock.Sheets;

/// <param name="Kinds">Each a <see cref="SheetDefinition.Kind"/>; empty for every sheet.</param>
/// <param name="Days">Only what a sitter needs on these days, both ends included; null for the whole season.</param>
/// <param name="Split">Each way of printing becomes a file of its own: logs are then printed on one side, a page to a leaf, and no link leads out of the binder.</param>
/// <param name="Changed">Only leaves that say something else than those in the pack.</param>
public sealed record PackRequest(ImmutableArray<string> Kinds, DateInterval? Days = null, bool Split = false, bool Changed = false)
{
    public static readonly PackRequest Everything = new([]);

    /// <summary>The pack as it is bound, and not some sheets of it.</summary>
    public bool IsOfAll => Kinds.IsEmpty && Days is null;

    public bool Wants(SheetDefinition sheet) => (Kinds.IsEmpty || Kinds.Contains(sheet.Kind)) && (Days is null || sheet.IsForSitter);
}
