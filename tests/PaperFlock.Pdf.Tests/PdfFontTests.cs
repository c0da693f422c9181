using PaperFlock.Layout;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace PaperFlock.Pdf.Tests;

/// <summary>How fonts are embedded, by the dictionaries of ISO 32000-1, 9.7 and 9.8 (from memory).</summary>
public sealed class PdfFontTests
{
    [Fact]
    public void Every_face_is_embedded_once_as_TrueType_with_Unicode()
    {
        var pages = Enumerable.Range(0, 3).Select(i => Sample.Page([.. Enum.GetValues<Face>().Select(face => Sample.Text(20, 50 + (40 * i), "Ewe ŵ 12", new TextStyle(face, 10 + i)))])).ToArray();
        using var pdf = PdfDocument.Open(Sample.Print(Sample.Document(pages)));
        var files = new HashSet<IToken>();
        for (var page = 1; page <= 3; page++)
        {
            var fonts = Assert.IsType<DictionaryToken>(pdf.InPage(page, "Resources", "Font")).Data.Values;
            Assert.Equal(4, fonts.Count());
            foreach (var font in fonts)
            {
                Assert.Equal("Type0", pdf.Find(font, "Subtype").Name());
                Assert.Equal("Identity-H", pdf.Find(font, "Encoding").Name());
                Assert.NotNull(pdf.Find(font, "ToUnicode"));
                var descendant = Assert.IsType<ArrayToken>(pdf.Find(font, "DescendantFonts")).Data[0];
                Assert.Equal("CIDFontType2", pdf.Find(descendant, "Subtype").Name());
                // A face all of one width needs no table of them, only the default.
                Assert.NotNull(pdf.Find(descendant, "W") ?? pdf.Find(descendant, "DW"));
                var descriptor = Assert.IsType<DictionaryToken>(pdf.Find(descendant, "FontDescriptor"));
                Assert.True(descriptor.TryGet(NameToken.Create("FontFile2"), out IToken file));
                files.Add(file);
            }
        }

        Assert.Equal(4, files.Count);
    }

    [Fact]
    public void A_face_that_is_not_used_is_not_embedded()
    {
        using var pdf = PdfDocument.Open(Sample.Print(Sample.Text(10, 10, "plain"), Sample.Text(10, 30, "\n", new TextStyle(Face.MonoBold, 9))));
        Assert.Single(Assert.IsType<DictionaryToken>(pdf.InPage(1, "Resources", "Font")).Data);
    }
}
