using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace PaperFlock.Printing.Tests;

/// <summary>Documents that are painted by many and must not show it.</summary>
public sealed class LongDocumentTests
{
    private const int Parts = 3;
    private const int Count = ((Parts - 1) * PdfPrinter.PagesToAPart) + 11;

    [Fact]
    public void Pages_of_all_parts_follow_each_other_under_one_tree()
    {
        using var pdf = PdfDocument.Open(Sample.Print(Long()));
        Assert.Equal(Count, pdf.NumberOfPages);
        Assert.Equal(Enumerable.Range(1, Count).Select(n => $"page {n}"), pdf.GetPages().Select(p => p.Text));
    }

    [Fact]
    public void A_link_leads_from_the_last_part_to_the_first()
    {
        using var pdf = PdfDocument.Open(Sample.Print(Long()));
        var link = Assert.Single(pdf.GetPage(Count).GetAnnotations());
        var target = Assert.IsType<ArrayToken>(pdf.Find(link.AnnotationDictionary, "Dest")).Data[0];
        Assert.Equal(pdf.GetPage(1).Dictionary, pdf.Resolve(target));
    }

    [Fact]
    public void A_font_file_is_shared_by_all_parts()
    {
        using var pdf = PdfDocument.Open(Sample.Print(Long()));
        var files = new HashSet<IToken>();
        // Parts are as long as each other, so this meets a page of each.
        for (var page = 1; page <= Count; page += Count / (Parts * 2))
        {
            var font = Assert.Single(Assert.IsType<DictionaryToken>(pdf.InPage(page, "Resources", "Font")).Data).Value;
            var descendant = Assert.IsType<ArrayToken>(pdf.Find(font, "DescendantFonts")).Data[0];
            var descriptor = Assert.IsType<DictionaryToken>(pdf.Find(descendant, "FontDescriptor"));
            Assert.True(descriptor.TryGet(NameToken.Create("FontFile2"), out IToken file));
            files.Add(file);
        }

        Assert.Single(files);
    }

    [Fact]
    public void Whichever_part_is_painted_first_the_bytes_are_the_same()
    {
        var once = Sample.Print(Long());
        Assert.All(Enumerable.Range(0, 3), _ => Assert.Equal(once, Sample.Print(Long())));
    }

    private static PrintDocument Long() => Sample.Document(
    [
        Page(1, new AnchorItem(10, 10, "first")),
        .. Enumerable.Range(2, Count - 2).Select(n => Page(n)),
        Page(Count, new LinkItem(10, 10, 20, 20, "first")),
    ]);

    private static Page Page(int number, params ReadOnlySpan<Item> more) => Sample.Page([Sample.Text(20, 50, $"page {number}"), .. more]);
}
