using CsCheck;
using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Tests.Fakes;

namespace PaperFlock.Layout.Tests.Properties;

/// <summary>Bodies made of every element that shows or holds words, for pages of 300 by 200 points.</summary>
internal static class RandomDocuments
{
    public const double Width = 300;
    public const double Height = 200;

    private static readonly Gen<string> Word = Gen.String[Gen.Char['a', 'z'], 1, 12];

    private static readonly Gen<Run> Run = Gen.Select(Word.Array[0, 8], Gen.Bool, Gen.Int[0, 3].Select(i => " -\n\u00A0"[i]), (words, bold, join) =>
        new Run(string.Join(join, words) + " ", bold ? Make.Bold : Make.Ten));

    private static readonly Gen<Element> Label = Gen.Select(Word, Gen.Enum<TextAlign>(), (word, align) => (Element)Make.Words(word, align));

    private static readonly Gen<Element> Paragraph = Gen.Select(Run.Array[0, 4], Gen.Enum<TextAlign>(), (runs, align) => (Element)new Text([.. runs], align));

    private static readonly Gen<TableRow> TableRow = Gen.Select(Gen.OneOf(Label, Paragraph), Label, Gen.Bool, Gen.Double[0, 30], Gen.Int[0, 5], (a, b, spans, height, keep) => new TableRow(
        spans ? [new TableCell(a, Span: 2), new TableCell(null)] : [new TableCell(a), new TableCell(b), new TableCell(null)], height, KeepWithNext: keep == 0));

    private static readonly Gen<Element> Table = TableRow.Array[0, 12].Select(rows =>
        (Element)new Table([Track.Share(2), Track.Share(), Track.Fixed(20)], [new TableRow([new TableCell(null, Span: 3)], 15)], [.. rows]));

    private static readonly Gen<Element> Other = Gen.OneOf(
        Gen.Const<Element>(new PageBreak()),
        Gen.Const<Element>(new Rule(1)),
        Gen.Double[0, 40].Select(height => (Element)new Picture(new Size(0, height), [])),
        Label.Array[1, 6].Select(labels => (Element)new Grid(3, [.. labels], 30)),
        Gen.Select(Label, Label, (a, b) => (Element)new Board(new Size(200, 40), [new BoardPlace(0, 0, 80, 40, a), new BoardPlace(100, 0, 80, 40, b)])),
        Label.Array[1, 4].Select(labels => (Element)new Row([.. labels.Select(label => new RowCell(Track.Share(), label, VerticalAlign.Middle))], 4)));

    public static readonly Gen<Element> Body = Nested(3);

    private static Gen<Element> Nested(int depth)
    {
        var leaf = Gen.OneOf(Paragraph, Paragraph, Label, Table, Other);
        if (depth == 0)
        {
            return leaf;
        }

        var inner = Nested(depth - 1);
        var column = Gen.Select(inner.Array[0, 6], Gen.Double[0, 10], (children, spacing) => (Element)new Column([.. children], spacing));
        return Gen.OneOf(
            column,
            column,
            leaf,
            Gen.Select(inner, Gen.Double[0, 2], (child, border) => (Element)new Box(child, Edges.All(3), border)),
            inner.Select(child => (Element)new KeepTogether(child)),
            inner.Select(child => (Element)new NeedSpace(child, 40)),
            inner.Select(child => (Element)new Align(child, TextAlign.Right)),
            inner.Select(child => (Element)new Layers(child, new Box(null, default, 1))),
            inner.Select(child => (Element)new Link(child, "here")),
            inner.Select(child => (Element)new FirstThatFits([child, child])));
    }

    /// <summary>The words of an element in reading order, without spaces.</summary>
    public static string Source(Element? element) => element switch
    {
        Text text => Letters(string.Concat(text.Runs.Select(run => run.Words))),
        Column column => string.Concat(column.Children.Select(Source)),
        Row row => string.Concat(row.Cells.Select(cell => Source(cell.Child))),
        Table table => string.Concat(table.Body.SelectMany(row => row.Cells).Select(cell => Source(cell.Child))),
        Grid grid => string.Concat(grid.Cells.Select(Source)),
        Board board => string.Concat(board.Places.Select(place => Source(place.Child))),
        Box box => Source(box.Child),
        KeepTogether keep => Source(keep.Child),
        NeedSpace need => Source(need.Child),
        Align align => Source(align.Child),
        Layers layers => Source(layers.Content),
        Link link => Source(link.Child),
        FirstThatFits first => Source(first.Alternatives.First()),
        _ => "",
    };

    public static string Letters(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));
}
