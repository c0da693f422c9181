namespace PaperFlock.Flocks.Reading;

// The file and its YAML: codes up to 019.

internal static partial class FlockMessages
{
    public static Diagnostic TooLarge(int most) => Error("FLK001", SourceSpan.WholeFile,
        $"the file is too long: a flock file has at most {Number(most)} bytes",
        "is this the right file? A flock of a thousand ewes needs a tenth of that");

    public static Diagnostic OtherKindOfFile(string kind) => Error("FLK019", SourceSpan.WholeFile,
        $"this is {kind}, and a flock file is plain text",
        "write the flock file in a plain text editor; `paperflock begin` makes a first one");

    public static Diagnostic Utf16() => Error("FLK002", SourceSpan.WholeFile,
        "the file is saved as UTF-16 or UTF-32, and a flock file is UTF-8",
        "in the editor choose Save As, and UTF-8 as the encoding");

    public static Diagnostic NotUtf8(SourceSpan at, byte found) => Error("FLK003", at,
        $"this byte (0x{found.ToString("X2", CultureInfo.InvariantCulture)}) is not UTF-8",
        "in the editor choose Save As, and UTF-8 as the encoding; then look at the letter here again");

    public static Diagnostic ForbiddenCharacter(SourceSpan at, int value) => Error("FLK004", at,
        $"the character {Code(value)} does not belong in a text file",
        "delete it, and type the line again if it looks empty");

    public static Diagnostic OddSpace(SourceSpan at, int value) => Error("FLK004", at,
        $"this is not an ordinary space but {Code(value)}, as text pasted from a document or a web page has",
        "type the spaces of this line again, and of other lines from the same place; most editors can replace them all at once");

    public static Diagnostic Syntax(SourceSpan at, string reason, string advice) => Error("FLK005", at, $"this is not YAML: {reason}", advice);

    public static Diagnostic TabIndent(SourceSpan at) => Error("FLK006", at,
        "a tab is used to indent this line",
        "indent with spaces, two for each step; YAML does not allow tabs there");

    public static Diagnostic UnclosedQuote(SourceSpan at, int noticedOn) => Error("FLK007", at,
        at.Line == noticedOn
            ? "this quote is not closed on its line"
            : $"this quote is not closed on its line, and by line {Number(noticedOn)} the file no longer makes sense",
        "put the closing quote at the end of the text, or take the opening one out");

    public static Diagnostic UnclosedBracket(SourceSpan at, string bracket) => Error("FLK008", at,
        $"this `{bracket}` is never closed",
        $"put `{(bracket == "[" ? "]" : "}")}` where it ends");

    public static Diagnostic EmptyFile() => Error("FLK009", SourceSpan.WholeFile,
        "there is nothing in the file",
        "begin with `paperflock: 1`; flocks/smallest.yaml shows the least that is needed");

    public static Diagnostic SecondDocument(SourceSpan at) => Error("FLK010", at,
        "a second document begins here, and a flock file holds one",
        "take out the line of dashes or dots, or put the second flock in a file of its own");

    public static Diagnostic AliasOrAnchor(SourceSpan at, string found) => Error("FLK011", at,
        $"`{found}` is a YAML alias or anchor, which flock files do not use",
        "write the value out; put quotes round text that begins with * or &");

    public static Diagnostic Tag(SourceSpan at) => Error("FLK012", at,
        "this is a YAML type tag, which flock files do not use",
        "take out the word that begins with !; put quotes round text that begins with !");

    public static Diagnostic MergeKey(SourceSpan at) => Error("FLK013", at,
        "`<<` is the YAML merge key, which flock files do not use",
        "write the keys out");

    public static Diagnostic TooDeep(SourceSpan at, int deepest) => Error("FLK014", at,
        $"lists and sections are nested more than {Number(deepest)} deep here",
        "look above for a bracket or a dash too many");

    public static Diagnostic TooManyFound(int most) => Error("FLK018", SourceSpan.WholeFile,
        $"more than {Number(most)} things are wrong with the file, and it was read no further",
        "begin with the first: one slip often makes many");

    public static Diagnostic ListTooLong(SourceSpan at, int longest) => Error("FLK028", at,
        $"this list goes on past {Number(longest)} entries, the most that any may have",
        "is this the right file? Split a larger flock into several files; `paperflock pack` takes them all");

    public static Diagnostic KeyIsNotAWord(SourceSpan at) => Error("FLK015", at,
        "a list or a section stands where a key should be",
        "each line is `key: value`, the key one word; put quotes round text that begins with a bracket");

    public static Diagnostic FormatVersion(SourceSpan at, string found) => Error("FLK016", at,
        $"`{Shown(found)}` is not a version of the flock file that this program can read",
        "write `paperflock: 1`, or get a newer program for a newer file");
}
