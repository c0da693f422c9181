using NodaTime;
using NodaTime.Text;

namespace PaperFlock.Sheets.Issues;

/// <summary>
/// Names of pieces of a page that have had their day at some point: a week of a chart, a job on a card. Once it is past, a change to it
/// is no reason to print the page again, and neither is its absence.
/// </summary>
internal static class Dated
{
    private const string Until = ", to ";

    /// <param name="last">The last day on which anyone acts on it.</param>
    public static string Name(string name, LocalDate last) => name + Until + LocalDatePattern.Iso.Format(last);

    /// <summary>Parts a name into what it says and its last day, which most have not.</summary>
    public static (string Name, LocalDate? Last) Parse(string name)
    {
        var at = name.LastIndexOf(Until, StringComparison.Ordinal);
        return at >= 0 && LocalDatePattern.Iso.Parse(name[(at + Until.Length)..]) is { Success: true } parsed
            ? (name[..at], parsed.Value)
            : (name, null);
    }
}
