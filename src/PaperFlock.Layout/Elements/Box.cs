namespace PaperFlock.Layout.Elements;

/// <summary>
/// Padding and border round a child, or round nothing. Its size is the child's, the padding and the border together, or <see cref="Space.Least"/> where that is more.
/// The border is repeated on each part of a child that splits. Round a child with nothing to show a border is still drawn, padding alone is not.
/// </summary>
/// <param name="Border">Thickness in points; 0 for none.</param>
public sealed record Box(Element? Child, Edges Padding, double Border = 0, Sides Sides = Sides.All) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        var inset = Inset();
        var inside = new Space(space.Width - inset.Horizontal, space.Height - inset.Vertical, space.FullHeight - inset.Vertical)
        {
            Least = new Size(Math.Max(0, space.Least.Width - inset.Horizontal), Math.Max(0, space.Least.Height - inset.Vertical)),
        };
        var placement = Child?.Offer(inside, measurer) ?? Placement.Nothing.Instance;
        if (placement is Placement.Nothing && Child is not null && Border == 0)
        {
            return placement;
        }

        return TooLarge(new Size(inset.Horizontal, inset.Vertical), space) ?? (placement is Placement.Nothing
            ? new Placement.Fits(Frame(null, inset, space.Least))
            : Dress(placement, piece => Frame(piece, inset, space.Least), rest => this with { Child = rest }));
    }

    private Edges Inset() => new(
        Padding.Left + (Sides.HasFlag(Sides.Left) ? Border : 0),
        Padding.Top + (Sides.HasFlag(Sides.Top) ? Border : 0),
        Padding.Right + (Sides.HasFlag(Sides.Right) ? Border : 0),
        Padding.Bottom + (Sides.HasFlag(Sides.Bottom) ? Border : 0));

    private Piece Frame(Piece? piece, Edges inset, Size least)
    {
        var size = new Size(
            Math.Max(least.Width, inset.Horizontal + (piece?.Size.Width ?? 0)),
            Math.Max(least.Height, inset.Vertical + (piece?.Size.Height ?? 0)));
        var items = ImmutableArray.CreateBuilder<Item>(2);
        if (piece is not null)
        {
            items.Add(new PieceItem(inset.Left, inset.Top, piece));
        }

        if (Border > 0)
        {
            AddBorder(size, items);
        }

        return new Piece(size, items.DrainToImmutable(), Name);
    }

    private void AddBorder(Size size, ImmutableArray<Item>.Builder items)
    {
        var half = Border / 2;
        double right = size.Width - half, bottom = size.Height - half;
        if (Sides == Sides.All)
        {
            items.Add(new RectItem(half, half, size.Width - Border, size.Height - Border, Border));
            return;
        }

        foreach (var (side, line) in new[]
        {
            (Sides.Left, new LineItem(half, 0, half, size.Height, Border)),
            (Sides.Top, new LineItem(0, half, size.Width, half, Border)),
            (Sides.Right, new LineItem(right, 0, right, size.Height, Border)),
            (Sides.Bottom, new LineItem(0, bottom, size.Width, bottom, Border)),
        })
        {
            if (Sides.HasFlag(side))
            {
                items.Add(line);
            }
        }
    }
}

[Flags]
public enum Sides
{
    None = 0,
    Left = 1,
    Top = 2,
    Right = 4,
    Bottom = 8,
    All = 15,
}
