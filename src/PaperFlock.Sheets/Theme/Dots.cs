namespace PaperFlock.Sheets.Theme;

/// <summary>A dot for each lamb she carries, beside her name wherever it stands.</summary>
internal static class Dots
{
    /// <summary>The face draws its dot small.</summary>
    private const double Larger = 1.25;

    /// <summary>Nothing for a ewe that is empty, or that nobody has scanned.</summary>
    public static string Of(EwePlan ewe) => ewe.IsScanned ? new string('\u2022', ewe.Litter) : "";

    public static TextStyle Beside(TextStyle name) => name with { Size = name.Size * Larger };

    /// <summary>The same with a space before it that never breaks.</summary>
    public static Run After(EwePlan ewe, TextStyle name) => new(Of(ewe) is { Length: > 0 } dots ? "\u00a0" + dots : "", Beside(name), Whole: true);
}
