using System.Text;
using PaperFlock.Flocks.Editing;

namespace PaperFlock.Flocks.Tests.Editing;

/// <summary>One change of one layout at a time, to the letter.</summary>
public sealed class EditTests
{
    private const string Head = "paperflock: 1\nholding: {name: Hollin Bank, location: {latitude: 54.46, longitude: -2.74}, time-zone: Europe/London}\nseason: {tup-in: 2026-08-10}\n";

    private static readonly FlockPlace First = FlockPlace.Ewe(0);

    private static SetKey Scan(string count) => new(First, "scan", FlockValue.Word(count));

    private static AddToList Mark(string day) => new(First, "marks", FlockValue.Word(day));

    /// <summary>Before, after; the first ewe is scanned and carries 2.</summary>
    [Theory]
    [InlineData("ewes:\n  - tag: Z1\n", "ewes:\n  - tag: Z1\n    scan: 2\n")]
    [InlineData("ewes:\n  - tag: Z1", "ewes:\n  - tag: Z1\n    scan: 2")]
    [InlineData("ewes:\n  - tag: Z1\n    name: Bracken   # bold\n\n  # the next\n  - tag: Z2\n", "ewes:\n  - tag: Z1\n    name: Bracken   # bold\n    scan: 2\n\n  # the next\n  - tag: Z2\n")]
    [InlineData("ewes:\n  - tag: Z1\n    note: Quiet\n    marks: []\n", "ewes:\n  - tag: Z1\n    note: Quiet\n    marks: []\n    scan: 2\n")]
    [InlineData("ewes:\n  - tag: Z1\n    # not seen yet\n    note: Quiet\n", "ewes:\n  - tag: Z1\n    scan: 2\n    # not seen yet\n    note: Quiet\n")]
    [InlineData("ewes:\n  - note: Quiet\n    tag: Z1\n", "ewes:\n  - note: Quiet\n    tag: Z1\n    scan: 2\n")]
    [InlineData("ewes:\n  - tag: Z1\n    scan: 1   # by ear\n", "ewes:\n  - tag: Z1\n    scan: 2   # by ear\n")]
    [InlineData("ewes:\n  - tag: Z1\n    scan: \"1\"\n", "ewes:\n  - tag: Z1\n    scan: \"2\"\n")]
    [InlineData("ewes:\n  - tag: Z1\n    'scan':\t1\t# by ear\n", "ewes:\n  - tag: Z1\n    'scan':\t2\t# by ear\n")]
    [InlineData("ewes:\n  - tag: Z1\n    scan:\n    note: Quiet\n", "ewes:\n  - tag: Z1\n    scan: 2\n    note: Quiet\n")]
    [InlineData("ewes:\n  - tag: Z1\n    scan:   # not yet\n", "ewes:\n  - tag: Z1\n    scan: 2   # not yet\n")]
    [InlineData("ewes:\n  - tag: Z1\n    scan: |-  # odd\n      1\n\n    note: Quiet\n", "ewes:\n  - tag: Z1\n    scan: 2  # odd\n\n    note: Quiet\n")]
    [InlineData("ewes:\n-   tag: Z1\n    note: |\n      Quiet: always\n\n      # no comment\n\n-   tag: Z2\n", "ewes:\n-   tag: Z1\n    scan: 2\n    note: |\n      Quiet: always\n\n      # no comment\n\n-   tag: Z2\n")]
    [InlineData("ewes:\n  -\n    # hers\n    tag: Z1\n    name: A\n      B\n", "ewes:\n  -\n    # hers\n    tag: Z1\n    name: A\n      B\n    scan: 2\n")]
    [InlineData("ewes:\n  - ? tag\n    : Z1\n    ? name\n    : Bracken\n", "ewes:\n  - ? tag\n    : Z1\n    ? name\n    : Bracken\n    scan: 2\n")]
    [InlineData("ewes:\n  - tag: Z1\n    ? scan\n", "ewes:\n  - tag: Z1\n    ? scan\n    : 2\n")]
    [InlineData("ewes:\n  - {tag: Z1}\n", "ewes:\n  - {tag: Z1, scan: 2}\n")]
    [InlineData("ewes:\n  - { tag: Z1 , note: Quiet }  # c\n", "ewes:\n  - { tag: Z1, scan: 2 , note: Quiet }  # c\n")]
    [InlineData("ewes:\n  - {tag: Z1, scan, note: Quiet}\n", "ewes:\n  - {tag: Z1, scan: 2, note: Quiet}\n")]
    [InlineData("ewes:\n  - {tag: Z1, scan: , note: Quiet}\n", "ewes:\n  - {tag: Z1, scan: 2 , note: Quiet}\n")]
    [InlineData("ewes:\n  - {\n      tag: Z1,   # left ear\n      name: Bracken   # bold\n    }\n", "ewes:\n  - {\n      tag: Z1,   # left ear\n      name: Bracken, scan: 2   # bold\n    }\n")]
    [InlineData("ewes: [tag: Z1, tag: Z2]\n", "ewes: [{tag: Z1, scan: 2}, tag: Z2]\n")]
    [InlineData("ewes: [{\"tag\": \"Z1\"}]\n", "ewes: [{\"tag\": \"Z1\", \"scan\": 2}]\n")]
    [InlineData("ewes:\n  - tag: Z1\n...\n# the end\n", "ewes:\n  - tag: Z1\n    scan: 2\n...\n# the end\n")]
    public void A_key_is_set(string before, string after) => Check(before, after, Scan("2"));

