namespace PaperFlock.Layout.Pieces;

/// <summary>Cuts a piece to an area.</summary>
internal sealed class Clipper
{
    // A chord of a 64th of the circle is at most 0.12 % of the radius inside it: 0.02 pt in a circle of 30 pt.
    private const int Chords = 64;

    private readonly ClipArea _area;
    private readonly ImmutableArray<Item>.Builder _items = ImmutableArray.CreateBuilder<Item>();

    private Clipper(ClipArea area) => _area = area;

    public static ImmutableArray<Item> Cut(Piece piece, double x, double y, double width, double height)
    {
        // The area is moved to the origin at the end, so that neighbouring areas cut at the very same numbers.
        var closedRight = x + width >= piece.Size.Width - Space.Epsilon;
        var closedBottom = y + height >= piece.Size.Height - Space.Epsilon;
        var clipper = new Clipper(new ClipArea(x, y, x + width, y + height, closedRight, closedBottom));
        foreach (var item in Flattener.Flatten(piece))
        {
            clipper.Add(item);
        }

        var cut = new Piece(new Size(width, height), clipper._items.DrainToImmutable());
        return Flattener.Flatten(new Piece(cut.Size, [new PieceItem(-x, -y, cut)]));
    }

    private void Add(Item item)
    {
        switch (item)
        {
            case TextItem text:
                // Next to it may stand what stood elsewhere in the whole.
                Keep(text with { SpaceFollows = true }, _area.Holds(TextBox.Of(text)));
                break;
            case PageTextItem text:
                Keep(text, _area.Holds(TextBox.Of(text)));
                break;
            case PieceItem turned:
                Keep(turned, _area.Holds(default(Transform).Of(turned).Apply(new Bounds(0, 0, turned.Piece.Size.Width, turned.Piece.Size.Height))));
                break;
            case LineItem line:
                AddLine((line.X1, line.Y1), (line.X2, line.Y2), line.Thickness);
                break;
            case RectItem rect:
                AddRect(rect, new Bounds(rect.X, rect.Y, rect.Width, rect.Height));
                break;
            case PathItem path:
                AddPath(path);
                break;
            case CircleItem circle:
                AddCircle(circle);
                break;
            case LinkItem link:
                if (_area.Cut(new Bounds(link.X, link.Y, link.Width, link.Height)) is { Width: > 0, Height: > 0 } area)
                {
                    _items.Add(link with { X = area.X, Y = area.Y, Width = area.Width, Height = area.Height });
                }

                break;
            case AnchorItem anchor:
                Keep(anchor, _area.Contains(anchor.X, anchor.Y));
                break;
            default:
                throw new InvalidOperationException($"{item.GetType().Name} is not known to clipping");
        }
    }

    private void Keep(Item item, bool isInside)
    {
        if (isInside)
        {
            _items.Add(item);
        }
    }

    private void AddLine((double X, double Y) a, (double X, double Y) b, double thickness)
    {
        if (_area.Cut(a, b, out var from, out var to))
        {
            var (start, end) = (Along(a, b, from), Along(a, b, to));
            _items.Add(new LineItem(start.X, start.Y, end.X, end.Y, thickness));
        }
    }

    private void AddRect(RectItem rect, Bounds box)
    {
        var half = rect.Thickness / 2;
        if (_area.Contains(box.X - half, box.Y - half) && _area.Contains(box.Right + half, box.Bottom + half))
        {
            _items.Add(rect);
        }
        else if (!rect.IsFilled)
        {
            // The corners belong to the level sides, or they would be notched or drawn twice.
            AddLine((box.X - half, box.Y), (box.Right + half, box.Y), rect.Thickness);
            AddLine((box.X - half, box.Bottom), (box.Right + half, box.Bottom), rect.Thickness);
            AddLine((box.X, box.Y + half), (box.X, box.Bottom - half), rect.Thickness);
            AddLine((box.Right, box.Y + half), (box.Right, box.Bottom - half), rect.Thickness);
        }
        else if (_area.Cut(box) is { Width: > 0, Height: > 0 } part)
        {
            _items.Add(rect with { X = part.X, Y = part.Y, Width = part.Width, Height = part.Height });
        }
    }

    private void AddPath(PathItem path)
    {
        if (path.Points.All(point => _area.Contains(point.X, point.Y)))
        {
            _items.Add(path);
        }
        else if (path.Thickness > 0)
        {
            _items.AddRange(PathClipper.CutStroke(path, _area));
        }
        else if (PathClipper.CutFill(path.Points, _area) is { Length: > 2 } points)
        {
            _items.Add(path with { Points = points });
        }
    }

    private void AddCircle(CircleItem circle)
    {
        if (_area.Contains(circle.X - circle.Radius, circle.Y - circle.Radius) && _area.Contains(circle.X + circle.Radius, circle.Y + circle.Radius))
        {
            _items.Add(circle);
            return;
        }

        var points = ImmutableArray.CreateBuilder<(double X, double Y)>(Chords);
        for (var i = 0; i < Chords; i++)
        {
            var (sine, cosine) = Math.SinCos(Math.Tau * i / Chords);
            points.Add((circle.X + (circle.Radius * cosine), circle.Y + (circle.Radius * sine)));
        }

        AddPath(new PathItem(points.MoveToImmutable(), Closed: true, circle.Thickness));
    }

    // The ends as they are: start + (end - start) may round to a neighbour.
    internal static (double X, double Y) Along((double X, double Y) a, (double X, double Y) b, double part) => part switch
    {
        0 => a,
        1 => b,
        _ => (a.X + ((b.X - a.X) * part), a.Y + ((b.Y - a.Y) * part)),
    };
}
