namespace PaperFlock.Flocks.Reading;

// Values that do not agree: 050 to 089.

internal static partial class FlockMessages
{
    public static Diagnostic StatedTwice(SourceSpan at, string key, string other) => Error("FLK050", at, $"`{key}` and `{other}` both say when the season begins", "keep one of them; the other is worked out");

    public static Diagnostic TupOutBeforeTupIn(SourceSpan at, LocalDate tupOut, LocalDate tupIn) => Error("FLK051", at,
        $"the tup goes out on {Day(tupOut)}, before he goes in on {Day(tupIn)}",
        "check both dates, and the year");

    public static Diagnostic DuplicateTag(SourceSpan at, string tag, int firstLine, bool isLamb) => Error("FLK052", at,
        $"the tag `{Shown(tag)}` is already on the {(isLamb ? "lamb" : "ewe")} on line {Number(firstLine)}",
        "check both ears; spaces, hyphens and capitals make no difference to a tag");

    public static Diagnostic DuplicateName(SourceSpan at, string what, string name, int firstLine) => Error("FLK053", at,
        $"there is already a {what} called `{name}`, on line {Number(firstLine)}",
        $"give each {what} a name of its own");

    public static Diagnostic UnknownGroup(SourceSpan at, string found, IReadOnlyCollection<string> groups) => Error("FLK054", at,
        $"there is no group `{Shown(found)}`",
        groups.Count == 0
            ? "take the line out, or list the tupping groups under `groups`"
            : NearestWord.Find(found, groups) is { } nearest ? $"did you mean `{nearest}`?" : $"the groups are {List(groups)}");

    public const string NoGroupGivenCode = "FLK055";

    public static Diagnostic NoGroupGiven(SourceSpan at, string ewe, IEnumerable<string> groups) => Error(NoGroupGivenCode, at, $"`{Shown(ewe)}` is in none of the groups", $"add `group:` with {List(groups, "or")}");

    public static Diagnostic BreedSlip(SourceSpan at, string found, string nearest) => Error("FLK056", at,
        $"there is no breed `{found}` under `breeds`, but there is `{nearest}`",
        $"write `{nearest}`, or add the other breed, so that her dates are worked from the right figures");

    public static Diagnostic MarkOutsideStay(SourceSpan at, LocalDate mark, IReadOnlyList<DateInterval> stays) => Error("FLK057", at,
        stays is [{ Length: 1, Start: var day }]
            ? $"she cannot have been marked on {Day(mark)}: her group was mated on {Day(day)}"
            : $"she cannot have been marked on {Day(mark)}: {(stays.Count == 1 ? "the tup was" : "the tups were")} with her group {List(stays.Select(s => $"from {Day(s.Start)} to {Day(s.End)}"), quote: false)}",
        stays[0].Start.PlusMonths(-6) > mark
            ? "take last season's marks out, or begin the season from its file, which leaves them behind: `paperflock begin NEXT.yaml --from THIS.yaml`"
            : "check the date, its year, and the group she ran with");

    public static Diagnostic MarkTwice(SourceSpan at, LocalDate mark) => Error("FLK058", at, $"the mark of {Day(mark)} is written twice", "keep one of them");

    public static Diagnostic NotMated(SourceSpan at, string key) => Error("FLK059", at,
        $"`{key}` is given for a ewe that did not go to the tup",
        "take it out; if she went after all, take out `to-tup: no`");

    public static Diagnostic ScanStageWithoutScan(SourceSpan at, bool isEmpty) => Error("FLK060", at,
        isEmpty ? "`scan-stage` is given for a ewe scanned empty" : "`scan-stage` is given without a `scan`",
        isEmpty ? "take it out, or check the count" : "add `scan:` with the lambs counted, or take it out");

    public static Diagnostic LambedImpossible(SourceSpan at, LocalDate lambed, LocalDate earliest, LocalDate latest) => Error("FLK061", at,
        $"she cannot have lambed on {Day(lambed)} from this mating",
        $"her group could lamb from {Day(earliest)} to {Day(latest)}; check the date and its year");

    public static Diagnostic BornImpossible(SourceSpan at, int born, int tupping) => Error("FLK062", at,
        $"a ewe born in {Number(born)} cannot go to the tup in {Number(tupping)}",
        born < 100 ? $"write the year in four figures, such as `{Number(2000 + born)}`" : "check the year she was born");

    public static Diagnostic AbsenceBackwards(SourceSpan at, LocalDate from, LocalDate to) => Error("FLK063", at,
        $"the absence ends on {Day(to)}, before it begins on {Day(from)}",
        "check both dates, and the year; both are days away");

    public static Diagnostic AbsencesOverlap(SourceSpan at, LocalDate day, int otherLine) => Error("FLK064", at,
        $"the absence of line {Number(otherLine)} has {Day(day)} too",
        "let one end the day before the other begins, so that one sitter is in charge");

