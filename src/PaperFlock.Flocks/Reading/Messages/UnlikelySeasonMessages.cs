namespace PaperFlock.Flocks.Reading;

// Warnings of what is unlikely of days, rounds, people and the place.

internal static partial class FlockMessages
{
    /// <param name="first">Days after the tup went in.</param>
    /// <param name="feeding">The day on which twins are first fed, counted so too.</param>
    public static Diagnostic ScanAfterFeeding(SourceSpan at, int first, int feeding, (int First, int Last) usual) => Warning("FLK181", at,
        $"day {Number(first)} is after feeding begins, on day {Number(feeding)}, and till they are scanned ewes are fed as the average of the flock",
        $"write `[{Number(usual.First)}, {Number(usual.Last)}]`, or days before feeding");

    public static Diagnostic RoundsTooClose(SourceSpan at, LocalTime first, LocalTime last, LocalTime better) => Warning("FLK184", at,
        $"with a first round at {DateValues.Clock.Format(first)} or later and the last at {DateValues.Clock.Format(last)} nobody looks at the ewes for most of the day and night",
        $"write `{DateValues.Clock.Format(better)}`");

    public static Diagnostic KeeperOfTwoNames(SourceSpan at, string keeper, string name) => Warning("FLK185", at,
        $"`{Shown(name)}` is called the keeper, and so is `{Shown(keeper)}`: the number of one would be printed beside the name of the other",
        "write the same name in both places, or another `role` here");

    public static Diagnostic SitterIsKeeper(SourceSpan at, string sitter) => Warning("FLK186", at,
        $"`{Shown(sitter)}` is the keeper, who is away then",
        "write who is in charge meanwhile, or take `sitter` out: a line is printed for the name");

    public static Diagnostic TwoNumbers(SourceSpan at, string sitter, string known, string phone) => Warning("FLK187", at,
        $"`{Shown(sitter)}` has another number under `contacts`, `{known}`, and both would be printed",
        $"check `{phone}`, and write the right one in both places");

    public static Diagnostic TwoNumbersOfOne(SourceSpan at, string name, string known) => Warning("FLK187", at,
        $"`{Shown(name)}` has another number above, `{known}`, and nothing says which to ring",
        "take the wrong one out, or add a `note` that says when to ring each");

    /// <param name="meant">With figures for the letters that look like them; null where there are others.</param>
    public static Diagnostic PhoneWithLetters(SourceSpan at, string phone, string whose, string? meant) => Warning("FLK202", at,
        $"`{Shown(phone)}` of `{Shown(whose)}` has letters among its figures, and is printed to be rung",
        meant is null ? "write figures alone; what else is to be said can go into a `note`" : $"write `{meant}`, if figures were meant");

    public static Diagnostic PhoneCutShort(SourceSpan at, string phone, string whose, int figures) => Warning("FLK202", at,
        $"`{Shown(phone)}` of `{Shown(whose)}` is no whole number: it has {Number(figures)} figures",
        "write all of it, with the code of the district, as one would ring it from anywhere");

    public static Diagnostic OneNumberForTwo(SourceSpan at, string phone, string whose, string other) => Warning("FLK203", at,
        $"`{Shown(phone)}` is the number of `{Shown(whose)}` and of `{Shown(other)}`: who rings one gets the other",
        "check both, and write for each a number of their own");

    public static Diagnostic NoVet(SourceSpan at) => Warning("FLK204", at,
        "there is no vet among the contacts: where the paper says \"the vet, now\" there is a blank to write on",
        "add a line such as `- {role: Vet, name: Your vets, phone: 01632 960 202}`, with the number of yours");

    /// <param name="meant">The same day of another year, where that lies in the season.</param>
    public static Diagnostic OutOfSeason(SourceSpan at, string name, LocalDate date, DateInterval season, LocalDate? meant) => Warning("FLK188", at,
        $"`{name}` is {Day(date)}, and this season is from {Day(season.Start)} to {Day(season.End)}",
        meant is { } day ? $"write `{NodaTime.Text.LocalDatePattern.Iso.Format(day)}`, if that is the year" : "check the year, or keep it for the file of that season");

    public static Diagnostic SameColour(SourceSpan at, string colour) => Warning("FLK194", at,
        $"`{Shown(colour)}` is in the list already, and a ewe marked in it twice would not show that she did not hold",
        "give each change a colour of its own, from light to dark");
}
