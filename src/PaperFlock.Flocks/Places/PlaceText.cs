using System.Text.RegularExpressions;

namespace PaperFlock.Flocks.Places;

/// <summary>A place as a person writes it: a grid reference, or latitude and longitude as a map or a phone shows them.</summary>
public static partial class PlaceText
{
    /// <returns>A place, or else why there is none.</returns>
    public static (Place? Place, string? WhyNot) Read(string text)
    {
        if (GridReference.IsMeant(text))
        {
            return GridReference.Read(text);
        }

        // A map may print a true minus, and a phone curly quotes for minutes and seconds.
        var match = Degrees().Match(text.Replace('\u2212', '-'));
        return !match.Success || Angle(match, "1", southOrWest: 'S') is not { } latitude || Angle(match, "2", southOrWest: 'W') is not { } longitude
            ? (null, $"'{text}' is no place: write a grid reference such as NY 480 046, or latitude and longitude with a point for decimals, such as 54.46, -2.74")
            : Math.Abs(latitude) > 90 || Math.Abs(longitude) > 180
                ? (null, "latitude, which comes first, lies between -90 and 90, and longitude between -180 and 180")
                : (new Place(latitude, longitude, null), null);
    }

    /// <returns>Null for a minus and a letter together, or minutes past sixty: nobody can say what was meant.</returns>
    private static decimal? Angle(Match match, string which, char southOrWest)
    {
        var degrees = Number(match.Groups["d" + which]);
        var (minutes, seconds) = (Number(match.Groups["m" + which]), Number(match.Groups["s" + which]));
        var letter = (match.Groups["before" + which].Value + match.Groups["after" + which].Value).ToUpperInvariant();
        var negative = match.Groups["d" + which].Value.StartsWith('-');
        if (letter.Length > 1 || (negative && letter.Length > 0) || minutes >= 60 || seconds >= 60)
        {
            return null;
        }

        // Five decimals are a metre; more is a calculator's precision, not a map's.
        var size = Math.Round(Math.Abs(degrees) + minutes / 60 + seconds / 3600, 5);
        return negative || (letter.Length == 1 && letter[0] == southOrWest) ? -size : size;
    }

    private static decimal Number(Group group) =>
        group.Success ? decimal.Parse(group.ValueSpan, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(
        """
        ^\s*
        (?<before1>[NSns])?\s*(?<d1>-?[0-9]{1,3}(\.[0-9]{1,12})?)\s*°?\s*((?<m1>[0-9]{1,2}(\.[0-9]{1,12})?)\s*['′’]\s*((?<s1>[0-9]{1,2}(\.[0-9]{1,12})?)\s*(["″”]|''))?)?\s*(?<after1>[NSns])?
        (\s*[,;]\s*|\s+|(?<=[NSns]))
        (?<before2>[EWew])?\s*(?<d2>-?[0-9]{1,3}(\.[0-9]{1,12})?)\s*°?\s*((?<m2>[0-9]{1,2}(\.[0-9]{1,12})?)\s*['′’]\s*((?<s2>[0-9]{1,2}(\.[0-9]{1,12})?)\s*(["″”]|''))?)?\s*(?<after2>[EWew])?
        \s*$
        """,
        RegexOptions.CultureInvariant | RegexOptions.IgnorePatternWhitespace)]
    private static partial Regex Degrees();
}
