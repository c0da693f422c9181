namespace PaperFlock.Sheets;

/// <summary>One kind of sheet, with all that has to be known of it outside its folder. <see cref="PackSheets.All"/> gives it its place in the binder.</summary>
/// <param name="Kind">The word <c>--sheets</c> knows it by.</param>
/// <param name="Code">What the page codes of its leaves begin with, as printed at their foot: <c>FEED-2</c> is a leaf of <c>FEED</c>.</param>
/// <param name="Use">What becomes of it once it is printed.</param>
public sealed record SheetDefinition(string Kind, string Code, SheetUse Use)
{
    /// <summary>Where it lives, as the guide says it.</summary>
    public string Lives { get; init; } = string.Empty;

    /// <summary>What it is for, as the guide says it.</summary>
    public string Purpose { get; init; } = string.Empty;

    /// <summary>What several of them together are called.</summary>
    public string? Together { get; init; }

    /// <summary>A pack for some days only may hold it: it is needed by whoever has the flock for those days.</summary>
    public bool IsForSitter { get; init; }

    /// <summary>Every page is the front of a leaf and nothing to be read is on its back: it is pinned up, and nobody turns a pinned sheet over.</summary>
    internal bool IsFrontsOnly { get; init; }

    /// <summary>What a back without a page of its own is ruled for; null where it is left blank.</summary>
    internal RuledBack? OnBack { get; init; }

    /// <summary>All pages of a sheet are put in and taken out together: rows move from page to page as others fall away.</summary>
    internal bool IsOneLeaf { get; init; }

    /// <summary>A ewe that goes is struck through on it by hand: nothing else on it is wrong without her.</summary>
    internal bool IsStruckByHand { get; init; }

    /// <summary>Gives none when the flock gives the sheet nothing to say. The register is made from all the others, and not by this.</summary>
    internal Func<SheetContext, ImmutableArray<Sheet>> Make { get; init; } = _ => [];
}
