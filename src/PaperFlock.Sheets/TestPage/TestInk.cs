namespace PaperFlock.Sheets.TestPage;

/// <summary>Collects what one side of the test page shows, at stated places: nothing on it flows.</summary>
/// <param name="code">Page code, for the message when words do not fit.</param>
internal sealed class TestInk(string code, ITextMeasurer measurer)
{
    private readonly ImmutableArray<Item>.Builder _items = ImmutableArray.CreateBuilder<Item>();

    public ImmutableArray<Item> Items => _items.ToImmutable();

    public ITextMeasurer Measurer => measurer;

    public void Add(params IEnumerable<Item> items) => _items.AddRange(items);

    /// <summary>Words or boxes with their top left corner at a point.</summary>
    /// <param name="height">Room there is, in points.</param>
    /// <returns>The height they took.</returns>
    /// <exception cref="SheetException">They need more room.</exception>
    public double Put(Element element, double x, double y, double width, double height)
    {
        var piece = Piece(element, width, height);
        _items.Add(new PieceItem(x, y, piece));
        return piece.Size.Height;
    }

    /// <summary>Points that it takes at a width.</summary>
    public double HeightOf(Element element, double width) => Piece(element, width, Mm(400)).Size.Height;

    /// <summary>The same, read upwards along a line at the right of <paramref name="x"/>.</summary>
    /// <param name="length">Room along the line, in points; <paramref name="y"/> is its upper end.</param>
    /// <param name="height">Room across it.</param>
    public void PutUpwards(Element element, double x, double y, double length, double height) =>
        _items.Add(new PieceItem(x, y, Piece(element, length, height), 3));

    /// <summary>A short word in its natural width, its middle at a point.</summary>
    public PieceItem Centred(string words, TextStyle style, double x, double y)
    {
        var piece = Piece(Block.Text(words, style, leading: 1), Mm(60), Mm(20));
        return new PieceItem(x - (piece.Size.Width / 2), y - (piece.Size.Height / 2), piece);
    }

    private Piece Piece(Element element, double width, double height) =>
        Block.Column(0, element).Place(new Space(width, height, height), measurer) switch
        {
            Placement.Fits fits => fits.Piece,
            Placement.Wraps wraps => throw Misfit(wraps.Reason),
            _ => throw Misfit("the words need more room than there is"),
        };

    private SheetException Misfit(string reason) => new(code, reason, new InvalidOperationException(reason));
}