    /// <summary>Before, after; the first ewe was marked on 20 August too.</summary>
    [Theory]
    [InlineData("ewes:\n  - tag: Z1\n", "ewes:\n  - tag: Z1\n    marks: [2026-08-20]\n")]
    [InlineData("ewes:\n  - tag: Z1\n    marks:   # none\n", "ewes:\n  - tag: Z1\n    marks: [2026-08-20]   # none\n")]
    [InlineData("ewes:\n  - tag: Z1\n    marks: []\n", "ewes:\n  - tag: Z1\n    marks: [2026-08-20]\n")]
    [InlineData("ewes:\n  - tag: Z1\n    marks: [2026-08-14]   # yellow\n", "ewes:\n  - tag: Z1\n    marks: [2026-08-14, 2026-08-20]   # yellow\n")]
    [InlineData("ewes:\n  - tag: Z1\n    marks: [ 2026-08-14, ]\n", "ewes:\n  - tag: Z1\n    marks: [ 2026-08-14, 2026-08-20, ]\n")]
    [InlineData("ewes:\n  - tag: Z1\n    marks: [\n      2026-08-14   # yellow\n    ]\n", "ewes:\n  - tag: Z1\n    marks: [\n      2026-08-14, 2026-08-20   # yellow\n    ]\n")]
    [InlineData("ewes:\n  - tag: Z1\n    marks:\n    - 2026-08-14   # yellow\n\n", "ewes:\n  - tag: Z1\n    marks:\n    - 2026-08-14   # yellow\n    - 2026-08-20\n\n")]
    [InlineData("ewes:\n  - tag: Z1\n    marks:\n        -   2026-08-14\n    note: Quiet\n", "ewes:\n  - tag: Z1\n    marks:\n        -   2026-08-14\n        -   2026-08-20\n    note: Quiet\n")]
    public void An_item_is_added(string before, string after) => Check(before, after, Mark("2026-08-20"));

    [Theory]
    [InlineData("ewes:\n  - tag: Z1\n    scan: 2\n    note: Quiet\n", "ewes:\n  - tag: Z1\n    note: Quiet\n")]
    [InlineData("ewes:\n  - tag: Z1\n    scan: 2   # by ear\n    note: Quiet\n", "ewes:\n  - tag: Z1\n    scan:    # by ear\n    note: Quiet\n")]
    [InlineData("ewes:\n  - scan: 2\n    tag: Z1\n", "ewes:\n  - scan: \n    tag: Z1\n")]
    [InlineData("ewes:\n  - tag: Z1\n    scan: 2", "ewes:\n  - tag: Z1")]
    [InlineData("ewes:\n  - {tag: Z1, scan: 2, note: Quiet}\n", "ewes:\n  - {tag: Z1, note: Quiet}\n")]
    [InlineData("ewes:\n  - {scan: 2, tag: Z1}\n", "ewes:\n  - {tag: Z1}\n")]
    [InlineData("ewes:\n  - tag: Z1\n", "ewes:\n  - tag: Z1\n")]
    public void A_key_is_cleared(string before, string after) => Check(before, after, new ClearKey(First, "scan"));

