using NodaTime.Text;

namespace PaperFlock.Packs;

/// <summary>Days, numbers and jobs in the words of a screen: with plain spaces, so that they can be searched for, and days with their year.</summary>
public static class ScreenText
{
    /// <summary>Years for which lambing can be worked out either side without leaving the calendar.</summary>
    public const int FirstYear = 1900;
    public const int LastYear = 2200;

    /// <summary>"Mon 4 Jan 2027".</summary>
    public static string Day(LocalDate day) => DateText.Long(day).Replace('\u00a0', ' ');

    /// <summary>"Thu 24 Dec 2026 to Sat 2 Jan 2027"; one day alone where both are the same.</summary>
    public static string Span(LocalDate first, LocalDate last) => first == last ? Day(first) : $"{Day(first)} to {Day(last)}";

    /// <summary>What is said of a date that can be read two ways: "`5/11/2026` may be Thu 5 Nov 2026 or Mon 11 May 2026; write `2026-11-05` or `2026-05-11`".</summary>
    public static string TwoDays(string text, IReadOnlyCollection<LocalDate> days) =>
        $"`{text}` may be {string.Join(" or ", days.Select(Day))}; write {string.Join(" or ", days.Select(d => $"`{LocalDatePattern.Iso.Format(d)}`"))}";

    /// <summary>"1 ewe", "24 ewes".</summary>
    public static string Count(int number, string noun) => $"{number.ToString(CultureInfo.InvariantCulture)} {noun}{(number == 1 ? "" : "s")}";

    /// <summary>"a, b and c".</summary>
    public static string List(IEnumerable<string> things, string and = "and") => English.List([.. things], and);

    /// <summary>"24 ewes, 1 group, first lambs due Mon 4 Jan 2027".</summary>
    public static string Summary(SeasonPlan plan)
    {
        var (ewes, groups) = (Count(plan.Flock.Ewes.Length, "ewe"), Count(plan.Flock.Groups.Length, "group"));
        return plan.Ewes.All(e => e.Standing == Standing.Gone) ? $"{ewes}, {(plan.Ewes.Length == 1 ? "gone" : "all gone")}, {groups}"
            : plan.Dates.FirstDue is { } first ? $"{ewes}, {groups}, first lambs due {Day(first)}"
            : $"{ewes}, {groups}, no lambs due";
    }

    internal static string JobDay(Job job) => job.Date is { } day ? Day(day) : "NO DAY";
}
