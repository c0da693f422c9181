using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace PaperFlock.Cli.Entering;

/// <summary>What <c>enter</c> says.</summary>
internal static class EnterMessages
{
    public const string About = "take in what was written on a printed sheet: scan, marks, teeth-toes-teats or lambed";
    public const string AboutFrom = "the results as a spreadsheet saves them (CSV), instead of typing them";
    public const string AboutGoodRows = "with --from: enter the good rows even if others are refused";
    public const string ResultsValue = "RESULTS.csv";
    public const string Nothing = "nothing written down";
    public const string Refused = "  not taken:";
    public const string First = "  she is the first on the sheet";
    public const string AtTheEnd = "That was the last on the sheet.";
    public const string AllAnswered = "Every ewe has an answer already; Enter leaves it as it is.";
    public const string FileHasErrors = "the flock file has been changed meanwhile, and has errors now; put them right and start again. What you entered before is in it";
    public const string Interrupted = "Stopped. What was read back to you is in the file.";
    public const string NothingEntered = "Nothing was entered; the file is as it was.";

    public static readonly string[] KeyHeads = ["key", "what it does"];

    /// <summary>Keys that mean the same on every sheet. None of them begins an answer.</summary>
    public static readonly (string Keys, string Meaning)[] CommonKeys =
    [
        ("Enter", "leave her as she is"),
        ("-", "take away what is written down"),
        ("<", "step back to the ewe before"),
        ("/bra", "go to the ewe whose name or tag has these letters"),
        ("?", "show these keys"),
        ("q", "leave; begin again at any time and it goes on from here"),
    ];

    public static string Opening(IPencilSheet sheet, string path, int ewes) =>
        $"{sheet.Title}: {Messages.Count(ewes, "ewe")} in the order of the sheet. Each answer goes into {path} at once. ? shows the keys, q leaves.";

    public static string GoesOn(int at, int of) => Invariant($"Going on at ewe {at} of {of}, the first without an answer.");

    public static string Ewe(int at, int of, string name, string tag, string known) =>
        Invariant($"{at}/{of}  {name}  {tag}  {(known.Length == 0 ? Nothing : known)}");

    public static string ReadBack(string who, string words) => $"  = {who}: {words}";

    public static string SameAgain(string who, string words) => $"  = {who}: {words}, as it was";

    public static string NobodyFound(string letters) => $"  nobody on this sheet has `{letters}` in her name or tag";

    public static string Gone(string tag) => $"the ewe {tag} is no longer in the flock file; start again to go on with the others";

    public static string PipeRefused(int line, string who, string why) => Invariant(
        $"line {line} of what was typed, about {who}: {why}. Nothing after it was taken, since it may be about another ewe; what came before is in the file");

    public static string Summary(int entered, int changed, int left) =>
        $"{Count(entered)} entered, {Count(changed)} changed, {Count(left)} left as they were.";

    public static string Next(string path) => $"Next: {Messages.Program} check {path}, and then {Messages.Program} pack {path}";

    // Days.

    public static string NoDay(string text, LocalDate example) =>
        Invariant($"`{text}` is no day of the calendar; type it as `{example.Day}`, `{DayMonth(example)}` or `{LocalDatePattern.Iso.Format(example)}`");

    public static string TwoDays(string text, IReadOnlyList<LocalDate> days) =>
        $"`{text}` may be {string.Join(" or ", days.Select(Messages.Day))}; type {string.Join(" or ", days.Select(d => $"`{DayMonth(d)}`"))}";

    public static string NotYet(string text, LocalDate today) =>
        $"`{text}` is yet to come: today is {Messages.Day(today)}; type a day that is past, or today";

    public static string NotThen(string text, string happening, IReadOnlyList<DateInterval> within, LocalDate example) =>
        $"`{text}` cannot be: {happening} {string.Join(" and ", within.Select(w => Messages.Day(w.Start) == Messages.Day(w.End) ? $"on {Messages.Day(w.Start)}" : $"from {Messages.Day(w.Start)} to {Messages.Day(w.End)}"))}; type a day such as `{DayMonth(example)}`";

    public static string DayMonth(LocalDate day) => LocalDatePattern.CreateWithInvariantCulture("d MMM").Format(day).ToLowerInvariant();

    // Results from a spreadsheet.

    public const string GoodRowsAlone = "--good-rows goes with --from RESULTS.csv";

    public static string NothingTaken(string path) => $"{path} is as it was: put the rows right, or enter only the good ones with --good-rows";

    public static string RowRefused(string who) => $"what is said of {who} does not agree with the rest of the flock file";

    private static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
