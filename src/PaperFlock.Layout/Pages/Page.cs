namespace PaperFlock.Layout.Pages;

/// <summary>One finished side of paper.</summary>
/// <param name="Paper">Points, width by height.</param>
public sealed record Page(Size Paper, PageSide Side, PageNumber Number, Piece Content);
