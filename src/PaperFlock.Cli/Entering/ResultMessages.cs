using static PaperFlock.Diagnostics.Diagnostic;

namespace PaperFlock.Cli.Entering;

/// <summary>What may be wrong with results from a spreadsheet.</summary>
internal static class ResultMessages
{
    public static Diagnostic NoResultColumn(SourceSpan at, ImmutableArray<ResultColumn> columns) => Error(
        "CSV011", at, "no column has a result in it", $"give a column one of the headings {ScreenText.List(columns.Take(5).Select(c => $"`{c.Name}`"))}");

    public static Diagnostic ColumnTwice(SourceSpan at, string column, string other) => Error(
        "CSV012", at, $"this column and `{other}` both give `{column}`", "keep one of them, or give the other another heading");

    public static Diagnostic NoTag(SourceSpan at) => Error(
        "CSV013", at, "there is no tag in this row", "write the ewe's tag as the flock file has it, or take the row away");

    public static Diagnostic UnknownTag(SourceSpan at, string tag) => Error(
        "CSV014", at, $"no ewe has the tag `{tag}`, or one that ends so", "check the ear, and that she is in the flock file; spaces, hyphens and capitals make no difference");

    public static Diagnostic SeveralTags(SourceSpan at, string tag, IEnumerable<Ewe> ewes) => Error(
        "CSV017", at, $"`{tag}` is the end of more than one tag: {ScreenText.List(ewes.Select(e => $"`{e.Tag}`"))}", "write more of the tag");

    public static Diagnostic TagTwice(SourceSpan at, string tag, int firstLine) => Error(
        "CSV015", at, $"the tag `{tag}` is already on line {firstLine.ToString(CultureInfo.InvariantCulture)}", "keep the row that is right");

    public static Diagnostic LeftOut(SourceSpan at, string who, string why)
    {
        var split = why.IndexOf("; ", StringComparison.Ordinal);
        var (message, advice) = split < 0 ? (why, "put it right in the spreadsheet, and save it again") : (why[..split], why[(split + 2)..]);
        return Warning("CSV016", at, $"left out, of {who}: {message}", advice);
    }

    public static Diagnostic UnknownColumn(SourceSpan at, string heading, string? nearest) => Warning(
        "CSV020", at, $"the column `{heading}` is left out", nearest is null ? "nothing on this sheet has that name" : $"did you mean `{nearest}`?");

    public static Diagnostic NotOnTheSheet(SourceSpan at, string who, string title) => Warning(
        "CSV021", at, $"{who} is not on the sheet {title}", "she is entered all the same; check that it is the right ewe");
}
