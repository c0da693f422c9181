using PaperFlock.Diagnostics;

namespace PaperFlock.Languages.Po;

/// <summary>All that can be wrong with a catalogue, code by code, and the words for it.</summary>
internal static class PoMessages
{
    public static Diagnostic UnknownKeyword(SourceSpan span, string keyword) => Error(
        "WRD001", span, $"\"{keyword}\" is no keyword of a PO file",
        "write msgctxt, msgid, msgid_plural, msgstr or msgstr[N] and a string in quotes; a comment begins with #");

    public static Diagnostic NoString(SourceSpan span, string keyword) => Error(
        "WRD002", span, $"{keyword} has no string behind it", "write the words in straight double quotes on the same line; \"\" for none yet");

    public static Diagnostic StrayString(SourceSpan span) => Error(
        "WRD003", span, "this string belongs to no keyword", "put it below the msgid or msgstr that it goes on with");

    public static Diagnostic BadString(SourceSpan span) => Error(
        "WRD004", span, "this string does not end where it should, or has an escape that there is none of",
        "end it with a double quote; write \\\" for a quote inside, \\\\ for a backslash, \\n for a new line");

    public static Diagnostic NothingSaid(SourceSpan span) => Error(
        "WRD005", span, "this entry has no msgstr, or leaves out one of its forms", "write msgstr \"\" for one that is still to be translated; forms count from msgstr[0]");

    public static Diagnostic NoLanguage(SourceSpan span) => Error(
        "WRD006", span, "the header does not say which language this is", "write \"Language: cy\\n\" into the first entry, with the code of your language");

    public static Diagnostic NotUnicode(SourceSpan span) => Error(
        "WRD007", span, "the header says that this file is not in UTF-8", "save it as UTF-8 and write \"Content-Type: text/plain; charset=UTF-8\\n\"");

    public static Diagnostic NoPluralRule(SourceSpan span) => Error(
        "WRD008", span, "the header has no Plural-Forms that can be followed", "write such as \"Plural-Forms: nplurals=2; plural=(n != 1);\\n\" into the first entry");

    public static Diagnostic WrongHoles(SourceSpan span, string wanted, string found) => Error(
        "WRD009", span, $"the holes are {found}, and should be {wanted}", "use each hole of the msgid, in any order: figures and names of the flock are put there");

    public static Diagnostic BadBraces(SourceSpan span) => Error(
        "WRD010", span, "a brace here is no part of a hole", "write {0}, {1} and so on for a hole, and {{ or }} for a brace that is to be printed");

    public static Diagnostic WrongForms(SourceSpan span, int wanted, int found) => Error(
        "WRD011", span, $"there are {found} forms here, and should be {wanted}", "Plural-Forms in the header says how many forms there are: msgstr[0], msgstr[1] and so on");

    public static Diagnostic SaidTwice(SourceSpan span, int line) => Error(
        "WRD012", span, $"the same entry stands in line {line} already", "keep one of them, or give them different msgctxt");

    public static Diagnostic NoHeader() => Error(
        "WRD013", SourceSpan.WholeFile, "there is no header", "begin with an entry whose msgid is empty; start from words/paperflock.pot");

    private static Diagnostic Error(string code, SourceSpan span, string message, string advice) => new(Severity.Error, code, span, message, advice);
}
