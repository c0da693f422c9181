namespace PaperFlock.Layout.Pages;

/// <summary>A page with its head, foot and marks in place, and a slot between them for a part of the body.</summary>
internal sealed class PageFrame
{
    private readonly Size _paper;
    private readonly Edges _margins;
    private readonly Piece? _head;
    private readonly Piece? _foot;
    private readonly Piece? _marks;
    private readonly double _bodyTop;

    public PageFrame(PageDesign design, PageSide side, bool isFirst, ITextMeasurer measurer)
    {
        (Side, IsFirst, _paper) = (side, isFirst, design.Paper);
        _margins = side == PageSide.Front ? design.Front : design.Back;
        var inner = Inner(design.Paper, _margins);
        var room = new Space(inner.Width, inner.Height, inner.Height) { Least = new Size(inner.Width, 0) };

        _head = PlaceWhole(isFirst ? design.Head : design.ContinuedHead ?? design.Head, room, measurer);
        _foot = PlaceWhole(design.Foot, room, measurer);
        _marks = PlaceWhole(design.Marks?.Invoke(side), Space.Exactly(design.Paper.Width, design.Paper.Height), measurer);

        _bodyTop = WithGap(_head, design.Gap);
        var height = Math.Max(0, inner.Height - _bodyTop - WithGap(_foot, design.Gap));
        Slot = new Space(inner.Width, height, height) { Least = new Size(inner.Width, 0) };
    }

    public PageSide Side { get; }

    public bool IsFirst { get; }

    /// <summary>The room there is for the body.</summary>
    public Space Slot { get; }

    public Piece? Body { get; set; }

    public static void Check(PageDesign design)
    {
        Size front = Inner(design.Paper, design.Front), back = Inner(design.Paper, design.Back);
        if (front.Width <= 0 || front.Height <= 0)
        {
            throw new ArgumentException("the margins leave no room on the paper", nameof(design));
        }

        if (Math.Abs(front.Width - back.Width) > Space.Epsilon || Math.Abs(front.Height - back.Height) > Space.Epsilon)
        {
            throw new ArgumentException("the margins of front and back leave different sizes", nameof(design));
        }
    }

    /// <summary>The whole page, in reading order. What stands on every page is read out once: the head of the first.</summary>
    /// <param name="section">All pages of the sheet.</param>
    public Piece Assemble(StructureId section)
    {
        var items = ImmutableArray.CreateBuilder<Item>(4);
        Add(IsFirst ? _head : _head?.As(StructureTag.RunningHead), _margins.Left, _margins.Top);
        Add(Body, _margins.Left, _margins.Top + _bodyTop);
        Add(_foot?.As(StructureTag.RunningFoot), _margins.Left, _paper.Height - _margins.Bottom - (_foot?.Size.Height ?? 0));
        Add(_marks?.As(StructureTag.PrintersMark), 0, 0);
        return new Piece(_paper, items.ToImmutable()).As(StructureTag.Section, section);

        void Add(Piece? piece, double x, double y)
        {
            if (piece is not null)
            {
                items.Add(new PieceItem(x, y, piece));
            }
        }
    }

    private static Size Inner(Size paper, Edges margins) => new(paper.Width - margins.Horizontal, paper.Height - margins.Vertical);

    private static double WithGap(Piece? piece, double gap) => piece is { Size.Height: > Space.Epsilon } ? piece.Size.Height + gap : 0;

    private static Piece? PlaceWhole(Element? element, Space space, ITextMeasurer measurer) => element?.OfferWhole(space, measurer) switch
    {
        Placement.Fits fits => fits.Piece,
        Placement.Wraps wraps => throw new LayoutException(wraps.Reason, wraps.Path),
        _ => null,
    };
}
