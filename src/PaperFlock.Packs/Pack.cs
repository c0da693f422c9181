using PaperFlock.Layout.Pages;

namespace PaperFlock.Packs;

/// <summary>An issue of a pack, or some sheets of one, bound for the printer.</summary>
/// <param name="Documents">One for each way of printing, the first of which remembers the issue; none where nothing has changed.</param>
public sealed record Pack(ImmutableArray<PackDocument> Documents, ComposedIssue Issue);

/// <summary>Pages that go through the printer together, and become one PDF.</summary>
/// <param name="Suffix">What follows the flock's name in the file name: empty for the pack itself, such as <c>-wall</c> for a document beside it.</param>
/// <param name="Uses">What becomes of each page of <paramref name="Print"/>, one for each: what is cut up is printed on card.</param>
public sealed record PackDocument(string Suffix, PrintDocument Print, ImmutableArray<SheetUse> Uses)
{
    /// <summary>About as many as one takes in the PDF.</summary>
    private const int BytesOfAPage = 6_000;

    /// <summary>To be painted, or counted.</summary>
    public IEnumerable<Page> Pages => Print.Pages.Select(p => p.Page);

    internal PackDocument With(PdfAttachment attachment) => this with { Print = Print with { Attachment = attachment } };

    /// <summary>The same document gives the same bytes.</summary>
    /// <param name="printed">Told how many pages there are, after each, for whoever waits.</param>
    public ReadOnlyMemory<byte> ToPdf(Action<int>? printed = null)
    {
        using var pdf = new MemoryStream(BytesOfAPage * Print.Pages.Length);
        PdfPrinter.Print(Print, pdf, printed);
        return pdf.GetBuffer().AsMemory(0, (int)pdf.Length);
    }
}
