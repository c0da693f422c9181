using System.Collections.Immutable;

namespace PaperFlock.Layout.Pieces;

/// <summary>Finished layout: a size and what is drawn in it. Painting walks it and decides nothing.</summary>
/// <param name="Items">In reading order, which is also painting order; coordinates from the piece's own top left corner, y downwards.</param>
/// <param name="Name">The element it came from.</param>
public sealed record Piece(Size Size, ImmutableArray<Item> Items, string? Name = null);
