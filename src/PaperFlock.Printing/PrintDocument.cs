using System.Collections.Immutable;
using PaperFlock.Layout.Pages;

namespace PaperFlock.Printing;

/// <summary>Finished pages and what a PDF says about them.</summary>
/// <param name="Language">BCP 47, such as "en-GB".</param>
public sealed record PrintDocument(
    string Title,
    string? Author,
    string Language,
    ImmutableArray<PrintPage> Pages,
    ImmutableArray<OutlineEntry> Outline,
    DuplexHint Duplex);

/// <param name="Label">What the page is called in a reader's page box: its page code.</param>
/// <param name="Trim">Finished size within the paper, in points from the top left; null for the whole paper.</param>
public sealed record PrintPage(Page Page, string Label, TrimBox? Trim = null);

public readonly record struct TrimBox(double X, double Y, double Width, double Height);

/// <param name="Page">0-based index into the document's pages.</param>
public sealed record OutlineEntry(string Title, int Page, ImmutableArray<OutlineEntry> Children);

public enum DuplexHint
{
    Simplex,
    LongEdge,
    ShortEdge,
}
