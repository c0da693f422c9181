namespace PaperFlock.Cli.Entering;

/// <summary>What <c>enter</c> says in more than one place, and of days.</summary>
internal static class EnterMessages
{
    public const string Nothing = "nothing written down";

    public static string ReadBack(string who, string words) => $"  = {who}: {words}";

    /// <summary>Why the flock file would not be right with an answer, in the words of its reader.</summary>
    public static string Refused(FlockEdit edit) =>
        edit.Diagnostics.Where(d => d.Severity == Severity.Error).Select(d => $"{d.Message}; {d.Advice}").First();

    public static string NoDay(string text, LocalDate example) =>
        FormattableString.Invariant($"`{text}` {(text.Any(char.IsAsciiLetter) || LocalDatePattern.Iso.Parse(text).Success || text.Length > 5 ? "is no day of the calendar" : "cannot be read as a day")}; type it as `{example.Day}`, `{DayMonth(example)}` or `{LocalDatePattern.Iso.Format(example)}`");

    public static string TwoDays(string text, IReadOnlyList<LocalDate> days) =>
        $"`{text}` may be {string.Join(" or ", days.Select(ScreenText.Day))}; type {string.Join(" or ", days.Select(d => $"`{DayMonth(d)}`"))}";

    public static string NotYet(string text, LocalDate today) =>
        $"`{text}` is yet to come: today is {ScreenText.Day(today)}; type a day that is past, or today";

    public static string NotThen(string text, string happening, IReadOnlyList<DateInterval> within, LocalDate example) =>
        $"`{text}` cannot be: {happening} {string.Join(" and ", within.Select(w => w.Start == w.End ? $"on {ScreenText.Day(w.Start)}" : $"from {ScreenText.Span(w.Start, w.End)}"))}; type a day such as `{DayMonth(example)}`";

    private static string DayMonth(LocalDate day) => LocalDatePattern.CreateWithInvariantCulture("d MMM").Format(day).ToLowerInvariant();
}
