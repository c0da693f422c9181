using CsvHelper;
using PaperFlock.Diagnostics;

namespace PaperFlock.Cli.Csv;

/// <summary>What may be wrong with a file from a spreadsheet, whatever it is about.</summary>
internal static class CsvMessages
{
    /// <summary>The file is not what a spreadsheet saves.</summary>
    public const string MalformedCode = "CSV001";

    public const string EmptyCode = "CSV002";

    public static Diagnostic Malformed(SourceSpan at, CsvMalformedReason reason) => new(
        Severity.Error, MalformedCode, at,
        reason switch
        {
            CsvMalformedReason.UnterminatedQuote => "this quote is never closed",
            CsvMalformedReason.TextAfterClosingQuote => "something follows the quote that closes this cell",
            _ => "a quote stands in the middle of a cell",
        },
        "save the file as CSV from the spreadsheet again, or take the quote away");

    public static Diagnostic Empty() => new(
        Severity.Error, EmptyCode, SourceSpan.WholeFile,
        "there is nothing in the file",
        "the first row has the headings, and each row after it a ewe");
}
