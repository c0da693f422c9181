using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CsCheck;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Pdf;
using PaperFlock.Sheets.Issues;
using PaperFlock.Sheets.Tests.WorstCases;

namespace PaperFlock.Sheets.Tests.Issues;

public sealed class IssueRecordTests
{
    private static readonly Leaf Calls = new("CALL 1", "CALL 1", "Call sheet", [new LeafRow(RowKey.Paragraph, [new LeafCell("Ring early.")])]);

    private static readonly PackIssue First = new(1, new(2026, 11, 25), "First issue: every sheet is new.", null, "A4", false, [new IssuedLeaf(Calls, 1)]);

    private static readonly PackIssue Second = new(
        2, new(2026, 12, 1), "JOBS 1.", 1, "A4", false,
        [
            new IssuedLeaf(new Leaf("JOBS 1", "JOBS 1 and 2", "Jobs", [new LeafRow(RowKey.Named(RowKind.Job, "scan"), [new LeafCell("Sat 24 Oct"), new LeafCell("", new(2026, 10, 24))])], new(2027, 1, 2)), 2, 1),
            new IssuedLeaf(Calls with { Rows = [.. Calls.Rows] }, 1),
        ]);

    private static readonly IssueRecord Small = new("Hollin Bank", "HB-2027", 1, [First, Second]);

    /// <summary>A leaf that stays is there once.</summary>
    [Fact]
    public void It_is_small_plain_json() => Assert.Equal(
        """
        {"format":"PaperFlock issues","version":3,"sum":"SUM","holding":"Hollin Bank","pack":"HB-2027","issues":[
        {"number":1,"on":"2026-11-25","what":"First issue: every sheet is new.","paper":"A4","split":false,"leaves":[{"leaf":0,"issue":1}]},
        {"number":2,"on":"2026-12-01","what":"JOBS 1.","paper":"A4","split":false,"leaves":[{"leaf":1,"issue":2,"replaces":1},{"leaf":0,"issue":1}],"since":1}],"leaves":[
        {"id":"CALL 1","label":"CALL 1","title":"Call sheet","rows":[
        {"key":{"kind":"Paragraph","id":"","name":""},"cells":[{"words":"Ring early."}]}]},
        {"id":"JOBS 1","label":"JOBS 1 and 2","title":"Jobs","rows":[
        {"key":{"kind":"Job","id":"scan","name":"scan"},"cells":[{"words":"Sat 24 Oct"},{"words":"","last":"2026-10-24"}]}],"last":"2027-01-02"}],"filed":1}
        """.ReplaceLineEndings(""),
        Encoding.UTF8.GetString(Small.ToBytes()).Replace(JsonNode.Parse(Small.ToBytes())!["sum"]!.GetValue<string>(), "SUM", StringComparison.Ordinal));

    /// <summary>Format 2, as the program wrote it until it kept every issue: the sum is over the same with an empty sum (XxHash128).</summary>
    [Fact]
    public void A_record_of_the_format_before_is_read()
    {
        const string Before = """{"format":"PaperFlock issues","version":2,"sum":"","record":{"pack":"HB-2027","paper":"A4","split":false,"issues":[{"number":1,"on":"2026-11-25","what":"First issue: every sheet is new."}],"leaves":[{"leaf":{"id":"CALL 1","label":"CALL 1","title":"Call sheet","rows":[{"key":{"kind":"Paragraph","id":"","name":""},"cells":[{"words":"Ring early."}]}]},"issue":1}]}}""";
        var sum = Convert.ToHexString(System.IO.Hashing.XxHash128.Hash(Encoding.UTF8.GetBytes(Before)));
        var written = Before.Replace("\"sum\":\"\"", $"\"sum\":\"{sum}\"", StringComparison.Ordinal);
        var record = IssueRecord.FromBytes(Encoding.UTF8.GetBytes(written)).Record!;
        Assert.Equal((null, "", "Ring early."), (record.Filed, record.Holding, record.Last.Leaves[0].Leaf.Rows[0].Cells[0].Words));
        Assert.True(record.IsOf("Hollin Bank", "HB-2027"));
        Assert.Equal(RecordFault.Altered, IssueRecord.FromBytes(Encoding.UTF8.GetBytes(written.Replace("early", "later", StringComparison.Ordinal))).Fault);
    }

    [Fact]
    public void Two_holdings_with_the_same_initials_do_not_mix()
    {
        Assert.True(Small.IsOf("Hollin Bank", "HB-2027"));
        Assert.False(Small.IsOf("Holly Brow", "HB-2027"));
        Assert.False(Small.IsOf("Hollin Bank", "HB-2028"));
    }

