using System.Text;
using PaperFlock.Layout;
using PaperFlock.Layout.Pieces;

namespace PaperFlock.Pdf.Tests;

public sealed class PdfBytesTests
{
    [Fact]
    public void The_same_document_gives_the_same_bytes()
    {
        var once = Sample.Print(Sample.Everything());
        Assert.Equal(once, Sample.Print(Sample.Everything()));
    }

    [Fact]
    public async Task The_same_document_gives_the_same_bytes_on_eight_threads_at_once()
    {
        var once = Sample.Print(Sample.Everything());
        using var start = new Barrier(8);
        var runs = Enumerable.Range(0, 8).Select(i => Task.Factory.StartNew(
            () =>
            {
                start.SignalAndWait();
                // Every other thread prints something else between, so that nothing shared can go unnoticed.
                return i % 2 == 0 ? Sample.Print(Sample.Everything()) : (Sample.Print(Sample.Text(10, 10, $"Other {i}")), Sample.Print(Sample.Everything())).Item2;
            },
            TestContext.Current.CancellationToken,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default));
        Assert.All(await Task.WhenAll(runs), bytes => Assert.Equal(once, bytes));
    }

    [Fact]
    public void Another_document_has_another_identifier()
        => Assert.NotEqual(Identifier(Sample.Print(Sample.Text(10, 10, "Bramble"))), Identifier(Sample.Print(Sample.Text(10, 10, "Bracken"))));

    [Fact]
    public void Nothing_of_the_maker_or_the_moment_is_left_in_the_file()
    {
        var text = Encoding.Latin1.GetString(Sample.Print(Sample.Everything()));
        Assert.All(["PDFsharp", "Skia", "Date", "Created with"], word => Assert.DoesNotContain(word, text, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void The_file_ends_with_where_everything_is()
    {
        // ISO 32000-1, 7.5.5 and 7.5.8 (from memory).
        var text = Encoding.Latin1.GetString(Sample.Print(Sample.Everything()));
        Assert.StartsWith("%PDF-1.7\n%", text, StringComparison.Ordinal);
        Assert.EndsWith("%%EOF\n", text, StringComparison.Ordinal);
        var start = int.Parse(text[(text.LastIndexOf("startxref\n", StringComparison.Ordinal) + 10)..].Split('\n')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Matches("^[0-9]+ 0 obj\n<</Length [0-9]+/Type/XRef", text[start..(start + 60)]);
    }

    [Fact]
    public void A_full_page_adds_less_than_fifteen_kilobytes()
    {
        // A crowded log sheet: 600 words and 200 lines. The fonts are in both files and cancel out.
        var words = new[] { "Mon 12 Jan", "ZZ 0412", "twin", "0.45 kg", "feet, udder", "07:40" };
        Item[] items =
        [
            .. Enumerable.Range(0, 600).Select(i => Sample.Text(20 + (i % 10 * 55.123), 30 + (i / 10 * 13.37), words[i * 7 % words.Length], new TextStyle((Face)(i % 4), 9))),
            .. Enumerable.Range(0, 200).Select(i => new LineItem(20, 20 + (i * 4.01), 575, 20 + (i * 4.01), i % 5 == 0 ? 0.5 : 0.25)),
        ];
        var one = Sample.Print(Sample.Document(Sample.Page(items)));
        var two = Sample.Print(Sample.Document(Sample.Page(items), Sample.Page(items)));
        Assert.InRange(two.Length - one.Length, 1, 15 * 1024);
    }

    [Fact]
    public void The_fonts_of_a_document_take_no_more_than_the_letters_used()
        => Assert.InRange(Sample.Print([.. Enum.GetValues<Face>().Select(face => Sample.Text(10, 100, "Ewe", new TextStyle(face, 12)))]).Length, 1, 12 * 1024);

    private static string Identifier(byte[] pdf) => Encoding.Latin1.GetString(pdf).Split("/ID[<")[1][..32];
}
