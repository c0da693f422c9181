using NodaTime;
using NodaTime.Text;
using PaperFlock.Cli.Begin;

namespace PaperFlock.Cli;

/// <summary>What <c>begin</c> asks and says. As <see cref="Messages"/>: plain English for somebody who keeps sheep and seldom types.</summary>
internal static class BeginMessages
{
    public const string About = "write a first flock file: asks a few questions, each with a usual answer";
    public const string FileArgument = "FILE.yaml";
    public const string AboutFile = "where to write it; a name made from the holding's if you do not say";
    public const string AboutName = "the name of the holding";
    public const string AboutKeeper = "your name, for the sitter's sheet";
    public const string AboutPlace = "where it is: a grid reference such as \"NY 480 046\", or latitude and longitude such as \"54.46, -2.74\"";
    public const string AboutTimeZone = "such as Europe/London; worked out from the place if you do not say";
    public const string AboutTupIn = "the day the tup goes in, such as 2026-11-05";
    public const string AboutLambingFrom = "or the day the first lambs are wanted, such as 2027-04-01";
    public const string AboutEwes = "how many ewes, or a list of them (CSV, as a spreadsheet saves it)";
    public const string AboutGoodRows = "with a list: take the good rows even if others are refused";
    public const string AboutPaper = "the paper in the printer; what is usual in your country if you do not say";
    public const string AboutYes = "ask nothing: take the usual answer to whatever the options leave open";
    public const string AboutOverwrite = "write over a file that is there already";
    public const string TextValue = "TEXT";
    public const string PlaceValue = "PLACE";
    public const string ZoneValue = "ZONE";
    public const string EwesValue = "N|LIST.csv";

    public const string Opening =
        """
        A few questions, and your flock file is written. Press Enter to take what stands in [brackets].
        Nothing is written before the last answer, and everything can be changed in the file afterwards.
        """;

    public const string AskName = "What is the holding called?";
    public const string UsualName = "My flock";
    public const string AskKeeper = "What is your name? It goes on the sheet for whoever looks after the ewes when you are away.";
    public const string LeaveOut = "leave it out";
    public const string AskPlace =
        """
        Where are the sheep? The place gives sunrise and sunset, and is printed for the emergency services.
        Type a grid reference from an Ordnance Survey map (NY 480 046), or latitude and longitude (54.46, -2.74; south and west are negative).
        """;

    public const string AskZone = "Which time zone is that? Type its name, its chief town or the country.";
    public const string AskSeason =
        """
        On which day does the tup go in? Type a date, such as 2026-11-05 or 5 Nov 2026.
        Or type `lambs` and the day you want the first lambs: lambs 1 April 2027.
        """;

    public const string AskEwes = "How many ewes go to him? Or type the name of a list of them, saved from a spreadsheet as CSV.";
    public const string AskPaper = "Which paper does the printer hold, A4 or Letter?";
    public const string Lambs = "lambs";

    public const string IrishGrid =
        "one letter is a reference of the Irish grid, which this program does not convert: give latitude and longitude, such as 53.35, -7.26";

    public const string NotOnEarth = "latitude, which comes first, lies between -90 and 90, and longitude between -180 and 180";

    public const string TwoStarts = "--tup-in and --lambing-from are two ways of stating the same date: keep one of them";

    public const string StandInPlace = "the place is not yours yet, and it is printed for the emergency services: write your own under `location`";
    public const string UnknownTags = "each tag is a line to write on: type what is on the ears in their place, or write it on the cards";
    public const string UsualDate = "the tup goes in on the usual day: put your own under `season`";

    public static string GridFigures(string text) =>
        $"'{text}' has no place: after the two letters come as many figures for east as for north, two to five of each, such as NY 480 046";

    public static string NoSuchSquare(string letters) => $"there is no square {letters} in Great Britain: the letters stand on the map's edge or cover";

    public static string NotAPlace(string text) =>
        $"'{text}' is no place: write a grid reference such as NY 480 046, or latitude and longitude with a point for decimals, such as 54.46, -2.74";

    public static string NotAZone(string text) => $"'{text}' is no time zone: write a name such as Europe/London or Pacific/Auckland";

    public static string NotADay(string text) => $"'{text}' is no date: write it year first, such as 2026-11-05";

    public static string TwoDays(string text, LocalDate dayFirst, LocalDate monthFirst) =>
        $"'{text}' could be two days: write {Iso(dayFirst)} for {Messages.Day(dayFirst)}, or {Iso(monthFirst)} for {Messages.Day(monthFirst)}";

    public static string NotACount(string text, int most) => $"'{text}' is neither a number of ewes from 1 to {most} nor a file that is there";

    public static string NotAPaper(string text) => $"there is no paper '{text}' here: A4 or Letter";

    public static string NotYesOrNo(string text) => $"'{text}' is neither yes nor no";

    /// <param name="option">The option that answers it.</param>
    public static string AnswersEnd(string option) =>
        $"the answers end before the question of {option}: nothing was written; --yes takes the usual answers";

    public static string AskOverwrite(string file) => $"There is a {file} already. Write over it? What is in it now is lost.";

    public static string IsThere(string file) => $"{file} is there already, and nothing was written: give another name, or --overwrite to write over it";

    public static string IsAList(string file) => $"{file} is the name of a list, not of a flock file: {Messages.Program} begin --ewes {file}";

    public static string Shown(SeasonStart start) => $"{Iso(start.TupIn)}, for lambs from {Messages.Day(start.FirstLambs)}";

    public static string Wrote(string file, FlockDraft draft) =>
        $"wrote {file}: {Messages.Count(draft.Ewes.Length, "ewe")}, tup in {Messages.Day(draft.Start.TupIn)}, first lambs {Messages.Day(draft.Start.FirstLambs)}";

    public static string ZoneFromPlace(string zone) => $"the time zone is {zone}, by the place";

    public static string ZoneNearBorder(string zone, IEnumerable<string> others) =>
        $"the time zone is taken to be {zone}, by the nearest town: if they go by {string.Join(" or ", others)} there, change it under `holding`";

    public static string Next(string file) =>
        $"""
         Next:
           {Messages.Program} check {Quoted(file)}
           {Messages.Program} pack {Quoted(file)}
         """;

    /// <summary>As a shell wants it.</summary>
    private static string Quoted(string file) => file.Contains(' ', StringComparison.Ordinal) ? $"\"{file}\"" : file;

    private static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);
}
