using System.Collections.Frozen;
using PaperFlock.Sheets.EweCards;

namespace PaperFlock.Sheets;

/// <param name="Kinds">Each a <see cref="SheetDefinition.Kind"/>; with no <see cref="Codes"/> either, every sheet.</param>
/// <param name="Days">Only what a sitter needs on these days, both ends included; null for the whole season.</param>
/// <param name="Split">Each way of printing becomes a file of its own: logs are then printed on one side, a page to a leaf, and no link leads out of the binder.</param>
/// <param name="Changed">Only leaves that say something else than those in the pack.</param>
public sealed record PackRequest(ImmutableArray<string> Kinds, DateInterval? Days = null, bool Split = false, bool Changed = false)
{
    public static readonly PackRequest Everything = new([]);

    /// <summary>Single leaves besides, each by the page code at its foot, such as "CARD-00101"; capitals do not matter.</summary>
    public ImmutableArray<string> Codes { get; init; } = [];

    /// <summary>To be looked at and never filed: every page says so, and it is no issue.</summary>
    public bool Draft { get; init; }

    /// <summary>Told of each kind of sheet before it is laid out, for whoever waits.</summary>
    public Action<SheetDefinition>? Begins { get; init; }

    /// <summary>Some sheets or leaves, each asked for by its name.</summary>
    public bool IsOfSome => !Kinds.IsEmpty || !Codes.IsEmpty;

    /// <summary>The pack as it is bound, and not some sheets of it.</summary>
    public bool IsOfAll => !IsOfSome && Days is null;

    public bool Wants(SheetDefinition sheet) => (!IsOfSome || Kinds.Contains(sheet.Kind) || Codes.Any(c => PackSheets.OfCode(c) == sheet)) && (Days is null || sheet.IsForSitter);

    /// <summary>Whether a leaf of that code is asked for, where its kind is.</summary>
    internal bool Wants(SheetDefinition sheet, string code) => !IsOfSome || Kinds.Contains(sheet.Kind) || Codes.Contains(code, StringComparer.OrdinalIgnoreCase);

    /// <summary>Null for all.</summary>
    internal FrozenSet<string>? OnlyCards => IsOfSome && !Kinds.Contains(EweCardSheet.Definition.Kind) ? Codes.ToFrozenSet(StringComparer.OrdinalIgnoreCase) : null;
}
