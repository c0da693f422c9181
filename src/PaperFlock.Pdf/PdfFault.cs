namespace PaperFlock.Pdf;

/// <summary>Something for which a document is no PDF/UA-1 (ISO 14289-1), or leads nowhere.</summary>
/// <param name="Place">Label of the page; "document" for what is on none.</param>
/// <param name="Problem">What is wrong, in half a sentence.</param>
public sealed record PdfFault(string Place, string Problem)
{
    public override string ToString() => $"{Place}: {Problem}";
}
