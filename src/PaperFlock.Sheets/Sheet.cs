namespace PaperFlock.Sheets;

/// <summary>One sheet of the pack: a code that stays the same from issue to issue, and its sides in order.</summary>
/// <param name="Code">Page code, such as "FEED-2".</param>
/// <param name="Sides">Fronts and backs as they come off the printer, blank backs included.</param>
public sealed record Sheet(SheetDefinition Definition, string Code, string Title, ImmutableArray<SheetSide> Sides)
{
    public string Kind => Definition.Kind;

    public SheetUse Use => Definition.Use;

    /// <summary>Pieces of paper: a front, with or without a back.</summary>
    public int Leaves => Sides.Count(s => s.Page.Side == PageSide.Front);

    public Size Paper => Sides[0].Page.Paper;

    /// <summary>The last day it is of use; null for as long as the pack is.</summary>
    public LocalDate? Last { get; init; }

    /// <summary>Where it is not put in and taken out leaf by leaf: what is, such as each card. Empty where leaves are.</summary>
    public ImmutableArray<SheetPart> Parts { get; init; } = [];
}

/// <summary>One thing that is put into the pack and taken out whole, though it shares a leaf with others or is as large as several.</summary>
/// <param name="Id">The same from issue to issue.</param>
/// <param name="Label">What stands on it.</param>
/// <param name="Pieces">All that it says, front first.</param>
public sealed record SheetPart(string Id, string Label, Phrase Title, ImmutableArray<Piece> Pieces);

/// <param name="Label">What a reader of the PDF calls the page.</param>
/// <param name="Contents">What is on it where one sheet holds several things, such as the ewes of a leaf of cards.</param>
/// <param name="IsBlank">A back that says nothing, blank or ruled to write on: needed where both sides are printed, and waste where one is.</param>
public sealed record SheetSide(Page Page, string Label, ImmutableArray<Phrase> Contents, bool IsBlank = false);

public enum SheetUse
{
    Binder,
    Pinned,
    CutUp,
    Clipboard,
}
