using CsvHelper;
using NodaTime.Text;

namespace PaperFlock.Flocks.Lists;

/// <summary>What is said of a list of ewes from a spreadsheet. A message is one sentence in lower case without a full stop; advice says what to do.</summary>
public static class ListMessages
{
    private const string AsTextAdvice =
        "in the spreadsheet give the whole column the format Text, type the tag again as it is on the ear, and save";

    internal static Diagnostic Malformed(SourceSpan at, CsvMalformedReason reason) => Error(
        "CSV001", at,
        reason switch
        {
            CsvMalformedReason.UnterminatedQuote => "this quote is never closed",
            CsvMalformedReason.TextAfterClosingQuote => "something follows the quote that closes this cell",
            _ => "a quote stands in the middle of a cell",
        },
        "save the file as CSV from the spreadsheet again, or take the quote away");

    public static Diagnostic NoRows() => Error("LST001", SourceSpan.WholeFile, "there are no ewes in the list", "the first row has the headings, and each row after it a ewe");

    /// <param name="first">The first row with anything in it.</param>
    public static Diagnostic NoTagColumn(ImmutableArray<CsvCell> first) => Error(
        "LST002", first[0].Span, "no column here is known to hold ear tags", $"give that column the heading `tag`, or say which it is: --tag-column A{(first.Length > 1 ? $", or B for the second of {first.Length}" : "")}");

    public static Diagnostic TooManyRows(int rows) => Error(
        "LST005", SourceSpan.WholeFile, $"the list has {rows} rows, and a flock has at most {FlockReader.LongestList} ewes", "is this the right file? Split a larger flock into several, each with a flock file of its own");

    /// <param name="kind">With its article.</param>
    public static Diagnostic OtherKindOfFile(string kind) => Error(
        "LST006", SourceSpan.WholeFile, $"this is {kind}, and a list is read from a CSV file",
        "open it in the spreadsheet, choose Save As or Download, and CSV as the kind of file\nthen type the name of the new file here, such as ewes.csv; the old one stays as it is");

    public static Diagnostic TooLarge() => Error(
        "LST007", SourceSpan.WholeFile, $"the file has more than {FlockReader.MostBytes} bytes, and no list of ewes is so long", "is this the right file? Save the one sheet with the ewes as CSV");

    /// <summary>What keeps a cell out, said of a ewe who is taken without it.</summary>
    public static Diagnostic LeftOut(Diagnostic wrong) => wrong with { Severity = Severity.Warning, Message = $"left out: {wrong.Message}" };

    /// <summary>Advice for a flock file mends nothing in a spreadsheet.</summary>
    internal static Diagnostic InWordsOfAList(Diagnostic wrong) => wrong.Code == FlockMessages.NoGroupGivenCode
        ? wrong with { Advice = wrong.Advice.Replace("add `group:` with", "under the heading `group`, in a column of its own, write", StringComparison.Ordinal) }
        : wrong;

    public static Diagnostic UnknownColumn(SourceSpan at, string heading) => Warning(
        "LST003", at, $"the column `{heading}` is left out: no key of a ewe has that heading", $"headings that are known: {string.Join(", ", EweColumn.Headings)}");

    public static Diagnostic SecondColumn(SourceSpan at, string heading, string other) => Warning(
        "LST004", at, $"the column `{heading}` is left out: `{other}` says the same", "give it another heading if it is something else");

    public static Diagnostic NoTag(SourceSpan at) => Error("LST010", at, "this row has no tag", "put in the tag as it is on the ear, or take the row out");

    public static Diagnostic Exponent(SourceSpan at, string text) => Error(
        "LST011", at, $"the spreadsheet has turned this tag into a number, `{text}`, and its figures are lost", AsTextAdvice);

    public static Diagnostic Rounded(SourceSpan at) => Error(
        "LST012", at, "a spreadsheet keeps fifteen figures of a number, and this tag has more: its last ones are made up", AsTextAdvice);

    public static Diagnostic Shortened(SourceSpan at, int figures, int usual) => Error(
        "LST013", at, $"this tag has {figures} figures and the others {usual}: a spreadsheet takes zeros away from the front of a number", AsTextAdvice);

    public static Diagnostic Fraction(SourceSpan at, string text) => Error(
        "LST014", at, $"the spreadsheet has made a number with decimals or commas of this tag, `{text}`", AsTextAdvice);

    public static Diagnostic SpreadsheetError(SourceSpan at, string text) => Error(
        "LST015", at, $"`{text}` is what a spreadsheet writes where it could not work a cell out, and no tag", "put in the tag as it is on the ear, or take the row out");

    public static Diagnostic NoHeading(SourceSpan at, string text) => Warning(
        "LST016", at, $"`{text}` is left out: this row has more cells than there are headings", "put quotes round a text that has a comma in it, and write a weight with a point, such as 72.5");

    public static Diagnostic TwoDays(SourceSpan at, string text, LocalDate dayFirst, LocalDate monthFirst) => Cell(
        "LST020", at,
        $"`{text}` could be {FlockMessages.Day(dayFirst)} or {FlockMessages.Day(monthFirst)}, and no other date in the list tells which comes first, the day or the month",
        $"write `{Iso(dayFirst)}` or `{Iso(monthFirst)}`: year, month, day, with dashes");

    public static Diagnostic NotADate(SourceSpan at, string text) => Cell("LST021", at, $"`{text}` is no date", "write year, month and day, such as 2026-08-10");

    public static Diagnostic DayNumber(SourceSpan at, string text) => Cell(
        "LST022", at, $"`{text}` is a spreadsheet's number of a day, not a date", "give the column the format Date in the spreadsheet, and save again");

    public static Diagnostic NoUnit(SourceSpan at, string text) => Cell(
        "LST023", at, $"`{text}` has no unit, and the heading has none", "put the unit into the heading, `weight kg` or `weight lb`");

    public static Diagnostic NotAWeight(SourceSpan at, string text) => Cell("LST024", at, $"`{text}` is no weight", "write it as 72 kg, 158 lb or 11 st 4 lb");

    public static Diagnostic NotAnAge(SourceSpan at, string text) => Cell("LST025", at, $"`{text}` is no age in years", "write whole years, or the year she was born under the heading `born`");

    public static Diagnostic AgeReckoned(SourceSpan at, int tupping) => Warning(
        "LST026", at, $"the year of birth is reckoned from the age, as it is at tupping in {tupping}", "put the years in a column `born` if the list is older");

    private static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);

    private static Diagnostic Cell(string code, SourceSpan at, string message, string advice) => LeftOut(Error(code, at, message, advice));
}
