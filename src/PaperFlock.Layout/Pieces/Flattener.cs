namespace PaperFlock.Layout.Pieces;

/// <summary>Brings the items of nested and turned pieces into the coordinates of the outermost.</summary>
internal static class Flattener
{
    public static ImmutableArray<Item> Flatten(Piece piece)
    {
        var items = ImmutableArray.CreateBuilder<Item>(piece.Items.Length);
        Add(piece, default, items);
        return items.DrainToImmutable();
    }

    private static void Add(Piece piece, Transform transform, ImmutableArray<Item>.Builder items)
    {
        foreach (var item in piece.Items)
        {
            if (item is PieceItem nested)
            {
                Add(nested.Piece, transform.Of(nested), items);
            }
            else
            {
                items.Add(Move(item, transform));
            }
        }
    }

    private static Item Move(Item item, Transform transform)
    {
        switch (item)
        {
            case TextItem text:
                return transform.QuarterTurns == 0
                    ? text with { X = transform.X + text.X, Baseline = transform.Y + text.Baseline }
                    : Turn(TextBox.Of(text), text with { X = 0, Baseline = TextBox.AscentOfEm * text.Style.Size }, transform);
            case PageTextItem text:
                return transform.QuarterTurns == 0
                    ? text with { X = transform.X + text.X, Baseline = transform.Y + text.Baseline }
                    : Turn(TextBox.Of(text), text with { X = 0, Baseline = TextBox.AscentOfEm * text.Style.Size }, transform);
            case LineItem line:
                var (from, to) = (transform.Apply(line.X1, line.Y1), transform.Apply(line.X2, line.Y2));
                return line with { X1 = from.X, Y1 = from.Y, X2 = to.X, Y2 = to.Y };
            case RectItem rect:
                var sides = transform.Apply(new Bounds(rect.X, rect.Y, rect.Width, rect.Height));
                return rect with { X = sides.X, Y = sides.Y, Width = sides.Width, Height = sides.Height };
            case LinkItem link:
                var area = transform.Apply(new Bounds(link.X, link.Y, link.Width, link.Height));
                return link with { X = area.X, Y = area.Y, Width = area.Width, Height = area.Height };
            case PathItem path:
                return path with { Points = [.. path.Points.Select(point => transform.Apply(point.X, point.Y))] };
            case OutlineItem outline:
                return outline with { Points = [.. outline.Points.Select(point => transform.Apply(point.X, point.Y))] };
            case CircleItem circle:
                var centre = transform.Apply(circle.X, circle.Y);
                return circle with { X = centre.X, Y = centre.Y };
            case AnchorItem anchor:
                var place = transform.Apply(anchor.X, anchor.Y);
                return anchor with { X = place.X, Y = place.Y };
            default:
                throw new InvalidOperationException($"{item.GetType().Name} is not known to flattening");
        }
    }

    // Glyphs cannot be turned by moving their corners: painting turns the piece they are in.
    private static PieceItem Turn(Bounds box, Item text, Transform transform)
    {
        var turned = transform.Apply(box);
        return new PieceItem(turned.X, turned.Y, new Piece(new Size(box.Width, box.Height), [text]), transform.QuarterTurns);
    }
}
