namespace PaperFlock.Layout.Elements;

/// <summary>Moves a child within the space; takes the whole width, and the whole height too when <paramref name="Vertical"/> is given. A box in it hugs its content.</summary>
public sealed record Align(Element Child, TextAlign Horizontal = TextAlign.Left, VerticalAlign? Vertical = null) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer) =>
        Dress(Child.Offer(space with { Least = default }, measurer), piece => Move(piece, space), rest => this with { Child = rest });

    private Piece Move(Piece piece, Space space)
    {
        var height = Vertical is null ? piece.Size.Height : Math.Max(piece.Size.Height, space.Height);
        var y = Vertical?.Offset(piece.Size.Height, height) ?? 0;
        return new Piece(new Size(space.Width, height), [new PieceItem(Horizontal.Offset(piece.Size.Width, space.Width), y, piece)], Name);
    }
}

public enum TextAlign
{
    Left,
    Centre,
    Right,
}

public enum VerticalAlign
{
    Top,
    Middle,
    Bottom,
}

internal static class Offsets
{
    /// <summary>From the left edge of the room to the left edge of what stands in it.</summary>
    public static double Offset(this TextAlign align, double taken, double room) => align switch
    {
        TextAlign.Left => 0,
        TextAlign.Centre => (room - taken) / 2,
        _ => room - taken,
    };

    /// <summary>From the top of the room to the top of what stands in it.</summary>
    public static double Offset(this VerticalAlign align, double taken, double room) => align switch
    {
        VerticalAlign.Top => 0,
        VerticalAlign.Middle => (room - taken) / 2,
        _ => room - taken,
    };
}
