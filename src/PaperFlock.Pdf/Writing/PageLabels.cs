namespace PaperFlock.Pdf.Writing;

/// <summary>12.4.2: a label for each page that is its page code and no number besides, so it has a prefix and no style.</summary>
internal static class PageLabels
{
    public static void Add(PdfBuffer body, ImmutableArray<PrintPage> pages)
    {
        body.Add("<</Nums["u8);
        for (var i = 0; i < pages.Length; i++)
        {
            body.Add($"{i}<</P ");
            body.AddText(pages[i].Label);
            body.Add(">>"u8);
        }

        body.Add("]>>"u8);
    }
}
