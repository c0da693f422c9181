using NodaTime;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Sheets.Tests.Issues;

public sealed class RowDiffTests
{
    private static readonly LocalDate Day = new(2026, 12, 1);

    /// <summary>Rows are <c>key=words</c>, a paragraph <c>=words</c>; <c>~</c> before a row says that its day is over.</summary>
    [Theory]
    [InlineData("a=1 b=2 c=3", "a=1 b=2 c=3", "")]
    [InlineData("a=1 b=2 c=3", "a=1 b=5 c=3", "b: was 2")]
    [InlineData("a=1 c=3", "a=1 b=2 c=3", "b: new")]
    [InlineData("a=1 b=2 c=3", "a=1 c=3", "b: gone: 2")]
    [InlineData("a=1 b=2 c=3", "b=2 c=3 a=1", "a: moved")]
    [InlineData("a=1 b=2 c=3", "b=9 c=3 a=1", "a: moved|b: was 2")]
    [InlineData("=x a=1 =y", "=x a=1 =z", "was y")]
    [InlineData("=x a=1", "a=1 =z", "new: z|gone: x")]
    [InlineData("~a=1 b=2", "b=2", "")]
    [InlineData("~a=1 b=2", "~a=7 b=2", "")]
    [InlineData("a=", "a=1", "a: was blank")]
    public void A_row_that_says_something_else_is_found_and_one_that_stayed_is_not(string before, string now, string changes)
    {
        var found = RowDiff.Between(Rows(before), Rows(now), Day).Select(c => c.Words(Day)).Order(StringComparer.Ordinal);
        Assert.Equal(changes.Split('|', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal), found);
    }

    private static ImmutableArray<LeafRow> Rows(string text) =>
    [
        .. text.Split(' ').Select(row => row.TrimStart('~').Split('=') is [var key, var words]
            ? new LeafRow(RowKey.Named(key.Length > 0 ? RowKind.Ewe : RowKind.Paragraph, key) with { Last = row[0] == '~' ? Day.PlusDays(-1) : null }, [new LeafCell(words)])
            : throw new ArgumentException(row)),
    ];
}
