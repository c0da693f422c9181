using PaperFlock.Flocks.Editing;

namespace PaperFlock.Flocks.Reading;

// Keys, and what stands where: 020 to 029.

internal static partial class FlockMessages
{
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
        return Error("FLK020", at, $"`{Shown(key)}` is not a key {table.Where}", advice);
    }

    /// <param name="whole">Both halves, as they should be written.</param>
    public static Diagnostic CutByComma(SourceSpan at, string whole, bool isNumber) => Error("FLK020", at,
        "the comma before this ends the value, as commas do inside braces",
        isNumber ? $"decimals are written with a point: `{Shown(whole)}`" : $"put quotes round text with a comma: `{Shown(whole)}`");

    public static Diagnostic DuplicateKey(SourceSpan at, string key, int firstLine) => Error("FLK021", at,
        $"`{Shown(key)}` is already given on line {Number(firstLine)}",
        "keep one of the two; a list's entries each begin with a dash");

    /// <param name="isRemark">What stands there was taken for a remark.</param>
    public static Diagnostic Missing(SourceSpan at, string key, KeyTable table, bool hasKey, bool isRemark)
    {
        var known = table.Key(key);
        return isRemark
            ? Error("FLK022", at, $"`{key}` has nothing after its colon but a comment, which begins with #", "put quotes round text that begins with #")
            : hasKey
            ? Error("FLK022", at, $"`{key}` has nothing after its colon", known.Example is null
                ? "write what belongs there below it, indented"
                : $"write it there, such as `{key}: {known.Example}`")
            : Error("FLK022", at, $"`{key}` is missing {table.Where}", known.Example is null
                ? $"add a line `{key}:` and what belongs to it below, indented"
                : $"add it, such as `{key}: {known.Example}`");
    }

    public static Diagnostic NoSeasonStart(SourceSpan at) => Error("FLK022", at,
        "`tup-in` is missing under `season`",
        "add a line `tup-in:` with the day the tup joins the ewes, or `lambing-from:` with the day the first lambs are wanted");

    public static Diagnostic NoEwes(SourceSpan at) => Error("FLK022", at,
        "there is no ewe in `ewes`",
        "add an entry such as `- tag: ZZ 0123456 00101`");

    public static Diagnostic NotASection(SourceSpan at, string name, KeyTable table, string? text)
    {
        var word = text is null ? "" : FlockKeys.WordOf(text);
        return Error("FLK023", at,
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
    public static Diagnostic NotAList(SourceSpan at, string name, string? text, string? firstKey) => Error("FLK024", at,
        $"`{name}` needs a list",
        text is not null
            ? $"put square brackets round it: `{name}: [{Shown(text)}]`"
            : firstKey is ['-', not ' ' and not '-', ..]
                ? $"put a space after the dash: `- {Shown(firstKey[1..])}: …`"
                : firstKey is [var mark, ..] && (PastedMarks.IsDash(mark) || mark is '\u2022' or '\u2023' or '\u25E6' or '\u00B7' or '+')
                    ? $"begin each entry with the hyphen of the keyboard and a space: `-`, not `{mark}`"
                    : "begin each entry with a dash and a space");

    public static Diagnostic NotASingleValue(SourceSpan at, string name) => Error("FLK025", at,
        $"`{name}` needs one value, not a list or a section",
        "write the value on the same line; put quotes round text that begins with a bracket");

    public static Diagnostic WrongCount(SourceSpan at, string name, string wanted, string example) => Error("FLK026", at, $"`{name}` needs {wanted}", $"write it as `{name}: {example}`");

    public static Diagnostic DoesNotApply(SourceSpan at, string key, string because, string advice) => Error("FLK027", at, $"`{key}` has no meaning {because}", advice);

    public static Diagnostic CannotEdit(SourceSpan at, string line) => Error(FlockEdit.CannotEdit, at,
        $"the way this is laid out, `{Shown(line)}` cannot be written here without touching something else",
        "the file is as it was; write it in by hand, or put each key here on a line of its own");
}
