using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;
using PaperFlock.Layout.Structure;

namespace PaperFlock.Pdf.Tests;

/// <summary>What stands in the structure tree for each kind of element, read back from the file.</summary>
public sealed class StructureTests
{
    private static readonly TextStyle Style = new(Face.Text, 10);

    [Fact]
    public void A_paragraph_is_read_with_a_space_where_its_lines_were_broken() => Reads(
        Words("Bring the ewes in before it is dark, and count them through the gate as they come."),
        """
        Document
          Sect
            P “Bring the ewes in before it is dark, and count them through the gate as they come.”
        """);

    [Fact]
    public void A_long_word_broken_between_letters_is_read_whole() => Reads(
        Words("Llanfairpwllgwyngyllgogerychwyrndrobwllllantysiliogogogoch"),
        """
        Document
          Sect
            P “Llanfairpwllgwyngyllgogerychwyrndrobwllllantysiliogogogoch”
        """);

    [Fact]
    public void Headings_stand_among_what_they_are_the_headings_of() => Reads(
        new Column([Words("Stores") with { Tag = StructureTag.Heading(1) }, Words("Feed") with { Tag = StructureTag.Heading(2) }, Words("Ten bags."), new Rule(1)]),
        """
        Document
          Sect
            H1 “Stores”
            H2 “Feed”
            P “Ten bags.”
        """);

    [Fact]
    public void A_table_has_header_cells_and_no_row_short_of_a_cell() => Reads(
        new Table(
            [Track.Share(), Track.Share(), Track.Share()],
            [new TableRow([Cell("Week"), Cell("Singles"), Cell("Twins")])],
            [new TableRow([Cell("1 Feb"), Cell("0.2 kg"), new TableCell(null)]), new TableRow([Cell("8 Feb"), new TableCell(Words("as the vet says"), 2)])])
        { RowHeaders = true },
        """
        Document
          Sect
            Table
              TR
                TH column “Week”
                TH column “Singles”
                TH column “Twins”
              TR
                TH row “1 Feb”
                TD “0.2 kg”
                TD
              TR
                TH row “8 Feb”
                TD over 2 “as the vet says”
        """);

    [Fact]
    public void A_cell_with_more_in_it_than_a_paragraph_holds_each() => Reads(
        new Table([Track.Share()], [], [new TableRow([new TableCell(new Column([Words("Sorrel"), Words("twins")]))])]),
        """
        Document
          Sect
            Table
              TR
                TD
                  P “Sorrel”
                  P “twins”
        """);

    [Fact]
    public void A_table_over_pages_is_one_table_and_its_head_is_read_once() => Reads(
        new Table([Track.Share()], [new TableRow([Cell("Ewe")])], [.. Enumerable.Range(1, 4).Select(n => new TableRow([Cell($"number {n}")], MinHeight: 50))]),
        """
        Document
          Sect
            Table
              TR
                TH column “Ewe”
              TR
                TD “number 1”
              TR
                TD “number 2”
              TR
                TD “number 3”
              TR
                TD “number 4”
        """,
        pages: 2);

    [Fact]
    public void A_paragraph_over_pages_is_one_paragraph() => Reads(
        new Column([new Picture(new Size(1, 120), []), Words(string.Join(' ', Enumerable.Range(1, 70)))]),
        $"""
        Document
          Sect
            P “{string.Join(' ', Enumerable.Range(1, 70))}”
        """,
        pages: 2);

    [Fact]
    public void A_section_over_pages_is_one_section() => Reads(
        new Column([new Column([Words("before"), new PageBreak(), Words("after")]) { Tag = StructureTag.Section }, Words("outside")]),
        """
        Document
          Sect
            Sect
              P “before”
              P “after”
            P “outside”
        """,
        pages: 2);

    [Fact]
    public void A_list_has_items_with_or_without_a_label() => Reads(
        new Column(
        [
            new Row([new RowCell(Track.Fixed(20), Words("1.") with { Tag = StructureTag.Label }), new RowCell(Track.Share(), Words("Look her over."))]) { Tag = StructureTag.ListItem },
            new Row([new RowCell(Track.Fixed(20), new Picture(new Size(8, 8), [new RectItem(1, 1, 6, 6, 1)])), new RowCell(Track.Share(), Words("Shut the gate."))]) { Tag = StructureTag.ListItem },
        ])
        { Tag = StructureTag.List },
        """
        Document
          Sect
            L
              LI
                Lbl “1.”
                LBody “Look her over.”
              LI
                LBody “Shut the gate.”
        """);

    [Fact]
    public void A_drawing_is_a_figure_with_what_it_says_in_place_of_what_is_in_it() => Reads(
        new Chart(100, 50, (_, _) => [new RectItem(1, 1, 20, 20, 1), Sample.Text(5, 30, "12", Style)], "Twelve ewes are due in the week of 3 February."),
        """
        Document
          Sect
            Figure says “Twelve ewes are due in the week of 3 February.” “12”
        """);

    [Fact]
    public void A_link_is_read_where_it_stands_and_knows_its_own_words() => Reads(
        new Column(
        [
            new Link(Words("FEED-2"), "feed"),
            new Table([Track.Share()], [], [new TableRow([new TableCell(new Link(Words("CARD-1"), "feed"))])]),
            new Picture(default, [new AnchorItem(0, 0, "feed")]),
            Words("Feed for twins"),
        ]),
        """
        Document
          Sect
            P
              Link “FEED-2” →“FEED-2”
            Table
              TR
                TD
                  Link “CARD-1” →“CARD-1”
            P “Feed for twins”
        """);

    [Fact]
    public void What_stands_on_every_page_is_read_once_and_what_is_for_the_eye_never() => Reads(
        new Column([new Box(Words("first"), Edges.All(5), 1), new PageBreak(), Words("second")]),
        """
        Document
          Sect
            H1 “Round log”
            P “first”
            P “second”
        """,
        pages: 2,
        design => design with
        {
            Head = Words("Round log") with { Tag = StructureTag.Heading(1) },
            Foot = new PageText(number => $"{number.Number} of {number.Of}", Style),
            Marks = _ => new Align(Words("cut here"), TextAlign.Right),
        });

    [Fact]
    public void What_is_read_in_two_places_may_be_one_thing()
    {
        var card = new StructureId();
        Reads(
            new Column([Part("Sorrel, front"), Words("Campion"), Part("Sorrel, back")]),
            """
            Document
              Sect
                Sect
                  P “Sorrel, front”
                  P “Sorrel, back”
                P “Campion”
            """);

        Element Part(string words) => new Column([Words(words)]) { Tag = StructureTag.Section, TagId = card };
    }

    private static Text Words(string words) => new(words, Style);

    private static TableCell Cell(string words) => new(Words(words));

    private static void Reads(Element body, string expected, int pages = 1, Func<PageDesign, PageDesign>? change = null)
    {
        var design = new PageDesign(new Size(240, 200), Edges.All(20), Edges.All(20), null, null, null, 6);
        var made = Paginator.Paginate(body, change?.Invoke(design) ?? design, FontLibrary.Measurer);
        Assert.Equal(pages, made.Length);
        Assert.Equal(expected.ReplaceLineEndings("\n") + "\n", StructureNode.Of(Sample.Print(Sample.Document([.. made]))).ToString());
    }
}
