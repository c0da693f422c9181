namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Guesses which number was meant by one written in words, in marks of a word processor, or with more round it than a flock file takes.</summary>
internal static class NumberSlip
{
    /// <summary>What people write for a number of lambs, or of anything there are few of.</summary>
    private static readonly (string Word, decimal Value)[] Words =
    [
        ("none", 0), ("nil", 0), ("empty", 0), ("barren", 0), ("zero", 0),
        ("one", 1), ("single", 1), ("two", 2), ("twin", 2), ("twins", 2), ("pair", 2), ("double", 2),
        ("three", 3), ("triplet", 3), ("triplets", 3), ("four", 4), ("quad", 4), ("quads", 4), ("quadruplets", 4), ("five", 5), ("six", 6),
    ];

    /// <returns>As a flock file writes it; null when none can be made out that lies between the limits, both allowed.</returns>
    public static string? Meant(string text, decimal least, decimal most)
    {
        var typed = AsTyped(text);
        return (InWords(typed) ?? Compass(typed) ?? Number(typed) ?? BeforeWords(typed)) is { } number && number >= least && number <= most
            ? number.ToString("0.####", CultureInfo.InvariantCulture)
            : null;
    }

    private static decimal? InWords(string typed) => Words.FirstOrDefault(w => w.Word == typed) is { Word: not null } found ? found.Value : null;

    /// <summary>Degrees, perhaps with minutes and seconds, and a letter of the compass: <c>2.74 W</c>, <c>54° 27' 36" N</c>.</summary>
    private static decimal? Compass(string typed)
    {
        var sign = typed.Length < 2 ? 0 : typed[^1] switch { 'n' or 'e' => 1, 's' or 'w' => -1, _ => 0 };
        var parts = sign == 0 ? [] : typed[..^1].Split([' ', '°', 'º', '\'', '"', '\u2032', '\u2033', '\u2019', '\u201d'], StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length is 0 or > 3)
        {
            return null;
        }

        var (degrees, of) = (0m, 1m);
        foreach (var part in parts)
        {
            if (Number(part) is not { } figure || figure < 0 || (of > 1 && figure >= 60))
            {
                return null;
            }

            (degrees, of) = (degrees + (figure / of), of * 60);
        }

        return sign * decimal.Round(degrees, 4);
    }

    private static decimal? Number(string typed) => NumberValues.TryParse(typed, out var number) ? number : null;

    /// <summary><c>2 lambs</c>: figures, a space and letters only, for what has no unit.</summary>
    private static decimal? BeforeWords(string typed)
    {
        var space = typed.IndexOf(' ', StringComparison.Ordinal);
        return space > 0 && typed[space..].All(c => c == ' ' || char.IsAsciiLetter(c)) ? Number(typed[..space]) : null;
    }

    /// <summary>In ordinary figures and marks: wide figures, the minus sign, dashes and vulgar fractions are what is pasted from elsewhere.</summary>
    private static string AsTyped(string text)
    {
        var typed = string.Concat(text.Take(40).Select(c => c switch
        {
            >= '\uFF10' and <= '\uFF19' => ((char)(c - '\uFF10' + '0')).ToString(),
            _ when PastedMarks.IsDash(c) => "-",
            '½' => ".5",
            '¼' => ".25",
            '¾' => ".75",
            _ when PastedMarks.IsSpace(c) => " ",
            _ when PastedMarks.IsUnseen(c) => "",
            _ => char.ToLowerInvariant(c).ToString(),
        }));
        var plain = typed.Trim(' ').Replace(" .", ".", StringComparison.Ordinal);
        return plain.StartsWith('.') ? $"0{plain}" : plain;
    }
}
