namespace PaperFlock.Flocks.Reading;

// Single values: 030 to 049.

internal static partial class FlockMessages
{
    public static Diagnostic UnknownWord(SourceSpan at, string name, string found, IEnumerable<string> words)
    {
        var all = words.ToArray();
        return Error("FLK030", at,
            $"`{name}` cannot be `{Shown(found)}`",
            NearestWord.Find(found, all) is { } nearest ? $"did you mean `{nearest}`?" : $"use {List(all, "or")}");
    }

    /// <param name="meant">The number it was probably meant for, if any.</param>
    public static Diagnostic NotANumber(SourceSpan at, string name, string found, string? meant, string example) => Error("FLK031", at,
        $"`{name}` needs a number, not `{Shown(found)}`",
        meant is not null
            ? $"write `{meant}`, if that is what you mean"
            : found.Contains(',', StringComparison.Ordinal)
                ? $"write decimals after a point, `{Shown(found.Replace(',', '.'))}`, and nothing between thousands"
                : $"write it in figures, such as `{example}`");

    public static Diagnostic NotAWholeNumber(SourceSpan at, string name, string found) => Error("FLK032", at, $"`{name}` is a whole number, not `{Shown(found)}`", "write it without decimals");

    public static Diagnostic MissingUnit(SourceSpan at, string name, string found, IEnumerable<string> units)
    {
        var all = units.Select(unit => $"`{Shown(found)} {unit}`").ToArray();
        return Error("FLK033", at, $"`{name}` needs a unit after `{Shown(found)}`", $"write {List(all, "or", quote: false)}{(all.Length > 1 ? ", whichever it is" : "")}");
    }

    public static Diagnostic BareFraction(SourceSpan at, string name, string found, decimal percent) => Error("FLK033", at,
        $"`{name}` needs a unit after `{Shown(found)}`",
        $"write `{Number(percent)} %`");

    public static Diagnostic UnknownUnit(SourceSpan at, string name, string found, IEnumerable<string> units)
    {
        var all = units.ToArray();
        return Error("FLK034", at,
            $"`{Shown(found)}` is not a unit for `{name}`",
            NearestWord.Find(found, all) is { } nearest ? $"did you mean `{nearest}`?" : $"use {List(all, "or")}");
    }

    /// <param name="check">What may be wrong with it: <c>figure and its unit</c>.</param>
    public static Diagnostic OutOfRange(SourceSpan at, string name, string found, string least, string most, string check) => Error("FLK035", at,
        $"`{Shown(found)}` cannot be right for `{name}`",
        $"it must lie between {least} and {most}; check the {check}");

    /// <param name="longitude">What stands as the longitude, and may be the latitude.</param>
    public static Diagnostic LatitudeTooLarge(SourceSpan at, decimal latitude, decimal longitude) => Error("FLK035", at,
        $"`{Number(latitude)}` cannot be right for `latitude`: latitude and longitude look swapped",
        $"write {Location(longitude, latitude)}, if that is the place");

    public static Diagnostic NotADate(SourceSpan at, string name, string found, string? advice) => Error("FLK036", at,
        $"`{name}` needs a date written year first, not `{Shown(found)}`",
        advice ?? "write year, month and day in figures, such as `2026-08-10`");

    public static Diagnostic NoSuchDate(SourceSpan at, string found, string why) => Error("FLK037", at, $"there is no day `{found}`", $"{why}; check the day against a calendar");

    public static Diagnostic NotATime(SourceSpan at, string name, string found, string? meant) => Error("FLK038", at,
        $"`{name}` needs a time of day, not `{Shown(found)}`",
        meant is null ? "write hours and minutes on the 24-hour clock, such as `06:00` or `21:30`" : $"write `{meant}`");

    public static Diagnostic TextTooLong(SourceSpan at, string name, int length, int longest) => Error("FLK039", at,
        $"`{name}` has {Number(length)} characters, and its place on the paper holds {Number(longest)}",
        "keep what tells it from the others; the rest can go into a note");

    public static Diagnostic UnprintableText(SourceSpan at, string name, int? value) => Error("FLK040", at,
        value is { } code ? $"`{name}` holds {Code(code)}, which cannot be printed" : $"`{name}` is empty",
        value is null ? "write the text, or take the line out" : "write the text on one line, in letters, figures and ordinary marks");

    /// <param name="written">A word that stands for nothing.</param>
    public static Diagnostic NothingWritten(SourceSpan at, string name, string written) => Error("FLK040", at,
        $"`{name}` is `{written}`, which stands for nothing",
        "write the text, or take the line out; if it is a name, put quotes round it");

    public static Diagnostic UnseenCharacter(SourceSpan at, string name, int value) => Error("FLK045", at,
        $"`{name}` holds {Code(value)}, a character that prints nothing, as text pasted from elsewhere may have",
        "type the text again by hand");

    public static Diagnostic MissingCharacter(SourceSpan at, string character) => Error("FLK120", at,
        $"`{character}` ({Code(character.Length == 2 ? char.ConvertToUtf32(character[0], character[1]) : character[0])}) is in none of the typefaces, and cannot be printed",
        character switch
        {
            "→" or "⇒" or "➜" => "write `to`, or `->`",
            "←" or "⇐" => "write `from`, or `<-`",
            "✓" or "✔" or "☑" or "✅" => "write `yes`, or `done`",
            "✗" or "✘" or "☒" or "❌" => "write `no`",
            "♀" => "write `ewe`",
            "♂" => "write `tup`",
            "≤" => "write `at most`",
            "≥" => "write `at least`",
            "≈" or "≃" => "write `about`",
            "\u2032" or "\u2033" => "write `'` for feet, `\"` for inches",
            _ => "write it another way, in letters, figures and ordinary marks",
        });

    public static Diagnostic NotACode(SourceSpan at, string found) => Error("FLK046", at,
        $"`code` is letters and figures without spaces, not `{Shown(found)}`",
        found.Where(char.IsAsciiLetterOrDigit).ToArray() is { Length: > 0 } plain ? $"write `code: {new string(plain).ToUpperInvariant()}`" : "write such as `code: HB2`");

    public static Diagnostic CurlyQuotes(SourceSpan at, string name, string bare) => Error("FLK044", at,
        $"`{name}` stands in curly quotes, as text pasted from a document does, and they would be printed",
        $"write it without quotes, or in straight ones: `\"{Shown(bare)}\"`");

    public static Diagnostic UnknownTimeZone(SourceSpan at, string found, string? nearest) => Error("FLK041", at,
        $"`{Shown(found)}` is not a time zone",
        found.StartsWith("UTC", StringComparison.OrdinalIgnoreCase) || found.StartsWith("GMT", StringComparison.OrdinalIgnoreCase)
            ? "name a place that keeps the same time, such as `Europe/London`, so that the clocks change when they should"
            : nearest is null ? "use an IANA name, such as `Europe/London` or `Pacific/Auckland`" : $"did you mean `{nearest}`?");

    public static Diagnostic WrongOrder(SourceSpan at, string name, string order, string swapped) => Error("FLK042", at, $"`{name}` needs {order}", $"write `{swapped}`, if that is what you mean");

    public static Diagnostic NotTrueOrFalse(SourceSpan at, string name, string found) => Error("FLK043", at, $"`{name}` is true or false, not `{Shown(found)}`", "write `true` or `false`");
}
