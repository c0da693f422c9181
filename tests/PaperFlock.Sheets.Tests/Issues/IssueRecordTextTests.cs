using NodaTime;
using PaperFlock.Pdf;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Sheets.Tests.Issues;

/// <summary>Records of format 1, which are read and no longer written.</summary>
public sealed class IssueRecordTextTests
{
    /// <summary>Written by the program before it kept records as JSON.</summary>
    private static readonly string HollinBank = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Issues", "hollin-bank.issues.txt"));

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void A_record_of_that_time_is_read_to_the_last_cell(string newLine)
    {
        var record = IssueRecordText.Read(HollinBank.ReplaceLineEndings(newLine))!;
        Assert.Equal(("HB-2027", false, 1, new LocalDate(2026, 11, 25), 77), (record.Pack, record.Last.Split, record.Last.Number, record.Last.On, record.Last.Leaves.Length));
        var stores = Assert.Single(record.Last.Leaves, l => l.Leaf.Id == "STOR 1").Leaf;
        var straw = Assert.Single(stores.Rows, r => r.Key.Name == "Bedding straw");
        Assert.Equal(("554 kg", "Sat 19 Dec", new LocalDate(2026, 12, 19)), (straw.Cells[1].Words, straw.Cells[3].Words, straw.Cells[3].Last));
        var handover = record.Last.Leaves[0].Leaf;
        Assert.Equal(("HAND-27DEC 1 and 2", new LocalDate(2027, 1, 2)), (handover.Label, handover.Last));
    }

    [Fact]
    public void A_record_that_was_altered_or_cut_short_is_none()
    {
        for (var i = 0; i < HollinBank.Length; i += 997)
        {
            Assert.Null(IssueRecordText.Read(HollinBank[..i]));
            Assert.Null(IssueRecordText.Read(HollinBank.Remove(i, 1)));
            Assert.Null(IssueRecordText.Read(HollinBank[..i] + (HollinBank[i] == 'x' ? 'y' : 'x') + HollinBank[(i + 1)..]));
        }
    }

    /// <summary>The sum holds, and it cannot have come about.</summary>
    [Theory]
    [InlineData("issue | 1 | 2026-11-25 | First", "issue | 0 | 2026-11-25 | First")]
    [InlineData("leaf | CALL 1 | issue 1", "leaf | CALL 1 | issue 7")]
    [InlineData("leaf | CALL 1", "leaf | HAND-27DEC 1")]
    public void A_forged_record_is_none(string old, string forged)
    {
        var text = EarlierRecord.Of(IssueRecordText.Read(HollinBank)!);
        Assert.NotNull(IssueRecordText.Read(text));
        Assert.Null(IssueRecordText.Read(EarlierRecord.WithSum(text[..text.LastIndexOf("sum", StringComparison.Ordinal)].Replace(old, forged, StringComparison.Ordinal))));
    }

    /// <summary>Nothing is printed again for the format's sake, and what is kept is from then on known by its keys.</summary>
    [Fact]
    public void A_pack_printed_before_is_taken_over()
    {
        var plan = Composed.HollinBank.Plan;
        var first = PackComposer.Compose(plan, FontLibrary.Measurer, PackRequest.Everything, null).Record!;
        var earlier = IssueRecordText.Read(EarlierRecord.Of(first))!;
        Assert.All(earlier.Last.Leaves.SelectMany(l => l.Leaf.Rows), row => Assert.Equal(RowKind.Earlier, row.Key.Kind));

        var changed = PackRequest.Everything with { Changed = true };
        Assert.True(PackComposer.Compose(plan, FontLibrary.Measurer, changed, earlier).Outcome!.IsNothing);
        var note = Composed.PlanOf(Composed.SampleText("hollin-bank").Replace("note: Needs a quiet corner", "note: Lame behind", StringComparison.Ordinal), Composed.HollinBankDay);
        var second = PackComposer.Compose(note, FontLibrary.Measurer, changed, earlier);
        Assert.Equal(["HAND-27DEC 1", "CARD-00101"], second.Outcome!.PutIn.Select(l => l.Leaf.Id));
        Assert.DoesNotContain(second.Record!.Last.Leaves.SelectMany(l => l.Leaf.Rows), row => row.Key.Kind == RowKind.Earlier);
    }
}
