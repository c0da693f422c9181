namespace PaperFlock.Pdf;

/// <param name="Label">What the page is called in a reader's page box: its page code.</param>
public sealed record PrintPage(Page Page, string Label);