    [Theory]
    [InlineData("hollin-bank")]
    [InlineData("kanuka-flat")]
    public void The_record_of_a_sample_pack_comes_back_as_it_was_written_and_holds_no_telephone_number(string sample)
    {
        var composed = sample == "hollin-bank" ? Composed.HollinBank : Composed.KanukaFlat;
        var bytes = PackComposer.Compose(composed.Plan, FontLibrary.Measurer, PackRequest.Everything, null).Record!.ToBytes();
        Assert.Equal(bytes, IssueRecord.FromBytes(bytes).Record!.ToBytes());
        HoldsNone(bytes, composed.Plan.Flock);
    }

    /// <summary>Wherever a keeper writes one: a name, a note, a title, in full or as it is dialled from abroad.</summary>
    [Fact]
    public void A_number_in_any_text_of_the_flock_file_stays_out_of_the_record()
    {
        var composed = new FlockText
        {
            Contacts = ["{role: Vet, name: Fell Gate Vets, phone: 01632 960 202, note: or 01632-960-203}", "{role: Merchant, name: \"Mill (01632 960204)\", phone: \"960205\"}"],
            Away = ["{from: 2026-12-20, to: 2026-12-27, sitter: Tom on 01632 960 303, phone: +44 1632 960303}"],
            Jobs = ["{title: Ring Agnes 01632 960 404, on: 2026-12-10}"],
            Ewes = [FlockText.Ewe(1, "note: \"if lame, 01632 960 606\"", "Sorrel")],
        }.On(new(2026, 11, 25));
        var record = PackComposer.Compose(composed.Plan, FontLibrary.Measurer, PackRequest.Everything, null).Record!;
        HoldsNone(record.ToBytes(), composed.Plan.Flock);
        Assert.DoesNotContain("960", Said(record.ToBytes()), StringComparison.Ordinal);

        // Nothing that is hidden is taken for a change, and another number is one.
        var changed = PackRequest.Everything with { Changed = true };
        Assert.True(PackComposer.Compose(composed.Plan, FontLibrary.Measurer, changed, record).Outcome!.IsNothing);
    }

    [Fact]
    public void Another_number_is_a_change_and_is_not_said()
    {
        var first = PackComposer.Compose(Composed.HollinBank.Plan, FontLibrary.Measurer, PackRequest.Everything, null).Record!;
        var plan = Composed.PlanOf(Composed.SampleText("hollin-bank").Replace("01632 960 202", "01632 960 909", StringComparison.Ordinal), Composed.HollinBankDay);
        var putIn = PackComposer.Compose(plan, FontLibrary.Measurer, PackRequest.Everything with { Changed = true }, first).Outcome!.PutIn;
        var leaf = Assert.Single(putIn, l => l.Leaf.Id[..4] is not ("LOG-" or "HAND"));
        Assert.Equal(("CALL 1", "Vet: was another number"), (leaf.Leaf.Id, Assert.Single(leaf.Changes).Words(Composed.HollinBankDay)));
    }

    [Fact]
    public void Any_words_come_back_as_they_were_written() =>
        Gen.Select(Gen.String, Gen.String, Gen.Int[0, 400], Gen.Bool).Where(t => IsText(t.Item1) && IsText(t.Item2)).Sample((one, other, day, isDated) =>
        {
            var last = isDated ? new LocalDate(2026, 6, 1).PlusDays(day) : (LocalDate?)null;
            var row = new LeafRow(new RowKey(RowKind.Ewe, one, other, last), [new LeafCell(one, last), new LeafCell(other)]);
            var bytes = (Small with { Issues = [First, Second with { Leaves = [new IssuedLeaf(new Leaf("A 1", one, other, [row], last), 2)] }] }).ToBytes();
            var back = IssueRecord.FromBytes(bytes);
            Assert.Equal(RecordFault.None, back.Fault);
            var rows = back.Record!.Last.Leaves[0].Leaf.Rows;
            Assert.Equal((row.Key, one, last, other), (rows[0].Key, rows[0].Cells[0].Words, rows[0].Cells[0].Last, rows[0].Cells[1].Words));
            Assert.Equal(bytes, back.Record.ToBytes());
        });

