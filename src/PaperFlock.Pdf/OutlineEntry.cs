namespace PaperFlock.Pdf;

/// <param name="Page">0-based index into the document's pages.</param>
public sealed record OutlineEntry(string Title, int Page, ImmutableArray<OutlineEntry> Children);
