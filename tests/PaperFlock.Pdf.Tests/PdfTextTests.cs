using PaperFlock.Layout;
using PaperFlock.Layout.Pieces;
using UglyToad.PdfPig;

namespace PaperFlock.Pdf.Tests;

/// <summary>What PdfPig reads back, against the items that went in.</summary>
public sealed class PdfTextTests
{
    private static readonly TextStyle[] Styles =
    [
        new(Face.Text, 12), new(Face.TextBold, 9), new(Face.Mono, 27.3), new(Face.MonoBold, 9.37), new(Face.Text, 51.17), new(Face.TextBold, 33.333),
    ];

    [Theory]
    [InlineData("Ŵythnos y defaid: ŵyn, tŷ, dŵr")]
    [InlineData("Sauðburður í maí, þrjár ær, Æðey")]
    [InlineData("Źrebię, łąka, jagnię, żłób, Łódź")]
    [InlineData("brebis agnelées, œuf, Noël, façade, ¿mañana?")]
    [InlineData("Schäfchen, Größe 1½, Straße, Ångström, bø, får")]
    [InlineData("office, ffi, flock, finest: no ligatures")]
    [InlineData("(brackets) \\ backslash < > [ ] { } / % rg RG 0.45 kg × 2")]
    [InlineData("0.5 kg − 12 °C – “quoted” — ‘so’ … • £40 €5")]
    public void Text_extracts_as_it_was_written(string text)
    {
        using var pdf = PdfDocument.Open(Sample.Print(Sample.Text(20, 100, text, new TextStyle(Face.Text, 9))));
        Assert.Equal(text, Read(pdf.GetPage(1)));
    }

    /// <summary>Whatever number its glyph has, brackets, backslashes and line ends among them.</summary>
    [Fact]
    public void Every_character_of_every_face_extracts_as_itself()
    {
        foreach (var face in Enum.GetValues<Face>())
        {
            // Those that look like another are read as the other: a hyphen that does not break, a narrow space, and what Unicode itself calls the same letter.
            var characters = string.Concat(Enumerable.Range(' ', 0x2300 - ' ').Select(c => (char)c)
                .Where(c => !char.IsControl(c) && c is not ('\u2010' or '\u2011' or '\u202F') && FontLibrary.FirstMissing($"{c}", face) is null && FontLibrary.Of(face)[new(c)].IsPrinted)
                .DistinctBy(c => FontLibrary.Of(face)[new(c)].Id));
            Assert.InRange(characters.Length, 300, 1000);
            using var pdf = PdfDocument.Open(Sample.Print([.. characters.Chunk(40).Select((line, i) => Sample.Text(20, 30 + (20 * i), new string(line), new TextStyle(face, 9)))]));
            Assert.Equal(characters, Read(pdf.GetPage(1)));
        }
    }

    [Fact]
    public void Every_glyph_stands_where_the_item_says()
    {
        var items = Styles.Select((style, i) => Sample.Text(30.123 + i, 60.456 + (i * 70.77), "Ewe ZZ 0412, likely 14 Jan", style)).ToArray();
        using var pdf = PdfDocument.Open(Sample.Print(Sample.Document(Sample.Page(1191, 842, items))));
        var letters = pdf.GetPage(1).Letters;
        Assert.Equal(items.Sum(item => item.Text.Length), letters.Count);
        var next = 0;
        foreach (var item in items)
        {
            for (var i = 0; i < item.Text.Length; i++)
            {
                var letter = letters[next++];
                Assert.Equal(item.X + FontLibrary.Measurer.WidthOf(item.Text.AsSpan(0, i), item.Style), letter.StartBaseLine.X, 0.01);
                Assert.Equal(842 - item.Baseline, letter.StartBaseLine.Y, 0.01);
            }
        }
    }

    [Fact]
    public void The_width_measured_is_the_width_in_the_file()
    {
        foreach (var style in Styles)
        {
            const string Text = "AVATAR Tý 1:45 fjord";
            using var pdf = PdfDocument.Open(Sample.Print(Sample.Text(10, 100, Text, style)));
            var letters = pdf.GetPage(1).Letters;
            // EndBaseLine adds the glyph's own advance from the PDF's table of widths (ISO 32000-1, 9.7.4.3).
            Assert.Equal(FontLibrary.Measurer.WidthOf(Text, style), letters[^1].EndBaseLine.X - letters[0].StartBaseLine.X, 0.01);
        }
    }

    [Fact]
    public void A_run_is_one_string_in_the_file()
    {
        foreach (var style in Styles)
        {
            using var pdf = PdfDocument.Open(Sample.Print(Sample.Text(10, 100, "Handle them as little as possible: ŵ ð ł 0123456789", style)));
            Assert.Single(pdf.GetPage(1).Operations, operation => operation.Operator == "Tj");
        }
    }

    [Theory]
    [InlineData(0, 204, 276)]
    [InlineData(1, 224, 264)]
    [InlineData(2, 316, 284)]
    [InlineData(3, 216, 376)]
    public void Turned_text_starts_at_the_turned_place(int quarters, double x, double y)
    {
        // Text at (4, 16) in a piece 120 by 40, its turned top left corner at (200, 260); the figures worked by hand from the definition of a quarter turn.
        var piece = new Piece(new Size(120, 40), [Sample.Text(4, 16, "Tupping")]);
        using var pdf = PdfDocument.Open(Sample.Print(new PieceItem(200, 260, piece, quarters)));
        var letters = pdf.GetPage(1).Letters;
        Assert.Equal("Tupping", Read(pdf.GetPage(1)));
        Assert.Equal(x, letters[0].StartBaseLine.X, 0.01);
        Assert.Equal(842 - y, letters[0].StartBaseLine.Y, 0.01);
        var length = FontLibrary.Measurer.WidthOf("Tuppin", Sample.Plain);
        var (dx, dy) = quarters switch { 0 => (length, 0.0), 1 => (0.0, -length), 2 => (-length, 0.0), _ => (0.0, length) };
        Assert.Equal(x + dx, letters[^1].StartBaseLine.X, 0.02);
        Assert.Equal(842 - y + dy, letters[^1].StartBaseLine.Y, 0.02);
    }

    [Fact]
    public void Line_feeds_and_soft_hyphens_leave_nothing_on_paper()
    {
        using var pdf = PdfDocument.Open(Sample.Print(Sample.Text(10, 100, "a\u00ADb\nc"), Sample.Text(10, 200, "\n")));
        Assert.Equal("abc", Read(pdf.GetPage(1)));
    }

    [Fact]
    public void Letters_stay_in_reading_order()
    {
        using var pdf = PdfDocument.Open(Sample.Print(Sample.Text(300, 300, "first "), Sample.Text(20, 40, "second "), Sample.Text(20, 700, "third")));
        Assert.Equal("first second third", Read(pdf.GetPage(1)));
    }

    private static string Read(UglyToad.PdfPig.Content.Page page) => string.Concat(page.Letters.Select(letter => letter.Value));
}
