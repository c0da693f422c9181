using PaperFlock.Layout;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;
using PaperFlock.Layout.Structure;

namespace PaperFlock.Pdf.Tests;

/// <summary>What is refused, because the file would say that it is PDF/UA-1 and not be: clauses of ISO 14289-1:2014, from memory.</summary>
public sealed class ConformanceTests
{
    [Fact]
    public void All_that_is_wrong_is_said_at_once_with_its_page()
    {
        var document = Sample.Document(
            Bare(Sample.Text(10, 10, "loose")),
            Sample.Page(Sample.Text(10, 10, "sheep 羊"), new LinkItem(0, 0, 9, 9, "nowhere", " "))) with
        { Title = " ", Language = "" };
        var fault = Assert.Throws<PdfFaultException>(() => Sample.Print(document));
        Assert.Equal(
            """
            document: it has no title
            document: it does not say which language it is in
            CARD-1: “loose” is in no paragraph, cell or figure
            CARD-2: “sheep 羊” has a letter its face lacks, U+7F8A
            CARD-2: a link leads to “nowhere”, which is nowhere in the document
            CARD-2: the link to “nowhere” has no words
            """.ReplaceLineEndings("\n"),
            fault.Message);
        Assert.Equal(6, fault.Faults.Length);
    }

    [Fact]
    public void Nothing_is_written_of_a_document_that_is_refused()
    {
        using var output = new MemoryStream();
        Assert.Throws<PdfFaultException>(() => PdfPrinter.Print(Sample.Document(Bare(Sample.Text(10, 10, "loose"))), output));
        Assert.Equal(0, output.Length);
    }

    [Fact]
    public void A_figure_needs_words_for_what_it_shows() => Refuses("a figure without words for what it shows", In(StructureTag.Figure("  "), new RectItem(0, 0, 9, 9, 1)));

    [Fact]
    public void Cells_stand_in_rows_and_rows_in_tables()
    {
        Refuses("TD stands in Document", In(StructureTag.Cell(), Words));
        Refuses("TR stands in Document", In(StructureTag.Row, In(StructureTag.Cell(), Words)));
        Refuses("P stands in Table", In(StructureTag.Table, In(StructureTag.Paragraph, Words)));
        Refuses("LBody stands in LI", In(StructureTag.ListItem, Words));
    }

    [Fact]
    public void Rows_of_a_table_are_equally_wide() => Refuses(
        "the rows of a table cover 2 or 3 columns",
        In(StructureTag.Table, In(StructureTag.Row, In(StructureTag.Cell(2), Words)), In(StructureTag.Row, In(StructureTag.Cell(), Words), In(StructureTag.Cell(2), Words))));

    [Fact]
    public void Headings_skip_no_level()
    {
        Refuses("the first heading is of level 2", In(StructureTag.Heading(2), Words));
        Refuses("a heading of level 3 follows one of level 1", In(StructureTag.Heading(1), Words), In(StructureTag.Heading(3), Words));
        _ = Sample.Print(Sample.Document(Bare(In(StructureTag.Heading(1), Words), In(StructureTag.Heading(2), Words), In(StructureTag.Heading(3), Words), In(StructureTag.Heading(1), Words))));
    }

    [Fact]
    public void A_link_is_never_in_what_is_not_read_out() => Refuses(
        "the link to “here” stands in what is not read out",
        In(StructureTag.RunningFoot, new LinkItem(0, 0, 9, 9, "here", "here"), new AnchorItem(0, 0, "here")));

    [Fact]
    public void An_attachment_says_what_it_is()
    {
        var attachment = new PdfAttachment("issue.json", "application/json", "", default);
        var fault = Assert.Throws<PdfFaultException>(() => Sample.Print(Sample.Document(Sample.Page()) with { Attachment = attachment }));
        Assert.Equal(["document: the attachment “issue.json” does not say what it is"], fault.Faults.Select(f => f.ToString()));
    }

    private static TextItem Words => Sample.Text(10, 10, "words");

    private static PieceItem In(StructureTag tag, params ReadOnlySpan<Item> items) => new(0, 0, new Piece(new Size(100, 100), [.. items]) { Tag = tag });

    private static Page Bare(params ReadOnlySpan<Item> items) => Sample.Page() with { Content = new Piece(new Size(595, 842), [.. items]) };

    private static void Refuses(string problem, params ReadOnlySpan<Item> items)
    {
        var document = Sample.Document(Bare(items));
        var fault = Assert.Throws<PdfFaultException>(() => Sample.Print(document));
        Assert.Contains(fault.Faults, f => f == new PdfFault("CARD-1", problem));
    }
}
