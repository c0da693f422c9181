namespace PaperFlock.Pdf;

/// <param name="Label">What the page is called in a reader's page box: its page code.</param>
/// <param name="Trim">Finished size within the paper, in points from the top left; null for the whole paper.</param>
public sealed record PrintPage(Page Page, string Label, TrimBox? Trim = null);