    [Theory]
    [InlineData("marks: [2026-08-14, 2026-08-20]", 0, "marks: [2026-08-20]")]
    [InlineData("marks: [2026-08-14, 2026-08-20]", 1, "marks: [2026-08-14]")]
    [InlineData("marks:\n      - 2026-08-14\n      - 2026-08-20", 0, "marks:\n      - 2026-08-20")]
    [InlineData("marks:\n      - 2026-08-14   # yellow\n      - 2026-08-20", 0, "marks:\n      # yellow\n      - 2026-08-20")]
    public void An_item_is_taken_out(string before, int index, string after) =>
        Check($"ewes:\n  - tag: Z1\n    {before}\n", $"ewes:\n  - tag: Z1\n    {after}\n", new RemoveFromList(First, "marks", index));

    [Fact]
    public void The_only_item_is_taken_out_with_its_key() =>
        Check("ewes:\n  - tag: Z1\n    marks: [2026-08-14]\n", "ewes:\n  - tag: Z1\n", new RemoveFromList(First, "marks", 0));

    [Theory]
    [InlineData(0, "ewes:\n  - tag: Z1   # left ear\n    name: Bracken\n    # gone to the neighbour\n\n  # the next\n  - tag: Z2\n", "ewes:\n\n  # the next\n  - tag: Z2\n")]
    [InlineData(1, "ewes:\n  - tag: Z1\n    # hers\n  - tag: Z2\n    scan: 2", "ewes:\n  - tag: Z1\n    # hers\n")]
    [InlineData(0, "ewes:\n  - {tag: Z1, scan: 2}  # hers\n  - {tag: Z2}\n", "ewes:\n  - {tag: Z2}\n")]
    public void A_ewe_is_taken_out_with_what_is_said_of_her(int index, string before, string after) => Check(before, after, new RemoveFromList(FlockPlace.Top, "ewes", index));