    public static Diagnostic JobPlacement(SourceSpan at, string title, bool isPlacedAtAll) => Error("FLK065", at,
        isPlacedAtAll ? $"the job `{title}` is placed in more than one way" : $"nothing says when the job `{title}` is to be done",
        "give exactly one of `on: 2026-12-25`, `before: housing` and `after: tup-in`, the last two with `days: [21, 14]`");

    public static Diagnostic FarFromSeason(SourceSpan at, string name, LocalDate date, LocalDate tupIn) => Error("FLK066", at,
        $"`{name}` is {Day(date)}, nowhere near this season",
        $"the tup goes in on {Day(tupIn)}; check the year");

    public static Diagnostic PensOverlap(SourceSpan at, string pen, string other) => Error("FLK067", at,
        $"`{pen}` lies over `{other}` on the plan of the shed",
        "check `at`, `length` and `width` of both: length runs to the right, width down");

    /// <param name="what">With its article: <c>a mark</c>.</param>
    public static Diagnostic AfterToday(SourceSpan at, string what, LocalDate day, LocalDate today) => Error("FLK070", at,
        $"{what} on {Day(day)} has not happened yet: today is {Day(today)}",
        "check the day and the year, and the clock of this computer; write down only what has been seen");

    /// <param name="mated">The first day she can have been mated.</param>
    /// <param name="isMark">It is her mark; else the day the tup went in, or the day of the mating.</param>
    public static Diagnostic ScannedTooSoon(SourceSpan at, LocalDate mated, bool isMark, LocalDate today) => Error("FLK071", at,
        $"lambs cannot be counted yet on {Day(today)}: {(isMark ? "she was marked on" : "she had no tup before")} {Day(mated)}",
        $"take `scan` out until she is scanned, from {Day(mated.PlusDays(PregnancyScan.EarliestCountableDays))} on; is this last season's count?");

    public static Diagnostic TooManyLambs(SourceSpan at, int born, int most) => Error("FLK072", at,
        $"{Number(born)} lambs of one ewe cannot be: the most is {Number(most)}",
        "count again: each lamb is under `lambs-alive` or `lambs-dead`, not under both");

    public static Diagnostic NoLandThere(SourceSpan at) => Error("FLK073", at,
        "at latitude 0, longitude 0 there is only sea",
        "write where the sheep are, such as `{latitude: 54.46, longitude: -2.74}`; a map or a phone shows both figures");

    public static Diagnostic MoreLambsThanBorn(SourceSpan at, int listed, int? alive) => Error("FLK074", at,
        alive is { } born ? $"{Lambs(listed)} under `lambs`, and {Number(born)} under `lambs-alive`" : $"{Lambs(listed)} of one ewe cannot be",
        "under `lambs` stands each lamb born alive, once; check both");

    public static Diagnostic LostAndLambed(SourceSpan at, LocalDate lost, LocalDate lambed) => Error("FLK075", at,
        $"she lost her lambs on {Day(lost)}, and lambed on {Day(lambed)}",
        "keep one: lambs born dead near their time are a lambing, with `lambs-dead`");

    public static Diagnostic LostOutsidePregnancy(SourceSpan at, LocalDate lost, LocalDate mated, LocalDate latest) => Error("FLK076", at,
        $"she cannot have lost lambs on {Day(lost)}",
        $"she can have carried them after {Day(mated)} and until {Day(latest)}; check the day and its year");

    /// <param name="what">With its article: <c>a mark</c>.</param>
    public static Diagnostic SeenAfterGone(SourceSpan at, string what, LocalDate day, LocalDate gone, int line) => Error("FLK077", at,
        $"{what} on {Day(day)}, and she had gone on {Day(gone)}",
        $"check both days; that she has gone stands on line {Number(line)}");

    public static Diagnostic ScannedAfterGone(SourceSpan at, LocalDate countable, LocalDate gone, int line) => Error("FLK078", at,
        $"her lambs could not be counted before {Day(countable)}, and she had gone on {Day(gone)}",
        $"check the day on line {Number(line)}, or take `scan` out");

    public static Diagnostic ScannedAfterLoss(SourceSpan at, LocalDate lost, LocalDate countable) => Error("FLK079", at,
        $"she lost her lambs on {Day(lost)}, and those that `scan` counted could not be counted before {Day(countable)}",
        "check the day and which ewe it was; if she held to a later mating take `lost-lambs` out, else take `scan` out");

    public static Diagnostic ScalesWithoutScoop(SourceSpan at) => Error("FLK080", at,
        "without scales every amount is in scoops, and no scoop is given",
        "write what one level scoop holds, such as `scoop: 0.5 kg` under `concentrate`");
}
