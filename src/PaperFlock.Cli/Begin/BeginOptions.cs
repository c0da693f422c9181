namespace PaperFlock.Cli.Begin;

/// <summary>What was typed after <c>begin</c>. Every text is as typed and still to be read; null is a question still open.</summary>
/// <param name="File">Where to write; null for a name made from the holding's.</param>
/// <param name="Ewes">A number, or the name of a list.</param>
/// <param name="GoodRows">Rows of the list that are refused do not keep the others out.</param>
/// <param name="Yes">Take the usual answer to whatever is open.</param>
/// <param name="Overwrite">A file of that name may be replaced.</param>
internal sealed record BeginOptions(
    string? File,
    string? Name,
    string? Keeper,
    string? Place,
    string? TimeZone,
    string? TupIn,
    string? LambingFrom,
    string? Ewes,
    bool GoodRows,
    string? Paper,
    bool Yes,
    bool Overwrite);
