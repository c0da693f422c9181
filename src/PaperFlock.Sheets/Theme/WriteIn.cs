namespace PaperFlock.Sheets.Theme;

/// <summary>How large that is which is written in, in points.</summary>
/// <param name="Gloves">Hands are gloved, and cold.</param>
internal sealed record WriteIn(bool Gloves)
{
    /// <summary>Height of a row written in out of doors.</summary>
    public double BarnRow => Mm(Gloves ? 11 : 9);

    /// <summary>Height of a row written in at the table.</summary>
    public double TableRow => Mm(Gloves ? 11 : 7);

    /// <summary>Side of a box ticked out of doors.</summary>
    public double BarnTick => Mm(Gloves ? 8 : 6);

    /// <summary>Side of a box ticked at the table.</summary>
    public double TableTick => Mm(Gloves ? 8 : 5);
}
