using PaperFlock.Flocks;
using PaperFlock.Languages;

namespace PaperFlock.Sheets.House;

/// <summary>What was found at the check of teeth, toes and teats, in the words a keeper rings; null where nobody has looked.</summary>
internal static class CheckWords
{
    public static string? Of(Teeth teeth, Language language) => teeth switch
    {
        Teeth.Sound => language.Say("sound"),
        Teeth.Worn => language.Say("worn"),
        Teeth.Broken => language.Say("broken"),
        _ => null,
    };

    public static string? Of(Toes toes, Language language) => toes switch
    {
        Toes.Sound => language.Say("sound"),
        Toes.Treated => language.Say("treated"),
        Toes.Lame => language.Say("lame"),
        _ => null,
    };

    public static string? Of(Teats teats, Language language) => teats switch
    {
        Teats.Sound => language.Say("sound"),
        Teats.Lumpy => language.Say("lumpy"),
        Teats.LostHalf => language.Say("lost half"),
        _ => null,
    };
}
