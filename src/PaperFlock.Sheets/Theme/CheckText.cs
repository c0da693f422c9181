namespace PaperFlock.Sheets.Theme;

/// <summary>What was found at the check of teeth, toes and teats, in the words a keeper rings; null where nobody has looked.</summary>
internal static class CheckText
{
    public static string? Of(Teeth teeth) => teeth switch
    {
        Teeth.Sound => "sound",
        Teeth.Worn => "worn",
        Teeth.Broken => "broken",
        _ => null,
    };

    public static string? Of(Toes toes) => toes switch
    {
        Toes.Sound => "sound",
        Toes.Treated => "treated",
        Toes.Lame => "lame",
        _ => null,
    };

    public static string? Of(Teats teats) => teats switch
    {
        Teats.Sound => "sound",
        Teats.Lumpy => "lumpy",
        Teats.LostHalf => "lost half",
        _ => null,
    };
}
