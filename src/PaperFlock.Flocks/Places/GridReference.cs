using System.Text.RegularExpressions;

namespace PaperFlock.Flocks.Places;

/// <summary>A British National Grid reference: two letters and an even number of figures, <c>NY 480 046</c>.</summary>
internal static partial class GridReference
{
    /// <summary>Whether it is meant as one, right or not.</summary>
    public static bool IsMeant(string text) => Shape().IsMatch(text);

    /// <summary>The middle of the square it names.</summary>
    /// <returns>A place, or else why there is none.</returns>
    public static (Place? Place, string? WhyNot) Read(string text)
    {
        var match = Shape().Match(text);
        var letters = match.Groups["letters"].Value.ToUpperInvariant();
        var groups = match.Groups["figures"].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var figures = string.Concat(groups);
        var isShort = figures.Length is < 4 or > 10 || figures.Length % 2 != 0 || (groups.Length == 2 && groups[0].Length != groups[1].Length);
        return letters.Length == 1 ? (null, "one letter is a reference of the Irish grid, which this program does not convert: give latitude and longitude, such as 53.35, -7.26")
            : isShort ? (null, $"'{text.Trim()}' has no place: after the two letters come as many figures for east as for north, two to five of each, such as NY 480 046")
            : Square(letters) is { } square ? (Middle(letters, square, figures), null)
            : (null, $"there is no square {letters} in Great Britain: the letters stand on the map's edge or cover");
    }

    /// <param name="figures">East, and as many north.</param>
    private static Place Middle(string letters, (int East, int North) square, string figures)
    {
        var half = figures.Length / 2;
        var side = Math.Pow(10, 5 - half);
        var (east, north) = (figures[..half], figures[half..]);
        var (latitude, longitude) = NationalGrid.ToWgs84(
            square.East + Number(east) * side + side / 2,
            square.North + Number(north) * side + side / 2);
        // A thousandth of a degree is 111 m of latitude; no more decimals than the square is good for, and none beyond the metres of the shift.
        var decimals = Math.Min(half + 1, 5);
        return new Place(Math.Round((decimal)latitude, decimals), Math.Round((decimal)longitude, decimals), $"{letters} {east} {north}");
    }

    /// <summary>Metres of the south-west corner. Letters run A to Z without I, five in a row from the north-west, in squares of 500 km and then of 100 km.</summary>
    private static (int East, int North)? Square(string letters)
    {
        var (large, small) = (Index(letters[0]), Index(letters[1]));
        var east = (large - 2) % 5 * 5 + small % 5;
        var north = 19 - large / 5 * 5 - small / 5;
        // Great Britain lies within seven squares by thirteen.
        return large >= 2 && small >= 0 && east is >= 0 and <= 6 && north is >= 0 and <= 12 ? (east * 100_000, north * 100_000) : null;

        static int Index(char letter) => "ABCDEFGHJKLMNOPQRSTUVWXYZ".IndexOf(letter, StringComparison.Ordinal);
    }

    private static int Number(string figures) => int.Parse(figures, NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^\s*(?<letters>[A-Za-z]{1,2})\s*(?<figures>[0-9]+( +[0-9]+)*)\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex Shape();
}
