using PaperFlock.Layout.Pieces;

namespace PaperFlock.Benchmarks.Beside;

/// <summary>Where a turned piece is turned about.</summary>
internal static class TurnedText
{
    /// <summary>Where its own top left corner lands: turned by quarters clockwise about that point, the piece stands where it should.</summary>
    public static (double X, double Y) Corner(PieceItem item) => (item.QuarterTurns & 3) switch
    {
        0 => (item.X, item.Y),
        1 => (item.X + item.Piece.Size.Height, item.Y),
        2 => (item.X + item.Piece.Size.Width, item.Y + item.Piece.Size.Height),
        _ => (item.X, item.Y + item.Piece.Size.Width),
    };
}
