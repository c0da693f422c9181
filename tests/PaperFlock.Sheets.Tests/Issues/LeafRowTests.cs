using NodaTime;
using PaperFlock.Pdf;
using PaperFlock.Sheets.Issues;
using PaperFlock.Sheets.Tests.WorstCases;

namespace PaperFlock.Sheets.Tests.Issues;

/// <summary>A row is known by its key and never by its words.</summary>
public sealed class LeafRowTests
{
    private static readonly LocalDate First = new(2026, 11, 25);

    [Theory]
    [InlineData("a b c", "a b c", true)]
    [InlineData("a b c", "x b c", false)]
    [InlineData("a b c", "a b x", false)]
    [InlineData("a b c", "a b", false)]
    public void Rows_say_the_same_when_every_cell_does(string one, string other, bool same) => Assert.Equal(same, Row(one).SaysOn(First, Row(other)));

    [Fact]
    public void A_cell_that_is_over_counts_no_more()
    {
        var row = new LeafRow(RowKey.Paragraph, [new LeafCell("order by Tue 1 Dec", new(2026, 12, 1))]);
        var other = new LeafRow(RowKey.Paragraph, [new LeafCell("at once", new(2026, 12, 1))]);
        Assert.False(row.SaysOn(new(2026, 12, 1), other));
        Assert.True(row.SaysOn(new(2026, 12, 2), other));
    }

    /// <summary>A title that looks like the last day of something is a title: the job still counts when that day is past.</summary>
    [Fact]
    public void A_job_whose_title_ends_in_a_date_is_printed_again_when_it_moves_after_that_date()
    {
        var record = PackComposer.Compose(Plan("2026-12-20", First), FontLibrary.Measurer, PackRequest.Everything, null).Record!;
        var day = new LocalDate(2026, 12, 5);
        var outcome = PackComposer.Compose(Plan("2026-12-22", day), FontLibrary.Measurer, PackRequest.Everything with { Changed = true }, record).Outcome!;
        Assert.Contains(outcome.PutIn, l => l.Leaf.Id.StartsWith("JOBS", StringComparison.Ordinal) && l.Changes.Any(c => c.Words(day).StartsWith("Tip trailer hired, to 2026-12-01: ", StringComparison.Ordinal)));
    }

    private static Planning.SeasonPlan Plan(string on, LocalDate asOf) => Composed.PlanOf(
        new FlockText { Jobs = [$"{{title: \"Tip trailer hired, to 2026-12-01\", on: {on}}}"], Ewes = [.. FlockText.Many(4)] }.ToString(), asOf);

    private static LeafRow Row(string cells) => new(RowKey.Paragraph, [.. cells.Split(' ').Select(c => new LeafCell(c))]);
}
