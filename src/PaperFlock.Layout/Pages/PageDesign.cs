namespace PaperFlock.Layout.Pages;

/// <summary>What every page of a sheet shares. Head, body and foot stand within the margins, the foot at their lower edge.</summary>
/// <param name="Front">Margins of a front; <paramref name="Back"/> of a back. Both leave the same width and height.</param>
/// <param name="Head">On the first page; must fit.</param>
/// <param name="ContinuedHead">On later pages; null repeats <paramref name="Head"/>.</param>
/// <param name="Gap">Points between head, body and foot.</param>
/// <param name="Marks">Drawn over the whole paper, edge to edge, knowing the side: hole ticks, check bars.</param>
public sealed record PageDesign(
    Size Paper,
    Edges Front,
    Edges Back,
    Element? Head,
    Element? ContinuedHead,
    Element? Foot,
    double Gap,
    Func<PageSide, Element?>? Marks = null);
