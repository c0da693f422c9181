namespace PaperFlock.Sheets.WallPlanner;

/// <summary>
/// How a planner larger than the printer's paper is cut up. Its size follows from what the tiles can show: printed area of each,
/// less the overlap; so nothing is scaled, and type stays the size it was chosen for.
/// </summary>
/// <param name="Tile">Paper of a tile, in points.</param>
internal sealed record TileScheme(Size Tile, int Across, int Down)
{
    /// <summary>Neighbours share this strip, half of it on each side of the cut.</summary>
    public static readonly double Overlap = Mm(12);

    /// <summary>A strip along the outer edge of each tile for its name, check bar and control line, which takes two lines on an upright tile.</summary>
    public double Strip { get; init; } = Mm(Tile.Height > Tile.Width ? 13 : 11);

    public bool IsUpright => Tile.Height > Tile.Width;

    /// <summary>What a tile prints, in points.</summary>
    public Size Printed => new(
        Tile.Width - (2 * PageSetup.Unprintable),
        Tile.Height - PageSetup.Unprintable - PageSetup.UnprintableFoot);

    /// <summary>The planner without the tiles' strips.</summary>
    public Size Live => new(
        (Across * Printed.Width) - ((Across - 1) * Overlap),
        (Down * (Printed.Height - Strip)) - ((Down - 1) * Overlap));

    /// <summary>Distance of the upright cut from the left of <see cref="Live"/>; null when there is none.</summary>
    public double? SeamX => Across == 1 ? null : Printed.Width - (Overlap / 2);

    /// <summary>Distance of the level cut from the top of <see cref="Live"/>.</summary>
    public double SeamY => Printed.Height - Strip - (Overlap / 2);

    /// <summary>Null when the planner goes on one sheet of the printer's paper.</summary>
    public static TileScheme? For(Paper paper, PlannerPaper planner)
    {
        var sheet = Papers.Of(paper);
        return planner switch
        {
            PlannerPaper.A3 or PlannerPaper.Tabloid => new TileScheme(Papers.Landscape(sheet), 1, 2),
            PlannerPaper.A2 => new TileScheme(sheet, 2, 2),
            _ => null,
        };
    }
}
