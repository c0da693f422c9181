namespace PaperFlock.Sheets.EweCards;

/// <summary>Four cards to a sheet, a quarter of the paper each: A6 on A4, a quarter of Letter on Letter. One cut each way.</summary>
/// <param name="Paper">The sheet, in points.</param>
/// <param name="TurnedBacks">Backs go through the printer upside down, so that a card's head needs the room of its foot.</param>
internal sealed record CardFormat(Size Paper, bool TurnedBacks)
{
    public const int Across = 2;
    public const int Down = 2;
    public const int PerSheet = Across * Down;

    // The outer cards share an edge with the paper, so all keep clear of what a printer cannot reach, and of a cut or a back
    // that is 3 mm out.
    private static readonly double Side = Mm(8);
    private static readonly double Foot = Mm(12.2);

    private double Top => TurnedBacks ? Foot : Mm(8);

    public Size Card => new(Paper.Width / Across, Paper.Height / Down);

    /// <summary>What a card may be drawn on, in points.</summary>
    public Size Content => new(Card.Width - (2 * Side), Card.Height - Top - Foot);

    /// <summary>Top left corner of the content of the card in a place, row by row from 0.</summary>
    /// <param name="mirrored">Backs stand in mirrored columns, so that each falls behind its front when the sheet is turned on its long edge.</param>
    public (double X, double Y) Corner(int place, bool mirrored)
    {
        var column = mirrored ? Across - 1 - (place % Across) : place % Across;
        return ((column * Card.Width) + Side, (place / Across * Card.Height) + Top);
    }
}
