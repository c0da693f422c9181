namespace PaperFlock.Sheets.Theme;

/// <summary>A dot for each lamb she carries, beside her name wherever it stands.</summary>
internal static class Dots
{
    /// <summary>The face draws its dot small.</summary>
    private const double Larger = 1.25;

    /// <summary>Nothing for a ewe that is empty, or that nobody has scanned.</summary>
    public static string Of(EwePlan ewe) => Of(ewe.IsScanned ? ewe.Litter : 0);

    /// <summary>So many.</summary>
    public static string Of(int lambs) => new('\u2022', lambs);

    /// <summary>The same with a space before it that never breaks; nothing for none.</summary>
    public static string After(int lambs) => lambs == 0 ? "" : "\u00a0" + Of(lambs);

    public static TextStyle Beside(TextStyle name) => name with { Size = name.Size * Larger };

    public static string After(EwePlan ewe) => After(ewe.IsScanned ? ewe.Litter : 0);

    public static Run After(EwePlan ewe, TextStyle name) => new(After(ewe), Beside(name), Whole: true);
}
