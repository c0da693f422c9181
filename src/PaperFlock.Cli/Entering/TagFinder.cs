namespace PaperFlock.Cli.Entering;

/// <summary>Finds the tag a spreadsheet has spoilt. It takes zeros off the front, blanks and letters' case as they please it, and turns long numbers into powers of ten.</summary>
internal sealed class TagFinder(IEnumerable<string> tags)
{
    private readonly ImmutableHashSet<string> _tags = [.. tags];

    public bool Has(string tag) => _tags.Contains(tag);

    /// <returns>The one tag that was meant, and what happened to it; null when there is none, or more than one.</returns>
    public (string Tag, TagDamage Damage)? Meant(string text)
    {
        foreach (var (damage, plain) in Ways)
        {
            var meant = _tags.Where(t => plain(t).Length > 0 && plain(t) == plain(text)).Take(2).ToList();
            if (meant.Count == 1)
            {
                return (meant[0], damage);
            }
        }

        return Rounded(text) is { } start && _tags.Where(t => IsRounded(t, start, text)).Take(2).ToList() is [var only] ? (only, TagDamage.PowerOfTen) : null;
    }

    private static readonly (TagDamage Damage, Func<string, string> Plain)[] Ways =
    [
        (TagDamage.Blanks, t => string.Concat(t.Where(c => !char.IsWhiteSpace(c))).ToUpperInvariant()),
        (TagDamage.Zeros, t => string.Concat(t.Where(c => !char.IsWhiteSpace(c))).TrimStart('0').ToUpperInvariant()),
    ];

    /// <summary>The figures a number such as <c>1.23457E+11</c> still has.</summary>
    private static string? Rounded(string text)
    {
        var e = text.IndexOf('E', StringComparison.OrdinalIgnoreCase);
        return e > 0 && double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && number > 1e5
            ? string.Concat(text[..e].Where(char.IsAsciiDigit))
            : null;
    }

    private static bool IsRounded(string tag, string start, string text)
    {
        var figures = string.Concat(tag.Where(c => !char.IsWhiteSpace(c))).TrimStart('0');
        return figures.Length > 0 && figures.All(char.IsAsciiDigit)
            && double.TryParse(figures, NumberStyles.None, CultureInfo.InvariantCulture, out var whole)
            && double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var rounded)
            && Math.Abs(whole - rounded) <= Math.Pow(10, Math.Floor(Math.Log10(rounded)) - start.Length + 1);
    }
}

internal enum TagDamage
{
    Blanks,
    Zeros,
    PowerOfTen,
}
