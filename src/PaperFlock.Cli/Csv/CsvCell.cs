using PaperFlock.Diagnostics;

namespace PaperFlock.Cli.Csv;

/// <param name="Text">Quotes resolved; blanks as they are.</param>
/// <param name="Span">Where it stands, quotes included; what runs over lines has its first line.</param>
internal sealed record CsvCell(string Text, SourceSpan Span)
{
    public bool IsBlank => string.IsNullOrWhiteSpace(Text);
}