    [Fact]
    public void One_that_was_cut_short_or_altered_by_a_byte_is_said_to_be_so()
    {
        var bytes = Small.ToBytes();
        Assert.Equal(RecordFault.None, IssueRecord.FromBytes(bytes).Fault);
        for (var i = 0; i < bytes.Length; i++)
        {
            IsNone(bytes[..i]);
            IsNone([.. bytes[..i], .. bytes[(i + 1)..]]);
            IsNone([.. bytes[..i], (byte)(bytes[i] == 'x' ? 'y' : 'x'), .. bytes[(i + 1)..]]);
            IsNone([.. bytes[..i], (byte)' ', .. bytes[i..]]);
        }

        static void IsNone(byte[] bytes)
        {
            var reading = IssueRecord.FromBytes(bytes);
            Assert.Null(reading.Record);
            Assert.Contains(reading.Fault, (IEnumerable<RecordFault>)[RecordFault.Altered, RecordFault.Foreign, RecordFault.Newer]);
        }
    }

    [Theory]
    [InlineData("", RecordFault.Foreign)]
    [InlineData("null", RecordFault.Foreign)]
    [InlineData("%PDF-1.7", RecordFault.Foreign)]
    [InlineData("{\"pack\":\"HB-2027\"}", RecordFault.Foreign)]
    [InlineData("{\"format\":\"Another\",\"version\":2}", RecordFault.Foreign)]
    [InlineData("{\"format\":\"PaperFlock issues\",\"version\":4,\"leaf\":[]}", RecordFault.Newer)]
    [InlineData("{\"format\":\"PaperFlock issues\",\"version\":2,\"sum\":\"\",\"record\":null}", RecordFault.Altered)]
    [InlineData("{\"format\":\"PaperFlock issues\",\"version\":2,\"sum\":\"\",\"record\":{\"pack\":\"\\ud800\"}}", RecordFault.Altered)]
    public void What_is_no_record_is_said_to_be_none(string text, RecordFault fault) =>
        Assert.Equal(new RecordReading(null, fault), IssueRecord.FromBytes(Encoding.UTF8.GetBytes(text)));

    [Fact]
    public void Nothing_is_read_that_is_far_too_large_or_too_deep()
    {
        Assert.Equal(RecordFault.TooLarge, IssueRecord.FromBytes(new byte[(1 << 25) + 1]).Fault);
        Assert.Equal(RecordFault.TooLarge, IssueRecord.FromBytes(Encoding.UTF8.GetBytes($"[{string.Join(',', Enumerable.Repeat("1", 5_000_001))}]")).Fault);
        Assert.Equal(RecordFault.Foreign, IssueRecord.FromBytes(Encoding.UTF8.GetBytes(new string('[', 1_000_000))).Fault);
    }

    /// <summary>Written by the very same program, and it cannot have come about.</summary>
    [Fact]
    public void A_record_that_contradicts_itself_is_not_followed()
    {
        IssueRecord[] forged =
        [
            Small with { Issues = [] },
            Small with { Issues = [Second, First] },
            Small with { Issues = [First, First] },
            Small with { Filed = 3 },
            Forged(Second with { Since = 2 }),
            Forged(Second with { Leaves = [Second.Leaves[0], Second.Leaves[0]] }),
            Forged(Second with { Leaves = [Second.Leaves[0] with { Issue = 3 }] }),
            Forged(Second with { Leaves = [Second.Leaves[0] with { Issue = 0 }] }),
            Forged(Second with { Leaves = [Second.Leaves[0] with { Replaces = 2 }] }),
        ];
        Assert.All(forged, record => Assert.Equal(RecordFault.Altered, IssueRecord.FromBytes(record.ToBytes()).Fault));
    }

    private static IssueRecord Forged(PackIssue second) => Small with { Issues = [First, second] };

    private static void HoldsNone(byte[] bytes, Flock flock)
    {
        var text = new string([.. Said(bytes).Where(c => char.IsLetterOrDigit(c))]);
        var numbers = flock.Holding.Contacts.Select(c => c.Phone).Concat(flock.KeeperDays.Away.Select(a => a.Phone)).OfType<string>().ToArray();
        Assert.NotEmpty(numbers);
        Assert.All(numbers, number => Assert.DoesNotContain(new string([.. number.Where(char.IsLetterOrDigit)]), text, StringComparison.Ordinal));
    }

    /// <summary>All that is in it but fingerprints, which may have any figures.</summary>
    private static string Said(byte[] bytes) => Regex.Replace(Encoding.UTF8.GetString(bytes), "#?[0-9A-F]{32}", "");

    /// <summary>What UTF-8 can hold: no half of a pair alone.</summary>
    private static bool IsText(string words) => Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(words)) == words;
}
