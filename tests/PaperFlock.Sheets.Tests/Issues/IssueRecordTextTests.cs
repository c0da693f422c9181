using CsCheck;
using NodaTime;
using PaperFlock.Pdf;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Sheets.Tests.Issues;

public sealed class IssueRecordTextTests
{
    private static readonly IssueRecord Small = new(
        "HB-2027", "A4", false, [IssueLine.First(new(2026, 11, 25))],
        [new IssuedLeaf(new Leaf("JOBS 1", "JOBS 1 and 2", "Jobs", new(2027, 1, 2), [new LeafRow("scan", [new LeafCell("Sat 24 Oct"), new LeafCell("", new(2026, 10, 24))])]), 1, null)]);

    private static readonly Gen<string> Words = Gen.String[Gen.OneOf(Gen.Char[' ', '~'], Gen.Const('|'), Gen.Const('@'), Gen.Const('\\'), Gen.Const('ŵ')), 0, 12]
        .Select(w => string.Join(' ', w.Split(' ', StringSplitOptions.RemoveEmptyEntries)));

    [Fact]
    public void The_record_of_the_demo_pack_comes_back_as_it_was_written()
    {
        var record = PackComposer.Compose(Composed.HollinBank.Plan, FontLibrary.Measurer, PackRequest.Everything, null).Record!;
        var text = IssueRecordText.Write(record);
        Assert.Equal(text, IssueRecordText.Write(IssueRecordText.Read(text)!));
    }

    [Fact]
    public void Any_words_come_back_as_they_were_written() =>
        Gen.Select(Words, Words, Words, Gen.Int[0, 400], Gen.Bool, Gen.Bool).Sample((key, one, other, day, isDated, crlf) =>
        {
            var last = isDated ? new LocalDate(2026, 6, 1).PlusDays(day) : (LocalDate?)null;
            var record = Small with { Leaves = [new IssuedLeaf(new Leaf("A 1", "A", one, last, [new LeafRow(key, [new LeafCell(one, last), new LeafCell(other)], last), new LeafRow(other, [])]), 3, 2)] };
            var text = IssueRecordText.Write(record);
            var back = IssueRecordText.Read(crlf ? text.Replace("\n", "\r\n", StringComparison.Ordinal) : text)!;
            Assert.Equal(text, IssueRecordText.Write(back));
            Assert.Equal((record.Leaves[0].Leaf.Fingerprint, last, 3, 2), (back.Leaves[0].Leaf.Fingerprint, back.Leaves[0].Leaf.Last, back.Leaves[0].Issue, back.Leaves[0].Replaces));
        });

    [Fact]
    public void A_record_that_was_altered_or_cut_short_is_none()
    {
        var text = IssueRecordText.Write(Small);
        for (var i = 0; i < text.Length; i++)
        {
            Assert.Null(IssueRecordText.Read(text[..i]));
            Assert.Null(IssueRecordText.Read(text.Remove(i, 1)));
            Assert.Null(IssueRecordText.Read(text[..i] + (text[i] == 'x' ? 'y' : 'x') + text[(i + 1)..]));
        }

        Assert.NotNull(IssueRecordText.Read(text));
    }
}
