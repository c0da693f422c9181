using System.Text;

namespace PaperFlock.Sheets.CallSheet;

/// <summary>Letters and figures as they are said on a bad line: the ICAO spelling alphabet, figures one by one.</summary>
internal static class Spoken
{
    private static string[] Letters() =>
    [
        "Alfa", "Bravo", "Charlie", "Delta", "Echo", "Foxtrot", "Golf", "Hotel", "India", "Juliett", "Kilo", "Lima", "Mike",
        "November", "Oscar", "Papa", "Quebec", "Romeo", "Sierra", "Tango", "Uniform", "Victor", "Whiskey", "X-ray", "Yankee", "Zulu",
    ];

    private static string[] Figures() =>
        ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

    /// <summary>"NY 48" is "November Yankee, four eight". Other characters are left out; a space becomes a comma.</summary>
    public static string Of(string words)
    {
        var (letters, figures) = (Letters(), Figures());
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
