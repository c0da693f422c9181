namespace PaperFlock.Layout.Elements;

/// <summary>Cells side by side, all as high as the highest. Takes the width offered if a cell has a share of it. Never splits.</summary>
public sealed record Row(ImmutableArray<RowCell> Cells, double Spacing = 0) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        var gaps = Spacing * Math.Max(0, Cells.Length - 1);
        var edges = Track.Edges([.. Cells.Select(cell => cell.Width)], space.Width - gaps);
        if (edges[^1] + gaps > space.Width + Space.Epsilon)
        {
            return Wrap(Points.NeedsWidth(edges[^1] + gaps, space.Width));
        }

        var height = space.Least.Height;
        var pieces = new Piece?[Cells.Length];
        for (var i = 0; i < pieces.Length; i++)
        {
            var width = edges[i + 1] - edges[i];
            var placement = Cells[i].Child.OfferWhole(space with { Width = width, Least = new Size(width, space.Least.Height) }, measurer);
            if (placement is Placement.Wraps wraps)
            {
                return Wrap(wraps);
            }

            pieces[i] = (placement as Placement.Fits)?.Piece;
            height = Math.Max(height, pieces[i]?.Size.Height ?? 0);
        }

        var items = ImmutableArray.CreateBuilder<Item>(Cells.Length);
        for (var i = 0; i < pieces.Length; i++)
        {
            if (pieces[i] is { } piece)
            {
                var x = edges[i] + (i * Spacing);
                piece = Stretch(Cells[i], piece, new Size(edges[i + 1] - edges[i], height), measurer);
                items.Add(new PieceItem(x, Cells[i].Align.Offset(piece.Size.Height, height), piece));
            }
        }

        return items.Count == 0 ? Placement.Nothing.Instance : Fit(new Size(edges[^1] + gaps, height), items.DrainToImmutable());
    }

    // Frames side by side end level: a box shorter than its neighbour is placed again, now as high as the row.
    private static Piece Stretch(RowCell cell, Piece piece, Size size, ITextMeasurer measurer)
    {
        if (cell.Align != VerticalAlign.Top || piece.Size.Height >= size.Height - Space.Epsilon)
        {
            return piece;
        }

        return cell.Child.Offer(Space.Exactly(size.Width, size.Height), measurer) is Placement.Fits fits ? fits.Piece : piece;
    }
}

/// <param name="Align">Where a child lower than the row stands. At the top, a <see cref="Box"/> is stretched to the row's height.</param>
public readonly record struct RowCell(Track Width, Element Child, VerticalAlign Align = VerticalAlign.Top);
