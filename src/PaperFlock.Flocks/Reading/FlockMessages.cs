using NodaTime.Text;
using PaperFlock.Flocks.Editing;
using PaperFlock.Flocks.Places;
using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Reading;

/// <summary>
/// Every word the reader says, in one place, so that it speaks with one voice. A message is one sentence in lower case without a full
/// stop: what is wrong. Advice says what to type. Meanings are in <see cref="FlockCodes"/>.
/// </summary>
internal static class FlockMessages
{
    // The file and its YAML.

    public static Diagnostic TooLarge(long bytes, int most) => Error(
        FlockCodes.TooLarge, SourceSpan.WholeFile,
        $"the file has {Number(bytes)} bytes, and a flock file has at most {Number(most)}",
        "is this the right file? A flock of a thousand ewes needs a tenth of that");

    public static Diagnostic OtherKindOfFile(string kind) => Error(
        FlockCodes.OtherKindOfFile, SourceSpan.WholeFile,
        $"this is {kind}, and a flock file is plain text",
        "write the flock file in a plain text editor; `paperflock begin` makes a first one");

    public static Diagnostic Utf16() => Error(
        FlockCodes.Utf16, SourceSpan.WholeFile,
        "the file is saved as UTF-16 or UTF-32, and a flock file is UTF-8",
        "in the editor choose Save As, and UTF-8 as the encoding");

    public static Diagnostic NotUtf8(SourceSpan at, byte found) => Error(
        FlockCodes.NotUtf8, at,
        $"this byte (0x{found.ToString("X2", CultureInfo.InvariantCulture)}) is not UTF-8",
        "in the editor choose Save As, and UTF-8 as the encoding; then look at the letter here again");

    public static Diagnostic ForbiddenCharacter(SourceSpan at, int value) => Error(
        FlockCodes.ForbiddenCharacter, at,
        $"the character {Code(value)} does not belong in a text file",
        "delete it, and type the line again if it looks empty");

    public static Diagnostic OddSpace(SourceSpan at, int value) => Error(
        FlockCodes.ForbiddenCharacter, at,
        $"this is not an ordinary space but {Code(value)}, as text pasted from a document or a web page has",
        "type the spaces of this line again, and of other lines from the same place; most editors can replace them all at once");

    public static Diagnostic Syntax(SourceSpan at, string reason, string advice) => Error(
        FlockCodes.Syntax, at, $"this is not YAML: {reason}", advice);

    public static Diagnostic TabIndent(SourceSpan at) => Error(
        FlockCodes.TabIndent, at,
        "a tab is used to indent this line",
        "indent with spaces, two for each step; YAML does not allow tabs there");

    public static Diagnostic UnclosedQuote(SourceSpan at, int noticedOn) => Error(
        FlockCodes.UnclosedQuote, at,
        at.Line == noticedOn
            ? "this quote is not closed on its line"
            : $"this quote is not closed on its line, and by line {Number(noticedOn)} the file no longer makes sense",
        "put the closing quote at the end of the text, or take the opening one out");

