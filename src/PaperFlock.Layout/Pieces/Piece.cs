namespace PaperFlock.Layout.Pieces;

/// <summary>Finished layout: a size and what is drawn in it. Painting walks it and decides nothing.</summary>
/// <param name="Items">In reading order, which is also painting order; coordinates from the piece's own top left corner, y downwards.</param>
/// <param name="Name">The element it came from.</param>
public sealed record Piece(Size Size, ImmutableArray<Item> Items, string? Name = null)
{
    /// <summary>What it is about, where its element says so.</summary>
    public Subject? About { get; init; }

    /// <summary>The row of a table that it shows: its items are then one piece for each cell, in the order of the columns, that of a cell to write in without items.</summary>
    public TableRow? Row { get; init; }

    /// <summary>A row that is repeated at the head of every part of its table.</summary>
    public bool IsHead { get; init; }

    /// <summary>What it is to whoever has the page read out; null where that is for what is round it, and in it, to say.</summary>
    public StructureTag? Tag { get; init; }

    /// <summary>Shared with the other pieces of what was tagged; null where this is all of it.</summary>
    public StructureId? TagId { get; init; }

    /// <summary>What a figure says, in words, for whoever compares pages without looking at them.</summary>
    public string? Says => Tag?.Says;

    /// <summary>The words of the paragraph that it shows, or of the part of it that stands here.</summary>
    public string? Words { get; init; }

    /// <summary>The same piece, which is about something. What a part of it is about already, that part stays.</summary>
    public Piece Concerning(Subject about) => About is null ? this with { About = about } : new Piece(Size, [new PieceItem(0, 0, this)], Name) { About = about };

    /// <summary>
    /// The same drawing with every item in this piece's own coordinates. Nested pieces and their tags are gone but for one kind:
    /// text that does not read from left to right is alone in a piece of its own, turned, as large as its <see cref="TextBox"/>.
    /// </summary>
    public Piece Flatten() => new(Size, Flattener.Flatten(this), Name);

    /// <summary>The same piece as something to whoever has the page read out. What it is already, it stays within that, but for a paragraph that is all there is in a cell.</summary>
    public Piece As(StructureTag tag, StructureId? id = null) =>
        Tag is null || (Tag == StructureTag.Paragraph && tag.IsCell) ? this with { Tag = tag, TagId = id } : new Piece(Size, [new PieceItem(0, 0, this)], Name) { Tag = tag, TagId = id };
}
