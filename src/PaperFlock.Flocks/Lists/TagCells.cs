using System.Text.RegularExpressions;

namespace PaperFlock.Flocks.Lists;

/// <summary>Ear tags as a spreadsheet gives them back: verbatim, or refused where it has made a number of one.</summary>
public sealed partial class TagCells
{
    /// <summary>A figure or a few tells ewes apart within a flock and has no zeros to lose; a number this long is an official one.</summary>
    private const int OfficialFigures = 5;

    /// <summary>What a spreadsheet keeps of a number: IEEE 754 double precision, fifteen figures shown.</summary>
    private const int FiguresKept = 15;

    private readonly int _usual;

    /// <param name="tags">Every tag of the list, as it stands.</param>
    public TagCells(IEnumerable<string> tags)
    {
        var lengths = tags.Select(Unwrapped).Where(t => t.All(char.IsAsciiDigit)).GroupBy(t => t.Length).OrderByDescending(g => g.Count()).ThenByDescending(g => g.Key);
        _usual = lengths.FirstOrDefault()?.Key ?? 0;
    }

    /// <returns>Null after saying what is wrong.</returns>
    public string? Read(CsvCell cell, DiagnosticBag bag)
    {
        var tag = Unwrapped(cell.Text);
        var wrong = tag switch
        {
            "" => ListMessages.NoTag(cell.Span),
            _ when SpreadsheetError().IsMatch(tag) => ListMessages.SpreadsheetError(cell.Span, tag),
            _ when Exponent().IsMatch(tag) => ListMessages.Exponent(cell.Span, tag),
            _ when Fraction().IsMatch(tag) => ListMessages.Fraction(cell.Span, tag),
            _ when !tag.All(char.IsAsciiDigit) || IsText(cell.Text) => null,
            _ when tag.Length > FiguresKept && tag[FiguresKept..].All(c => c == '0') => ListMessages.Rounded(cell.Span),
            _ when tag.Length < _usual && _usual >= OfficialFigures => ListMessages.Shortened(cell.Span, tag.Length, _usual),
            _ => null,
        };
        return wrong is null ? tag : bag.Refuse<string>(wrong);
    }

    /// <summary>Ways of telling a spreadsheet that figures are text, which it saves with them: <c>="00101"</c> and <c>'00101</c>.</summary>
    public static string Unwrapped(string text)
    {
        var bare = text.Trim();
        return bare.StartsWith("=\"", StringComparison.Ordinal) && bare.EndsWith('"') && bare.Length > 3 ? bare[2..^1] : bare.TrimStart('\'');
    }

    /// <summary>Whether a spreadsheet has made a power of ten of it, and its figures are lost.</summary>
    public static bool IsExponent(string text) => Exponent().IsMatch(text);

    private static bool IsText(string text) => Unwrapped(text) != text.Trim();

    [GeneratedRegex("^#(#+|[A-Z0/]+[!?]?)$")]
    private static partial Regex SpreadsheetError();

    [GeneratedRegex("^[0-9]([.,][0-9]+)?[eE][+]?[0-9]+$")]
    private static partial Regex Exponent();

    [GeneratedRegex("^[0-9]+[.][0-9]+$|^[0-9]{1,3}(,[0-9]{3})+([.][0-9]+)?$")]
    private static partial Regex Fraction();
}
