using System.Text;
using PaperFlock.Languages;

namespace PaperFlock.Sheets.CallSheet;

/// <summary>Letters and figures as they are said on a bad line: the ICAO spelling alphabet, figures one by one.</summary>
internal static class Spoken
{
    private static string[] Letters(Language language) =>
    [
        language.Say("Alfa"), language.Say("Bravo"), language.Say("Charlie"), language.Say("Delta"), language.Say("Echo"), language.Say("Foxtrot"), language.Say("Golf"), language.Say("Hotel"), language.Say("India"), language.Say("Juliett"), language.Say("Kilo"), language.Say("Lima"), language.Say("Mike"),
        language.Say("November"), language.Say("Oscar"), language.Say("Papa"), language.Say("Quebec"), language.Say("Romeo"), language.Say("Sierra"), language.Say("Tango"), language.Say("Uniform"), language.Say("Victor"), language.Say("Whiskey"), language.Say("X-ray"), language.Say("Yankee"), language.Say("Zulu"),
    ];

    private static string[] Figures(Language language) =>
        [language.Say("zero"), language.Say("one"), language.Say("two"), language.Say("three"), language.Say("four"), language.Say("five"), language.Say("six"), language.Say("seven"), language.Say("eight"), language.Say("nine")];

    /// <summary>"NY 48" is "November Yankee, four eight". Other characters are left out; a space becomes a comma.</summary>
    public static string Of(string words, Language language)
    {
        var (letters, figures) = (Letters(language), Figures(language));
        var spoken = new StringBuilder();
        foreach (var c in words.ToUpperInvariant())
        {
            if (char.IsWhiteSpace(c))
            {
                spoken.Append(spoken.Length > 0 ? "," : "");
                continue;
            }

            var word = c is >= 'A' and <= 'Z' ? letters[c - 'A'] : c is >= '0' and <= '9' ? figures[c - '0'] : null;
            if (word is not null)
            {
                spoken.Append(spoken.Length > 0 ? " " : "").Append(word);
            }
        }

        return spoken.ToString();
    }
}
