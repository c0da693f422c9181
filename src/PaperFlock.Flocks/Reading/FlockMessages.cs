using System.Globalization;
using NodaTime;
using NodaTime.Text;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Editing;
using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Reading;

/// <summary>
/// Every word the reader says, in one place, so that it speaks with one voice and can be put into another language. A
/// message is one sentence in lower case without a full stop; advice says what to do. Meanings are in <see cref="FlockCodes"/>.
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
        $"the character U+{value.ToString("X4", CultureInfo.InvariantCulture)} here is no text",
        "delete it, and type the line again if it looks empty");

    public static Diagnostic OddSpace(SourceSpan at, int value) => Error(
        FlockCodes.ForbiddenCharacter, at,
        $"a space of another kind (U+{value.ToString("X4", CultureInfo.InvariantCulture)}) stands here, as in text pasted from a document or a web page",
        "type the spaces of this line again, and of others from the same place; your editor may replace them all at once");

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
            : $"this quote is not closed on its line, and the text makes no sense by line {Number(noticedOn)}",
        "put the closing quote at the end of the text, or take the opening one away");

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
        "a second document begins here, and a flock file is one",
        "take the line of dashes or dots away, or put the second flock in a file of its own");

    public static Diagnostic AliasOrAnchor(SourceSpan at, string found) => Error(
        FlockCodes.AliasOrAnchor, at,
        $"`{found}` is a YAML alias or anchor, and a flock file has none",
        "write the value out; put quotes round text that begins with * or &");

    public static Diagnostic Tag(SourceSpan at) => Error(
        FlockCodes.TypeTag, at,
        "a YAML type tag stands here, and a flock file has none",
        "take the word that begins with ! away; put quotes round text that begins with !");

    public static Diagnostic MergeKey(SourceSpan at) => Error(
        FlockCodes.MergeKey, at,
        "`<<` is the YAML merge key, and a flock file has none",
        "write the keys out");

    public static Diagnostic TooDeep(SourceSpan at, int deepest) => Error(
        FlockCodes.TooDeep, at,
        $"lists and sections are nested more than {Number(deepest)} deep here",
        "look above for a bracket or a dash too many");

    public static Diagnostic TooManyFound(int most) => Error(
        FlockCodes.TooManyFound, SourceSpan.WholeFile,
        $"more than {Number(most)} things are wrong with the file, and it was read no further",
        "begin with the first of them: one slip often makes many");

    public static Diagnostic ListTooLong(SourceSpan at, int longest) => Error(
        FlockCodes.ListTooLong, at,
        $"what begins above goes on here past {Number(longest)} entries, and nothing may have more",
        "is this the right file? A larger flock is split into several files, and `paperflock pack` takes them all");

    public static Diagnostic KeyIsNotAWord(SourceSpan at) => Error(
        FlockCodes.KeyIsNotAWord, at,
        "a list or a section stands where a key should be",
        "each line is `key: value`, the key one word; put quotes round text that begins with a bracket");

    public static Diagnostic FormatVersion(SourceSpan at, string found) => Error(
        FlockCodes.FormatVersion, at,
        $"`{Shown(found)}` is not a version of the flock file this program reads",
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
            ? Error(FlockCodes.Missing, at, $"`{key}` has nothing after its colon but a remark, which begins with #", "put quotes round text that begins with #")
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
            $"{(table == FlockKeys.Top ? "a flock file" : $"`{name}`")} wants keys with values, not a {(text is null ? "list" : "single value")}",
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
        $"`{name}` wants a list",
        text is not null
            ? $"put square brackets round it: `{name}: [{Shown(text)}]`"
            : firstKey is ['-', not ' ' and not '-', ..]
                ? $"put a space after the dash: `- {Shown(firstKey[1..])}: …`"
                : firstKey is [var mark, ..] && (PastedMarks.IsDash(mark) || mark is '\u2022' or '\u2023' or '\u25E6' or '\u00B7' or '+')
                    ? $"begin each entry with the hyphen of the keyboard and a space: `-`, not `{mark}`"
                    : "begin each entry with a dash and a space");

    public static Diagnostic NotASingleValue(SourceSpan at, string name) => Error(
        FlockCodes.NotASingleValue, at,
        $"`{name}` wants one value, not a list or a section",
        "write the value on the same line; put quotes round text that begins with a bracket");

    public static Diagnostic WrongCount(SourceSpan at, string name, string wanted, string example) => Error(
        FlockCodes.WrongCount, at, $"`{name}` wants {wanted}", $"write it as `{name}: {example}`");

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
            $"`{Shown(found)}` is no word for `{name}`",
            NearestWord.Find(found, all) is { } nearest ? $"did you mean `{nearest}`?" : $"use {List(all, "or")}");
    }

    /// <param name="meant">The number it was probably meant for, if any.</param>
    public static Diagnostic NotANumber(SourceSpan at, string name, string found, string? meant, string example) => Error(
        FlockCodes.NotANumber, at,
        $"`{Shown(found)}` is not a number for `{name}`",
        meant is not null
            ? $"write `{meant}`, if that is what you mean"
            : found.Contains(',', StringComparison.Ordinal)
                ? $"write decimals after a point, `{Shown(found.Replace(',', '.'))}`, and nothing between thousands"
                : $"write it in figures, such as `{example}`");

    public static Diagnostic NotAWholeNumber(SourceSpan at, string name, string found) => Error(
        FlockCodes.NotAWholeNumber, at, $"`{name}` is counted in whole numbers, not `{Shown(found)}`", "leave out what is after the point");

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
        $"it lies between {least} and {most}; check the {check}");

    public static Diagnostic NotADate(SourceSpan at, string name, string found, string? advice) => Error(
        FlockCodes.NotADate, at,
        $"`{Shown(found)}` is not a date as a flock file writes it, for `{name}`",
        advice ?? "write year, month and day in figures, such as `2026-08-10`");

    public static Diagnostic NoSuchDate(SourceSpan at, string found, string why) => Error(
        FlockCodes.NoSuchDate, at, $"there is no day `{found}`", $"{why}; check the day against a calendar");

    public static Diagnostic NotATime(SourceSpan at, string name, string found, string? meant) => Error(
        FlockCodes.NotATime, at,
        $"`{Shown(found)}` is not a time for `{name}`",
        meant is null ? "write hours and minutes on the 24-hour clock, such as `06:00` or `21:30`" : $"write `{meant}`");

    public static Diagnostic TextTooLong(SourceSpan at, string name, int length, int longest) => Error(
        FlockCodes.TextTooLong, at,
        $"`{name}` has {Number(length)} characters, and its place on the paper holds {Number(longest)}",
        "keep what tells it from the others; the rest can go into a note");

    public static Diagnostic UnprintableText(SourceSpan at, string name, int? value) => Error(
        FlockCodes.UnprintableText, at,
        value is { } code
            ? $"`{name}` holds the character U+{code.ToString("X4", CultureInfo.InvariantCulture)}, which cannot be printed"
            : $"`{name}` is empty",
        value is null ? "write the text, or take the line away" : "write the text on one line, in letters, figures and ordinary marks");

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
        FlockCodes.WrongOrder, at, $"`{name}` wants {order}", $"write `{swapped}`, if that is what you mean");

    public static Diagnostic NotTrueOrFalse(SourceSpan at, string name, string found) => Error(
        FlockCodes.NotTrueOrFalse, at, $"`{Shown(found)}` is neither true nor false, for `{name}`", "write `true` or `false`");

    // Values that do not agree.

    public static Diagnostic StatedTwice(SourceSpan at, string key, string other) => Error(
        FlockCodes.StatedTwice, at, $"`{key}` and `{other}` are two ways of stating the same date", "keep one of them; the other is worked out");

    public static Diagnostic TupOutBeforeTupIn(SourceSpan at, LocalDate tupOut, LocalDate tupIn) => Error(
        FlockCodes.TupOutBeforeTupIn, at,
        $"the tup goes out on {Day(tupOut)}, before he comes in on {Day(tupIn)}",
        "check both dates, and the year");

    public static Diagnostic DuplicateTag(SourceSpan at, string tag, int firstLine) => Error(
        FlockCodes.DuplicateTag, at,
        $"the tag `{tag}` is already on the ewe of line {Number(firstLine)}",
        "check both ears; spaces and capitals make no difference to a tag");

    public static Diagnostic DuplicateName(SourceSpan at, string what, string name, int firstLine) => Error(
        FlockCodes.DuplicateName, at,
        $"the {what} `{name}` is already there on line {Number(firstLine)}",
        $"give each {what} a name of its own");

    public static Diagnostic UnknownGroup(SourceSpan at, string found, IReadOnlyCollection<string> groups) => Error(
        FlockCodes.UnknownGroup, at,
        $"there is no group `{Shown(found)}`",
        groups.Count == 0
            ? "take the line away, or list the tupping groups under `groups`"
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
            ? $"a mark on {Day(mark)}, and her group was mated on {Day(tupIn)}"
            : $"a mark on {Day(mark)}, and the tup of her group is in from {Day(tupIn)} to {Day(tupOut)}",
        "check the date, its year, and the group she ran with");

    public static Diagnostic MarkTwice(SourceSpan at, LocalDate mark) => Error(
        FlockCodes.MarkTwice, at, $"the mark of {Day(mark)} is there twice", "keep one of them");

    public static Diagnostic NotMated(SourceSpan at, string key) => Error(
        FlockCodes.NotMated, at,
        $"`{key}` is given for a ewe that did not go to the tup",
        "take it away; if she went after all, take `to-tup: false` away");

    public static Diagnostic ScanStageWithoutScan(SourceSpan at, bool isEmpty) => Error(
        FlockCodes.ScanStageWithoutScan, at,
        isEmpty ? "`scan-stage` is given for a ewe scanned empty" : "`scan-stage` is given without a `scan`",
        isEmpty ? "take it away, or check the count" : "add `scan:` with the lambs counted, or take it away");

    public static Diagnostic LambedImpossible(SourceSpan at, LocalDate lambed, LocalDate earliest, LocalDate latest) => Error(
        FlockCodes.LambedImpossible, at,
        $"she cannot have lambed on {Day(lambed)} from this mating",
        $"her group could lamb from {Day(earliest)} to {Day(latest)}; check the date and its year");

    public static Diagnostic BornImpossible(SourceSpan at, int born, int tupping) => Error(
        FlockCodes.BornImpossible, at,
        $"a ewe born in {Number(born)} cannot go to the tup in {Number(tupping)}",
        "write the year she was born, in four figures");

    public static Diagnostic AbsenceBackwards(SourceSpan at, LocalDate from, LocalDate to) => Error(
        FlockCodes.AbsenceBackwards, at,
        $"the absence ends on {Day(to)}, before it begins on {Day(from)}",
        "check both dates, and the year; both are days away");

    public static Diagnostic AbsencesOverlap(SourceSpan at, LocalDate day, int otherLine) => Error(
        FlockCodes.AbsencesOverlap, at,
        $"{Day(day)} is also in the absence of line {Number(otherLine)}",
        "let one end the day before the other begins, so that one sitter holds the pack");

    public static Diagnostic JobPlacement(SourceSpan at, string title, bool isPlacedAtAll) => Error(
        FlockCodes.JobPlacement, at,
        isPlacedAtAll ? $"the job `{title}` is placed in more than one way" : $"nothing says when the job `{title}` is to be done",
        "give exactly one of `on: 2026-12-25`, `before: housing` and `after: tup-in`, the last two with `days: [21, 14]`");

    public static Diagnostic FarFromSeason(SourceSpan at, string name, LocalDate date, LocalDate tupIn) => Error(
        FlockCodes.FarFromSeason, at,
        $"{Day(date)} is nowhere near this season, for `{name}`",
        $"the tup goes in on {Day(tupIn)}; check the year");

    public static Diagnostic ScalesWithoutScoop(SourceSpan at) => Error(
        FlockCodes.ScalesWithoutScoop, at,
        "without scales every amount is in scoops, and no scoop is given",
        "write what one level scoop holds, such as `scoop: 0.5 kg` under `concentrate`");

    // Warnings.

    public static Diagnostic SameName(SourceSpan at, string name, int firstLine) => Warning(
        FlockCodes.SameName, at,
        $"the ewe of line {Number(firstLine)} is called `{name}` too",
        "give one of them another name, or a number, so that nobody at night mistakes one for the other");

    public static Diagnostic NoPhone(SourceSpan at, string role) => Warning(
        FlockCodes.NoPhone, at,
        $"there is no `phone` for `{role}`",
        "add it; the call sheet is what a sitter reaches for");

    public static Diagnostic TakenForRemark(SourceSpan at, string name) => Warning(
        FlockCodes.TakenForRemark, at,
        $"what follows # is taken for a remark, and is no part of `{name}`",
        "put quotes round text that holds a space and #; or put a space after the # of a remark");

    private static Diagnostic Error(string code, SourceSpan at, string message, string advice) =>
        new(Severity.Error, code, at, message, advice);

    private static Diagnostic Warning(string code, SourceSpan at, string message, string advice) =>
        new(Severity.Warning, code, at, message, advice);

    /// <summary>What was typed, short enough for a sentence; the line below shows the whole.</summary>
    private static string Shown(string text)
    {
        var line = new string([.. text.Take(41).Select(c => char.IsControl(c) ? ' ' : c)]);
        return line.Length <= 40 ? line : string.Concat(line.AsSpan(0, char.IsHighSurrogate(line[38]) ? 38 : 39), "…");
    }

    private static string Day(LocalDate date) => LocalDatePattern.Iso.Format(date);

    private static string Number(decimal value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    private static string List(IEnumerable<string> words, string and = "and", bool quote = true)
    {
        var all = words.Select(w => quote ? $"`{w}`" : w).ToArray();
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} {and} {all[^1]}";
    }
}