    /// <summary>Two new ewes after the last: one with a tag a spreadsheet would spoil, one with a name that YAML would.</summary>
    [Theory]
    [InlineData("ewes:\n  - tag: Z1\n", "ewes:\n  - tag: Z1\n  - tag: '00102'\n  - tag: Z3\n    name: '#3: Sorrel'\n    scan: 2\n")]
    [InlineData("ewes:\n- tag: Z1", "ewes:\n- tag: Z1\n- tag: '00102'\n- tag: Z3\n  name: '#3: Sorrel'\n  scan: 2")]
    [InlineData("ewes:\n  -   tag: Z1\n      # about her\n  # about all\njobs: []\n", "ewes:\n  -   tag: Z1\n      # about her\n  -   tag: '00102'\n  -   tag: Z3\n      name: '#3: Sorrel'\n      scan: 2\n  # about all\njobs: []\n")]
    [InlineData("ewes:\n  - tag: Z1\n\n  - tag: Z2\n", "ewes:\n  - tag: Z1\n\n  - tag: Z2\n\n  - tag: '00102'\n\n  - tag: Z3\n    name: '#3: Sorrel'\n    scan: 2\n")]
    [InlineData("ewes:\n  - {tag: Z1}   # c\n", "ewes:\n  - {tag: Z1}   # c\n  - {tag: '00102'}\n  - {tag: Z3, name: '#3: Sorrel', scan: 2}\n")]
    [InlineData("ewes: [{tag: Z1}]\n", "ewes: [{tag: Z1}, {tag: '00102'}, {tag: Z3, name: '#3: Sorrel', scan: 2}]\n")]
    [InlineData("ewes: [\n  {\"tag\": \"Z1\"}   # c\n]\n", "ewes: [\n  {\"tag\": \"Z1\"},   # c\n  {\"tag\": \"00102\"},\n  {\"tag\": \"Z3\", \"name\": \"#3: Sorrel\", \"scan\": 2}\n]\n")]
    public void Ewes_are_added(string before, string after) => Check(
        before,
        after,
        AddToList.Ewes(
            FlockValue.Section(("tag", FlockValue.Text("00102"))),
            FlockValue.Section(("tag", FlockValue.Text("Z3")), ("name", FlockValue.Text("#3: Sorrel")), ("scan", FlockValue.Word("2")))));

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void Line_breaks_and_a_byte_order_mark_stay_as_they_are(string newLine)
    {
        var before = (Head + "ewes:\n  - tag: Z1\n").Replace("\n", newLine, StringComparison.Ordinal);
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(before)];
        var edit = Open(bytes).Apply(Scan("2"));
        Assert.Equal([.. bytes, .. Encoding.UTF8.GetBytes($"    scan: 2{newLine}")], edit.File!.ToBytes());
    }

    [Fact]
    public void A_key_of_any_section_can_be_set()
    {
        var edit = Open(Head + "ewes:\n  - tag: Z1\n").Apply(new SetKey(FlockPlace.Top.Key("season"), "tup-out", FlockValue.Word("2026-09-21")));
        Assert.Contains("season: {tup-in: 2026-08-10, tup-out: 2026-09-21}\n", edit.File!.Text, StringComparison.Ordinal);
    }

    /// <summary>A scan stage alone would be refused: what counts is the file after the last change.</summary>
    [Fact]
    public void Several_changes_are_made_together()
    {
        var edit = Open(Head + "ewes:\n  - tag: Z1\n").Apply(new SetKey(First, "scan-stage", FlockValue.Word("early")), Scan("2"));
        Assert.Equal(Head + "ewes:\n  - tag: Z1\n    scan: 2\n    scan-stage: early\n", edit.File!.Text);
    }

    /// <summary>The reader has the last word, and its diagnostic points into the text that was not written.</summary>
    [Fact]
    public void What_the_reader_refuses_is_refused_with_its_place()
    {
        var edit = Open(Head + "ewes:\n  - tag: Z1\n").Apply(Mark("2027-08-20"));
        Assert.Null(edit.File);
        var found = Assert.Single(edit.Diagnostics);
        Assert.Equal("FLK057", found.Code);
        Assert.Equal("2027-08-20", edit.Source.TextOf(found.Span));
    }

    /// <summary>A comment inside the list would be lost with it.</summary>
    [Fact]
    public void A_layout_with_no_safe_way_is_refused()
    {
        var edit = Open(Head + "ewes:\n  - tag: Z1\n    marks:\n      # seen by Tom\n      - 2026-08-14\n").Apply(
            new SetKey(First, "marks", FlockValue.List(FlockValue.Word("2026-08-20"))));
        Assert.Null(edit.File);
        Assert.Equal([FlockEdit.CannotEdit], edit.Diagnostics.Select(d => d.Code));
    }

    [Fact]
    public void A_file_with_errors_is_not_opened()
    {
        Assert.Null(FlockFile.Open("flock.yaml", "paperflock: 1\n"u8, out var reading));
        Assert.NotEmpty(reading.Diagnostics);
    }

    [Fact]
    public void A_place_that_is_not_there_is_a_fault_of_the_program() =>
        Assert.Throws<ArgumentException>(() => Open(Head + "ewes:\n  - tag: Z1\n").Apply(new SetKey(FlockPlace.Ewe(1), "scan", FlockValue.Word("2"))));

    private static void Check(string before, string after, FlockChange change)
    {
        var edit = Open(Head + before).Apply(change);
        Assert.Equal("", Diagnostics.DiagnosticRenderer.Render(edit.Source, [.. edit.Diagnostics.Where(d => d.Severity == Diagnostics.Severity.Error)]));
        Assert.Equal(Head + after, edit.File!.Text);
    }

    private static FlockFile Open(string text) => Open(Encoding.UTF8.GetBytes(text));

    private static FlockFile Open(byte[] bytes)
    {
        var file = FlockFile.Open("flock.yaml", bytes, out var reading);
        Assert.Equal("", Diagnostics.DiagnosticRenderer.Render(reading.Source, reading.Diagnostics));
        return file!;
    }
}
