using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;

namespace PaperFlock.Layout.Tests.Fakes;

/// <summary>Short words for what the tests are full of.</summary>
internal static class Make
{
    /// <summary>10 pt: characters 6 pt wide, lines 12.5 pt high.</summary>
    public static readonly TextStyle Ten = new(Face.Text, 10);

    public static readonly TextStyle Bold = new(Face.TextBold, 10);

    public static Element Solid(string name, double width, double height) => new SolidBlock(width, height) { Name = name };

    public static Element Flow(string name, double width, double height) => new FlowBlock(width, height) { Name = name };

    public static Column Stack(double spacing, params ImmutableArray<Element> children) => new(children, spacing);

    public static Text Words(string words, TextAlign align = TextAlign.Left) => new(words, Ten, align);

    /// <summary>A paragraph of so many one-word lines, named by number.</summary>
    public static Text Lines(string name, int count) => new(string.Join('\n', Enumerable.Range(1, count).Select(n => $"{name}{n}")), Ten);

    public static ITextMeasurer Measurer() => new FakeMeasurer();

    /// <summary>Paper without margins, so that body coordinates are page coordinates.</summary>
    public static PageDesign Bare(double width, double height) => new(new Size(width, height), default, default, null, null, null, 0);

    public static ImmutableArray<Page> Paged(Element body, double width, double height) => Paginator.Paginate(body, Bare(width, height), Measurer());

    public static Placement Place(Element element, double width, double height, double? full = null) =>
        element.Offer(new Space(width, height, full ?? height), Measurer());

    /// <summary>The piece of an element that fits.</summary>
    public static Piece PieceOf(Element element, double width = 1000, double height = 1000) =>
        Assert.IsType<Placement.Fits>(Place(element, width, height)).Piece;

    /// <summary>The path and reason of what no page can hold, as the user reads it.</summary>
    public static string Complaint(Element body, double width, double height) =>
        Assert.Throws<LayoutException>(() => Paged(body, width, height)).Message;

    /// <summary>All its words, in reading order.</summary>
    public static IEnumerable<TextItem> Texts(this Piece piece) => piece.Flatten().Items.OfType<TextItem>();
}