    public static Diagnostic UnclosedBracket(SourceSpan at, string bracket) => Error(
        FlockCodes.UnclosedBracket, at,
        $"this `{bracket}` is never closed",
        $"put `{(bracket == "[" ? "]" : "}")}` where it ends");

    public static Diagnostic EmptyFile() => Error(
        FlockCodes.EmptyFile, SourceSpan.WholeFile,
        "there is nothing in the file",
        "begin with `paperflock: 1`; flocks/smallest.yaml shows the least that is needed");

    public static Diagnostic SecondDocument(SourceSpan at) => Error(
        FlockCodes.SecondDocument, at,
        "a second document begins here, and a flock file holds one",
        "take out the line of dashes or dots, or put the second flock in a file of its own");

    public static Diagnostic AliasOrAnchor(SourceSpan at, string found) => Error(
        FlockCodes.AliasOrAnchor, at,
        $"`{found}` is a YAML alias or anchor, which flock files do not use",
        "write the value out; put quotes round text that begins with * or &");

    public static Diagnostic Tag(SourceSpan at) => Error(
        FlockCodes.TypeTag, at,
        "this is a YAML type tag, which flock files do not use",
        "take out the word that begins with !; put quotes round text that begins with !");

    public static Diagnostic MergeKey(SourceSpan at) => Error(
        FlockCodes.MergeKey, at,
        "`<<` is the YAML merge key, which flock files do not use",
        "write the keys out");

    public static Diagnostic TooDeep(SourceSpan at, int deepest) => Error(
        FlockCodes.TooDeep, at,
        $"lists and sections are nested more than {Number(deepest)} deep here",
        "look above for a bracket or a dash too many");

    public static Diagnostic TooManyFound(int most) => Error(
        FlockCodes.TooManyFound, SourceSpan.WholeFile,
        $"more than {Number(most)} things are wrong with the file, and it was read no further",
        "begin with the first: one slip often makes many");

    public static Diagnostic ListTooLong(SourceSpan at, int longest) => Error(
        FlockCodes.ListTooLong, at,
        $"this list goes on past {Number(longest)} entries, the most that any may have",
        "is this the right file? Split a larger flock into several files; `paperflock pack` takes them all");

    public static Diagnostic KeyIsNotAWord(SourceSpan at) => Error(
        FlockCodes.KeyIsNotAWord, at,
        "a list or a section stands where a key should be",
        "each line is `key: value`, the key one word; put quotes round text that begins with a bracket");

    public static Diagnostic FormatVersion(SourceSpan at, string found) => Error(
        FlockCodes.FormatVersion, at,
        $"`{Shown(found)}` is not a version of the flock file that this program can read",
        "write `paperflock: 1`, or get a newer program for a newer file");

    // Keys and shapes.

    /// <param name="meant">The key of the table it is a slip of, if any.</param>
    public static Diagnostic UnknownKey(SourceSpan at, string key, KeyTable table, string? meant)
    {
        var elsewhere = FlockKeys.All.FirstOrDefault(t => t.Has(key));
        var colon = key.IndexOf(':', StringComparison.Ordinal);
        var advice = meant is not null && colon == meant.Length
            ? $"put a space after the colon: `{meant}: {Shown(key[(colon + 1)..])}`"
            : meant is not null
                ? $"did you mean `{meant}`?"
                : elsewhere is not null
                    ? $"`{key}` belongs {elsewhere.Where}; check how far the line is indented"
                    : $"known here: {List(table.Keys.Select(k => k.Name))}";
        return Error(FlockCodes.UnknownKey, at, $"`{Shown(key)}` is not a key {table.Where}", advice);
    }

    /// <param name="whole">Both halves, as they should be written.</param>
    public static Diagnostic CutByComma(SourceSpan at, string whole, bool isNumber) => Error(
        FlockCodes.UnknownKey, at,
        "the comma before this ends the value, as commas do inside braces",
        isNumber ? $"decimals are written with a point: `{Shown(whole)}`" : $"put quotes round text with a comma: `{Shown(whole)}`");

    public static Diagnostic DuplicateKey(SourceSpan at, string key, int firstLine) => Error(
        FlockCodes.DuplicateKey, at,
        $"`{Shown(key)}` is already given on line {Number(firstLine)}",
        "keep one of the two; a list's entries each begin with a dash");

    /// <param name="isRemark">What stands there was taken for a remark.</param>
    public static Diagnostic Missing(SourceSpan at, string key, KeyTable table, bool hasKey, bool isRemark)
    {
        var known = table.Key(key);
        return isRemark
            ? Error(FlockCodes.Missing, at, $"`{key}` has nothing after its colon but a comment, which begins with #", "put quotes round text that begins with #")
            : hasKey
            ? Error(FlockCodes.Missing, at, $"`{key}` has nothing after its colon", known.Example is null
                ? "write what belongs there below it, indented"
                : $"write it there, such as `{key}: {known.Example}`")
            : Error(FlockCodes.Missing, at, $"`{key}` is missing {table.Where}", known.Example is null
                ? $"add a line `{key}:` and what belongs to it below, indented"
                : $"add it, such as `{key}: {known.Example}`");
    }

    public static Diagnostic NoSeasonStart(SourceSpan at) => Error(
        FlockCodes.Missing, at,
        "`tup-in` is missing under `season`",
        "add a line `tup-in:` with the day the tup joins the ewes, or `lambing-from:` with the day the first lambs are wanted");

    public static Diagnostic NoEwes(SourceSpan at) => Error(
        FlockCodes.Missing, at,
        "there is no ewe in `ewes`",
        "add an entry such as `- tag: ZZ 0123456 00101`");

    public static Diagnostic NotASection(SourceSpan at, string name, KeyTable table, string? text)
    {
        var word = text is null ? "" : FlockKeys.WordOf(text);
        return Error(
            FlockCodes.NotASection, at,
            $"{(table == FlockKeys.Top ? "a flock file" : $"`{name}`")} needs keys with values, not a {(text is null ? "list" : "single value")}",
            word.Length > 0 && table.Has(word)
                ? $"put a colon and an ordinary space after `{word}`: `{word}: {Shown(text![word.Length..].Trim(AfterKey))}`"
                : table == FlockKeys.Top
                    ? "begin with `paperflock: 1`; flocks/smallest.yaml shows the least that is needed"
                    : $"write keys below it, indented, or in braces: `{{{table.Keys[0].Name}: {(text is null ? "…" : Shown(text))}}}`");
    }

    /// <summary>What people put between a key and its value, and what a careless paste leaves there.</summary>
    private static readonly char[] AfterKey = [' ', ':', '=', '\uFF1A', '\u00A0', '\u202F'];

    /// <param name="text">The single value that stands there; null for keys.</param>
    /// <param name="firstKey">The first of the keys that stand there.</param>
    public static Diagnostic NotAList(SourceSpan at, string name, string? text, string? firstKey) => Error(
        FlockCodes.NotAList, at,
        $"`{name}` needs a list",
        text is not null
            ? $"put square brackets round it: `{name}: [{Shown(text)}]`"
            : firstKey is ['-', not ' ' and not '-', ..]
                ? $"put a space after the dash: `- {Shown(firstKey[1..])}: …`"
                : firstKey is [var mark, ..] && (PastedMarks.IsDash(mark) || mark is '\u2022' or '\u2023' or '\u25E6' or '\u00B7' or '+')
                    ? $"begin each entry with the hyphen of the keyboard and a space: `-`, not `{mark}`"
                    : "begin each entry with a dash and a space");

    public static Diagnostic NotASingleValue(SourceSpan at, string name) => Error(
        FlockCodes.NotASingleValue, at,
        $"`{name}` needs one value, not a list or a section",
        "write the value on the same line; put quotes round text that begins with a bracket");

    public static Diagnostic WrongCount(SourceSpan at, string name, string wanted, string example) => Error(
        FlockCodes.WrongCount, at, $"`{name}` needs {wanted}", $"write it as `{name}: {example}`");

    public static Diagnostic DoesNotApply(SourceSpan at, string key, string because, string advice) => Error(
        FlockCodes.DoesNotApply, at, $"`{key}` has no meaning {because}", advice);

    public static Diagnostic CannotEdit(SourceSpan at, string line) => Error(
        FlockEdit.CannotEdit, at,
        $"the way this is laid out, `{Shown(line)}` cannot be written here without touching something else",
        "the file is as it was; write it in by hand, or put each key here on a line of its own");

    // Single values.

    public static Diagnostic UnknownWord(SourceSpan at, string name, string found, IEnumerable<string> words)
    {
        var all = words.ToArray();
        return Error(
            FlockCodes.UnknownWord, at,
            $"`{name}` cannot be `{Shown(found)}`",
            NearestWord.Find(found, all) is { } nearest ? $"did you mean `{nearest}`?" : $"use {List(all, "or")}");
    }

    /// <param name="meant">The number it was probably meant for, if any.</param>
    public static Diagnostic NotANumber(SourceSpan at, string name, string found, string? meant, string example) => Error(
        FlockCodes.NotANumber, at,
        $"`{name}` needs a number, not `{Shown(found)}`",
        meant is not null
            ? $"write `{meant}`, if that is what you mean"
            : found.Contains(',', StringComparison.Ordinal)
                ? $"write decimals after a point, `{Shown(found.Replace(',', '.'))}`, and nothing between thousands"
                : $"write it in figures, such as `{example}`");

    public static Diagnostic NotAWholeNumber(SourceSpan at, string name, string found) => Error(
        FlockCodes.NotAWholeNumber, at, $"`{name}` is a whole number, not `{Shown(found)}`", "write it without decimals");

    public static Diagnostic MissingUnit(SourceSpan at, string name, string found, IEnumerable<string> units)
    {
        var all = units.Select(unit => $"`{Shown(found)} {unit}`").ToArray();
        return Error(FlockCodes.MissingUnit, at, $"`{name}` needs a unit after `{Shown(found)}`", $"write {List(all, "or", quote: false)}{(all.Length > 1 ? ", whichever it is" : "")}");
    }

    public static Diagnostic BareFraction(SourceSpan at, string name, string found, decimal percent) => Error(
        FlockCodes.MissingUnit, at,
        $"`{name}` needs a unit after `{Shown(found)}`",
        $"write `{Number(percent)} %`");

    public static Diagnostic UnknownUnit(SourceSpan at, string name, string found, IEnumerable<string> units)
    {
        var all = units.ToArray();
        return Error(
            FlockCodes.UnknownUnit, at,
            $"`{Shown(found)}` is not a unit for `{name}`",
            NearestWord.Find(found, all) is { } nearest ? $"did you mean `{nearest}`?" : $"use {List(all, "or")}");
    }

    /// <param name="check">What may be wrong with it: <c>figure and its unit</c>.</param>
    public static Diagnostic OutOfRange(SourceSpan at, string name, string found, string least, string most, string check) => Error(
        FlockCodes.OutOfRange, at,
        $"`{Shown(found)}` cannot be right for `{name}`",
        $"it must lie between {least} and {most}; check the {check}");

    /// <param name="longitude">What stands as the longitude, and may be the latitude.</param>
    public static Diagnostic LatitudeTooLarge(SourceSpan at, decimal latitude, decimal longitude) => Error(
        FlockCodes.OutOfRange, at,
        $"`{Number(latitude)}` cannot be right for `latitude`: latitude and longitude look swapped",
        $"write {Location(longitude, latitude)}, if that is the place");

    public static Diagnostic NotADate(SourceSpan at, string name, string found, string? advice) => Error(
        FlockCodes.NotADate, at,
        $"`{name}` needs a date written year first, not `{Shown(found)}`",
        advice ?? "write year, month and day in figures, such as `2026-08-10`");

    public static Diagnostic NoSuchDate(SourceSpan at, string found, string why) => Error(
        FlockCodes.NoSuchDate, at, $"there is no day `{found}`", $"{why}; check the day against a calendar");

    public static Diagnostic NotATime(SourceSpan at, string name, string found, string? meant) => Error(
        FlockCodes.NotATime, at,
        $"`{name}` needs a time of day, not `{Shown(found)}`",
        meant is null ? "write hours and minutes on the 24-hour clock, such as `06:00` or `21:30`" : $"write `{meant}`");

    public static Diagnostic TextTooLong(SourceSpan at, string name, int length, int longest) => Error(
        FlockCodes.TextTooLong, at,
        $"`{name}` has {Number(length)} characters, and its place on the paper holds {Number(longest)}",
        "keep what tells it from the others; the rest can go into a note");

    public static Diagnostic UnprintableText(SourceSpan at, string name, int? value) => Error(
        FlockCodes.UnprintableText, at,
        value is { } code ? $"`{name}` holds {Code(code)}, which cannot be printed" : $"`{name}` is empty",
        value is null ? "write the text, or take the line out" : "write the text on one line, in letters, figures and ordinary marks");

    public static Diagnostic UnseenCharacter(SourceSpan at, string name, int value) => Error(
        FlockCodes.UnseenCharacter, at,
        $"`{name}` holds {Code(value)}, a character that prints nothing, as text pasted from elsewhere may have",
        "type the text again by hand");

    public static Diagnostic CurlyQuotes(SourceSpan at, string name, string bare) => Error(
        FlockCodes.CurlyQuotes, at,
        $"`{name}` stands in curly quotes, as text pasted from a document does, and they would be printed",
        $"write it without quotes, or in straight ones: `\"{Shown(bare)}\"`");

    public static Diagnostic UnknownTimeZone(SourceSpan at, string found, string? nearest) => Error(
        FlockCodes.UnknownTimeZone, at,
        $"`{Shown(found)}` is not a time zone",
        found.StartsWith("UTC", StringComparison.OrdinalIgnoreCase) || found.StartsWith("GMT", StringComparison.OrdinalIgnoreCase)
            ? "name a place that keeps the same time, such as `Europe/London`, so that the clocks change when they should"
            : nearest is null ? "use an IANA name, such as `Europe/London` or `Pacific/Auckland`" : $"did you mean `{nearest}`?");

    public static Diagnostic WrongOrder(SourceSpan at, string name, string order, string swapped) => Error(
        FlockCodes.WrongOrder, at, $"`{name}` needs {order}", $"write `{swapped}`, if that is what you mean");

    public static Diagnostic NotTrueOrFalse(SourceSpan at, string name, string found) => Error(
        FlockCodes.NotTrueOrFalse, at, $"`{name}` is true or false, not `{Shown(found)}`", "write `true` or `false`");

    // Values that do not agree.

    public static Diagnostic StatedTwice(SourceSpan at, string key, string other) => Error(
        FlockCodes.StatedTwice, at, $"`{key}` and `{other}` both say when the season begins", "keep one of them; the other is worked out");

    public static Diagnostic TupOutBeforeTupIn(SourceSpan at, LocalDate tupOut, LocalDate tupIn) => Error(
        FlockCodes.TupOutBeforeTupIn, at,
        $"the tup goes out on {Day(tupOut)}, before he goes in on {Day(tupIn)}",
        "check both dates, and the year");

    public static Diagnostic DuplicateTag(SourceSpan at, string tag, int firstLine) => Error(
        FlockCodes.DuplicateTag, at,
        $"the tag `{tag}` is already on the ewe on line {Number(firstLine)}",
        "check both ears; spaces, hyphens and capitals make no difference to a tag");

    public static Diagnostic DuplicateName(SourceSpan at, string what, string name, int firstLine) => Error(
        FlockCodes.DuplicateName, at,
        $"there is already a {what} called `{name}`, on line {Number(firstLine)}",
        $"give each {what} a name of its own");

    public static Diagnostic UnknownGroup(SourceSpan at, string found, IReadOnlyCollection<string> groups) => Error(
        FlockCodes.UnknownGroup, at,
        $"there is no group `{Shown(found)}`",
        groups.Count == 0
            ? "take the line out, or list the tupping groups under `groups`"
            : NearestWord.Find(found, groups) is { } nearest ? $"did you mean `{nearest}`?" : $"the groups are {List(groups)}");

    public static Diagnostic NoGroupGiven(SourceSpan at, string ewe, IEnumerable<string> groups) => Error(
        FlockCodes.NoGroupGiven, at, $"`{ewe}` is in none of the groups", $"add `group:` with {List(groups, "or")}");

    public static Diagnostic BreedSlip(SourceSpan at, string found, string nearest) => Error(
        FlockCodes.BreedSlip, at,
        $"there is no breed `{found}` under `breeds`, but there is `{nearest}`",
        $"write `{nearest}`, or add the other breed, so that her dates are worked from the right figures");

    public static Diagnostic MarkOutsideStay(SourceSpan at, LocalDate mark, LocalDate tupIn, LocalDate tupOut) => Error(
        FlockCodes.MarkOutsideStay, at,
        tupIn == tupOut
            ? $"she cannot have been marked on {Day(mark)}: her group was mated on {Day(tupIn)}"
            : $"she cannot have been marked on {Day(mark)}: the tup was with her group from {Day(tupIn)} to {Day(tupOut)}",
        "check the date, its year, and the group she ran with");

    public static Diagnostic MarkTwice(SourceSpan at, LocalDate mark) => Error(
        FlockCodes.MarkTwice, at, $"the mark of {Day(mark)} is written twice", "keep one of them");

    public static Diagnostic NotMated(SourceSpan at, string key) => Error(
        FlockCodes.NotMated, at,
        $"`{key}` is given for a ewe that did not go to the tup",
        "take it out; if she went after all, take out `to-tup: no`");

    public static Diagnostic ScanStageWithoutScan(SourceSpan at, bool isEmpty) => Error(
        FlockCodes.ScanStageWithoutScan, at,
        isEmpty ? "`scan-stage` is given for a ewe scanned empty" : "`scan-stage` is given without a `scan`",
        isEmpty ? "take it out, or check the count" : "add `scan:` with the lambs counted, or take it out");

    public static Diagnostic LambedImpossible(SourceSpan at, LocalDate lambed, LocalDate earliest, LocalDate latest) => Error(
        FlockCodes.LambedImpossible, at,
        $"she cannot have lambed on {Day(lambed)} from this mating",
        $"her group could lamb from {Day(earliest)} to {Day(latest)}; check the date and its year");

    public static Diagnostic BornImpossible(SourceSpan at, int born, int tupping) => Error(
        FlockCodes.BornImpossible, at,
        $"a ewe born in {Number(born)} cannot go to the tup in {Number(tupping)}",
        born < 100 ? $"write the year in four figures, such as `{Number(2000 + born)}`" : "check the year she was born");

    public static Diagnostic AbsenceBackwards(SourceSpan at, LocalDate from, LocalDate to) => Error(
        FlockCodes.AbsenceBackwards, at,
        $"the absence ends on {Day(to)}, before it begins on {Day(from)}",
        "check both dates, and the year; both are days away");

    public static Diagnostic AbsencesOverlap(SourceSpan at, LocalDate day, int otherLine) => Error(
        FlockCodes.AbsencesOverlap, at,
        $"{Day(day)} is also in the absence of line {Number(otherLine)}",
        "let one end the day before the other begins, so that one sitter is in charge");

    public static Diagnostic JobPlacement(SourceSpan at, string title, bool isPlacedAtAll) => Error(
        FlockCodes.JobPlacement, at,
        isPlacedAtAll ? $"the job `{title}` is placed in more than one way" : $"nothing says when the job `{title}` is to be done",
        "give exactly one of `on: 2026-12-25`, `before: housing` and `after: tup-in`, the last two with `days: [21, 14]`");

    public static Diagnostic FarFromSeason(SourceSpan at, string name, LocalDate date, LocalDate tupIn) => Error(
        FlockCodes.FarFromSeason, at,
        $"`{name}` is {Day(date)}, nowhere near this season",
        $"the tup goes in on {Day(tupIn)}; check the year");

    /// <param name="what">With its article: <c>a mark</c>.</param>
    public static Diagnostic AfterToday(SourceSpan at, string what, LocalDate day, LocalDate today) => Error(
        FlockCodes.AfterToday, at,
        $"{what} on {Day(day)} has not happened yet: today is {Day(today)}",
        "check the day and the year; write down only what has been seen");

    /// <param name="mated">The first day she can have been mated.</param>
    /// <param name="isMark">It is her mark; else the day the tup went in, or the day of the mating.</param>
    public static Diagnostic ScannedTooSoon(SourceSpan at, LocalDate mated, bool isMark, LocalDate today) => Error(
        FlockCodes.ScannedTooSoon, at,
        $"{Day(today)} is too soon for lambs to be counted: {(isMark ? "she was marked on" : "she had no tup before")} {Day(mated)}",
        $"take `scan` out until she is scanned, from {Day(mated.PlusDays(PregnancyScan.EarliestCountableDays))} on; is this last season's count?");

    public static Diagnostic TooManyLambs(SourceSpan at, int born, int most) => Error(
        FlockCodes.TooManyLambs, at,
        $"{Number(born)} lambs of one ewe cannot be: the most is {Number(most)}",
        "count again: each lamb is under `lambs-alive` or `lambs-dead`, not under both");

    public static Diagnostic NoLandThere(SourceSpan at) => Error(
        FlockCodes.NoLandThere, at,
        "at latitude 0, longitude 0 there is only sea",
        "write where the sheep are, such as `{latitude: 54.46, longitude: -2.74}`; a map or a phone shows both figures");

    public static Diagnostic ScalesWithoutScoop(SourceSpan at) => Error(
        FlockCodes.ScalesWithoutScoop, at,
        "without scales every amount is in scoops, and no scoop is given",
        "write what one level scoop holds, such as `scoop: 0.5 kg` under `concentrate`");

    // Warnings.

    public static Diagnostic SameName(SourceSpan at, string name, int firstLine) => Warning(
        FlockCodes.SameName, at,
        $"the ewe on line {Number(firstLine)} is also called `{name}`",
        "give one of them another name, or a number, so that nobody at night mistakes one for the other");

    public static Diagnostic NoPhone(SourceSpan at, string role) => Warning(
        FlockCodes.NoPhone, at,
        $"there is no `phone` for `{role}`",
        "add it; the call sheet is what a sitter reaches for");

    public static Diagnostic TakenForRemark(SourceSpan at, string name) => Warning(
        FlockCodes.TakenForRemark, at,
        $"what follows # is taken for a comment, not for part of `{name}`",
        "put quotes round text that holds a space and #; or put a space after the # of a comment");

    public static Diagnostic MissingCharacter(SourceSpan at, string character) => Warning(
        FlockCodes.MissingCharacter, at,
        $"`{character}` is in none of the typefaces",
        "the paper will show an empty box in its place: write it another way");

    public static Diagnostic AnotherSeason(SourceSpan at, LocalDate tupIn, LocalDate today) => Warning(
        FlockCodes.AnotherSeason, at,
        $"the tup goes in on {Day(tupIn)}, and today is {Day(today)}: this is the season of {Number(tupIn.Year)}",
        "check the year; to print the paper of another season, give a day of that season as today");

    public static Diagnostic ScannedSoonAfterMark(SourceSpan at, LocalDate mark, LocalDate today) => Warning(
        FlockCodes.ScannedSoonAfterMark, at,
        $"she was marked again on {Day(mark)}, too soon before today, {Day(today)}, for lambs of that day to be counted",
        $"check the mark; if it is right, have her scanned again from {Day(mark.PlusDays(PregnancyScan.EarliestCountableDays))}");

    /// <param name="days">The least and the most from mating to lambing.</param>
    public static Diagnostic LambedUnlikely(SourceSpan at, LocalDate lambed, LocalDate earliest, LocalDate latest, (int Least, int Most) days, bool isMarked) => Warning(
        FlockCodes.LambedUnlikely, at,
        $"a lambing on {Day(lambed)} does not fit {(isMarked ? "her marks" : "the days with the tup")}: after {Number(days.Least)} to {Number(days.Most)} days she would lamb from {Day(earliest)} to {Day(latest)}",
        isMarked ? "check the day, her marks and their years" : "check the day and its year, and the group she ran with");

    public static Diagnostic EmptyYetLambed(SourceSpan at) => Warning(
        FlockCodes.EmptyYetLambed, at,
        "she was scanned empty, and has lambed",
        "check which ewe it was; if it was she, take out `scan: 0`");

    public static Diagnostic LambsDoNotAddUp(SourceSpan at, int born, int counted) => Warning(
        FlockCodes.LambsDoNotAddUp, at,
        $"{Lambs(born)} born, and the scan counted {Number(counted)}: a scanner is seldom out by more than one",
        "check the lambs, the scan, and which ewe it was");

    public static Diagnostic LambedNothing(SourceSpan at) => Warning(
        FlockCodes.LambedNothing, at,
        "she has lambed, with no lamb alive or dead",
        "write the lambs under `lambs-alive` and `lambs-dead`, or take both out");

    public static Diagnostic EmptyGroup(SourceSpan at, string name) => Warning(
        FlockCodes.EmptyGroup, at,
        $"there is no ewe in the group `{name}`",
        $"write `group: {name}` under each of its ewes, or take the group out");

    public static Diagnostic TupInTwoGroups(SourceSpan at, string tup, string other, LocalDate from, LocalDate to) => Warning(
        FlockCodes.TupInTwoGroups, at,
        $"`{tup}` is with `{other}` too, from {Day(from)} to {Day(to)}",
        "check his name and the days; if both groups run in one field, write the same `field:` under each");

    /// <param name="isGiven">The file says how many for heavy ewes; else it is the usual number.</param>
    public static Diagnostic FewerHeavyRounds(SourceSpan at, int normal, int heavy, bool isGiven) => Warning(
        FlockCodes.FewerHeavyRounds, at,
        $"heavy ewes get {Number(heavy)} rounds a day, and others {Number(normal)}",
        isGiven ? $"write `{{normal: {Number(heavy)}, heavy: {Number(normal)}}}`, if that is what you mean" : $"add `heavy: {Number(normal)}`, or more");

    public static Diagnostic FewerLambingRounds(SourceSpan at, int heavy, int lambing) => Warning(
        FlockCodes.FewerHeavyRounds, at,
        $"ewes that may lamb get {Number(lambing)} rounds a day, and before that {Number(heavy)}",
        $"write `lambing: {Number(heavy)}`, or more: most lambs come outside the middle of the day");

    public static Diagnostic NoFreeDay(SourceSpan at, LocalDate from, LocalDate to) => Warning(
        FlockCodes.NoFreeDay, at,
        $"there is no day for any job: from {Day(from)} to {Day(to)} you are away on every free day",
        "check the days away, or add weekdays to `free`");

    public static Diagnostic TooMuchWork(SourceSpan at, string title, decimal minutes, int ewes) => Warning(
        FlockCodes.TooMuchWork, at,
        $"`{title}` would take {Number(decimal.Round(minutes * ewes / 60))} hours, more than a day holds: {Number(minutes)} minutes for each of {Number(ewes)} ewes",
        "check `minutes-per-ewe`, which is for one ewe");

    public static string NoonAt(LocalTime noon, string zone) =>
        $"by the clock of {zone} the sun would be highest there at {LocalTimePattern.CreateWithInvariantCulture("HH:mm").Format(noon)}";

    public static string FarFromTown(double kilometres, string zone) => $"it is {Kilometres(kilometres)} from the main town of {zone}";

    /// <param name="doubt">Why place and zone do not go together.</param>
    /// <param name="slip">What looks wrong; null when it cannot be told.</param>
    /// <param name="meant">The place without the slip; null with it.</param>
    public static Diagnostic PlaceOutsideZone(SourceSpan at, string doubt, string? slip, Place? meant) => Warning(
        FlockCodes.PlaceOutsideZone, at,
        $"{slip ?? "place and time zone do not go together"}: {doubt}",
        meant is null
            ? "check latitude and longitude, of which south and west are negative, and `time-zone`"
            : $"write {Location(meant.Latitude, meant.Longitude)}, if that is the place");

    public static Diagnostic GridReferenceElsewhere(SourceSpan at, string text, double kilometres, Place square) => Warning(
        FlockCodes.GridReferenceElsewhere, at,
        $"`{text}` is {Kilometres(kilometres)} from `location`, and help would be sent to one or the other",
        $"check both; this reference is {Location(square.Latitude, square.Longitude)}");

    private static Diagnostic Error(string code, SourceSpan at, string message, string advice) =>
        new(Severity.Error, code, at, message, advice);

    private static Diagnostic Warning(string code, SourceSpan at, string message, string advice) =>
        new(Severity.Warning, code, at, message, advice);

    /// <summary>What was typed, short enough for a sentence; the line below shows the whole.</summary>
    private static string Shown(string text)
    {
        var line = new string([.. text.Take(41).Select(c => DisplayWidth.IsUnprintable(c) ? ' ' : c)]);
        return line.Length <= 40 ? line : string.Concat(line.AsSpan(0, char.IsHighSurrogate(line[38]) ? 38 : 39), "…");
    }

    private static string Location(decimal latitude, decimal longitude) => $"`{{latitude: {Number(latitude)}, longitude: {Number(longitude)}}}`";

    private static string Kilometres(double kilometres) => $"{Number((decimal)Math.Round(kilometres))} km";

    private static string Code(int value) => $"U+{value.ToString("X4", CultureInfo.InvariantCulture)}";

    private static string Lambs(int number) => number == 1 ? "1 lamb" : $"{Number(number)} lambs";

    private static string Day(LocalDate date) => LocalDatePattern.Iso.Format(date);

    private static string Number(decimal value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    private static string List(IEnumerable<string> words, string and = "and", bool quote = true)
    {
        var all = words.Select(w => quote ? $"`{w}`" : w).ToArray();
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} {and} {all[^1]}";
    }
}
