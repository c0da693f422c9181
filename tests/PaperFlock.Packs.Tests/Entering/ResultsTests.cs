using System.Text;

namespace PaperFlock.Packs.Tests.Entering;

/// <summary>Results typed in a spreadsheet, with what spreadsheets do to them.</summary>
public sealed class ResultsTests
{
    /// <summary>Sheet, day, what the spreadsheet saved, what changes in the file.</summary>
    [Theory]
    [InlineData("scan", "2026-11-25", "tag,scan\nZZ 0123456 00103,2\n", "+ scan: 2")]
    [InlineData("scan", "2026-11-25", "Lambs;Ear Tag;Stage\r\n1;ZZ 0123456 00103;late\r\n;ZZ 0123456 00102;\r\n;;\r\n", "+ scan: 1|+ scan-stage: late")]
    [InlineData("scan", "2026-11-25", "sep=;\nEID;Result\n\"ZZ 0123456 00103\";twins\n", "+ scan: 2")]
    [InlineData("scan", "2026-11-25", "TAG\tName\tScanned\nZZ 0123456 00102\tCampion\t0\n", "+ scan: 0")]
    [InlineData("marks", "2026-11-25", "tag,marked\nZZ 0123456 00103,14/08/2026\nZZ 0123456 00103,31-Aug-26\nZZ 0123456 00102,2026-08-12\n", "+ marks: [2026-08-14, 2026-08-31]")]
    [InlineData("marks", "2026-11-25", "tag,mark 1,mark 2\nZZ 0123456 00103,14 aug,yellow 15\n", "+ marks: [2026-08-14, 2026-08-15]")]
    [InlineData("teeth-toes-teats", "2026-08-20", "tag,Udder,Feet,Mouth,BCS\nZZ 0123456 00103,Lost-half,sound,worn,\"2,5\"\n", "+ condition: 2.5|+ teeth: worn|+ toes: sound|+ teats: lost-half")]
    [InlineData("lambed", "2027-02-20", "tag,date,time,alive,dead,help\nZZ 0123456 00103,14/01/2027,03:20,2,0,vet\n", "+ lambed: 2027-01-14|+ lambed-time: 03:20|+ lambs-alive: 2|+ lambs-dead: 0|+ lambing-help: vet")]
    public void Columns_are_known_by_their_headings_in_any_order(string sheet, string day, string csv, string change)
    {
        using var bench = Bench(csv);
        var outcome = bench.Run("enter", sheet, FourEwes.File, "--from", "results.csv", "--as-of", day);
        Assert.Equal("", outcome.Error);
        Assert.Equal(0, outcome.Status);
        Assert.Equal(
            change.Split('|').Order(StringComparer.Ordinal),
            FourEwes.Difference(FourEwes.Text, FourEwes.After(bench)).Split('\n').Order(StringComparer.Ordinal));
    }

    /// <summary>Spaces, hyphens, capitals and zeros off the front are no matter; what has lost its figures is nobody's.</summary>
    [Theory]
    [InlineData("ZZ0123456 00103")]
    [InlineData("zz-0123456-00103")]
    [InlineData("00103")]
    [InlineData("=\"\"00103\"\"")]
    public void A_tag_is_found_however_it_is_written(string tag)
    {
        using var bench = Bench($"tag;scan\n\"{tag}\";2\n");
        var outcome = bench.Run("enter", "scan", FourEwes.File, "--from", "results.csv");
        Assert.Equal("", outcome.Error);
        Assert.Equal("+ scan: 2", FourEwes.Difference(FourEwes.Text, FourEwes.After(bench)));
    }

    [Theory]
    [InlineData("1.23457E+11", "LST011: the spreadsheet has turned this tag into a number", "give the whole column the format Text")]
    [InlineData("1,23457E+11", "LST011", "give the whole column the format Text")]
    [InlineData("ZZ 0123456 00999", "CSV014: no ewe has the tag `ZZ 0123456 00999`, or one that ends so", "check the ear, and that she is in the flock file")]
    public void A_tag_that_was_spoilt_is_not_guessed_at_but_explained(string tag, string complaint, string advice)
    {
        using var bench = Bench($"tag;scan\n{tag};2\n");
        bench.Write(FourEwes.File, FourEwes.Text + "\n  - {tag: \"0123456700105\", group: Orchard}\n");
        var before = FourEwes.After(bench);
        var outcome = bench.Run("enter", "scan", FourEwes.File, "--from", "results.csv");
        Assert.Equal(1, outcome.Status);
        Assert.Contains($"results.csv:2:1: error {complaint}", outcome.Error, StringComparison.Ordinal);
        Assert.Contains(advice, outcome.Error, StringComparison.Ordinal);
        Assert.Equal(before, FourEwes.After(bench));
    }

    private const string ManyFaults = "tag,scan,stage,vet\nZZ 0123456 00103,9,,x\n,2,,\nZZ 0123456 00101,0,late,\nZZ 0123456 00102,1,,\nZZ 0123456 00104,1,,\nZZ 0123456 00104,2,,\nZZ 1,1,,\nZZ 0123456 00101,\"1\"x,,\n";

    [Fact]
    public void Every_bad_row_is_named_at_once_and_nothing_is_written()
    {
        using var bench = Bench(ManyFaults);
        var outcome = bench.Run("enter", "scan", FourEwes.File, "--from", "results.csv");
        Assert.Equal(1, outcome.Status);
        string[] places = ["1:16: warning CSV020", "2:18: warning CSV016: left out, of Sorrel: `9` is no count", "3:1: error CSV013", "4:20: warning CSV016", "7:1: error CSV015", "8:1: error CSV014", "9:21: error CSV001"];
        Assert.All(places, p => Assert.Contains($"results.csv:{p}", outcome.Error, StringComparison.Ordinal));
        Assert.Contains("    ZZ 0123456 00103,9,,x\n                     ^\n    write 0 to 5\n", outcome.Error, StringComparison.Ordinal);
        Assert.Contains("4 errors, 3 warnings", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(FourEwes.Text, FourEwes.After(bench));
    }

    /// <summary>Of two rows for one ewe neither is good: only the keeper knows which is right. A ewe is taken without a cell that cannot be.</summary>
    [Fact]
    public void The_good_rows_are_entered_only_when_the_keeper_says_so()
    {
        using var bench = Bench(ManyFaults);
        var outcome = bench.Run("enter", "scan", FourEwes.File, "--from", "results.csv", "--good-rows");
        Assert.Equal(1, outcome.Status);
        Assert.Equal(
            "- - {tag: ZZ 0123456 00101, name: Bracken, group: Paddock}\n+ - {tag: ZZ 0123456 00101, name: Bracken, group: Paddock, scan: 0}\n+ scan: 1",
            FourEwes.Difference(FourEwes.Text, FourEwes.After(bench)));
        Assert.Contains("Campion  ZZ 0123456 00102  nothing written down  1 lamb\n2 entered, 0 changed.", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_ewe_is_taken_without_a_cell_that_cannot_be()
    {
        using var bench = Bench("tag,date,alive,help\n00103,14/01/2027,2,perhaps\n00102,15/01/2028,1,\n");
        var outcome = bench.Run("enter", "lambed", FourEwes.File, "--from", "results.csv", "--as-of", "2027-01-20");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("results.csv:2:20: warning CSV016: left out, of Sorrel: `perhaps` is no help", outcome.Error, StringComparison.Ordinal);
        Assert.Contains("results.csv:3:7: warning CSV016: left out, of Campion: `15/01/2028` ", outcome.Error, StringComparison.Ordinal);
        Assert.Equal("+ lambed: 2027-01-14\n+ lambs-alive: 2", FourEwes.Difference(FourEwes.Text, FourEwes.After(bench)));
    }

    /// <summary>At a terminal the same may be undone as after typing.</summary>
    [Fact]
    public void Rows_of_a_spreadsheet_can_be_undone_too()
    {
        using var bench = new Workbench { AtAKeyboard = true, Answers = "-1\n\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        bench.Write("results.csv", "tag,scan\n00103,2\n00102,1\n");
        Assert.Equal(0, bench.Run("enter", "scan", FourEwes.File, "--from", "results.csv").Status);
        Assert.Equal("+ scan: 1", FourEwes.Difference(FourEwes.Text, FourEwes.After(bench)));
    }

    [Theory]
    [InlineData("", "LST001")]
    [InlineData("scan\n2\n", "LST002")]
    [InlineData("tag,weight\nZZ 0123456 00103,2\n", "CSV011")]
    [InlineData("tag,scan,lambs\nZZ 0123456 00103,2,2\n", "CSV012")]
    public void A_table_without_the_right_columns_is_refused(string csv, string code)
    {
        using var bench = Bench(csv);
        var outcome = bench.Run("enter", "scan", FourEwes.File, "--from", "results.csv");
        Assert.Equal(1, outcome.Status);
        Assert.Contains(code, outcome.Error, StringComparison.Ordinal);
        Assert.Equal(FourEwes.Text, FourEwes.After(bench));
    }

    /// <summary>Older spreadsheets save one byte a character, some save UTF-16, some put a byte order mark.</summary>
    [Theory]
    [InlineData("utf-8")]
    [InlineData("utf-16")]
    [InlineData("iso-8859-1")]
    public void The_encoding_is_found_out(string name)
    {
        var encoding = Encoding.GetEncoding(name);
        using var bench = Bench("");
        File.WriteAllBytes(bench.PathOf("results.csv"), [.. encoding.Preamble, .. encoding.GetBytes("name,tag,scan\nBrôn,ZZ 0123456 00103,9\n")]);
        var outcome = bench.Run("enter", "scan", FourEwes.File, "--from", "results.csv");
        Assert.Contains("results.csv:2:23: warning CSV016", outcome.Error, StringComparison.Ordinal);
        Assert.Contains("    Brôn,ZZ 0123456 00103,9\n", outcome.Error, StringComparison.Ordinal);
    }

    /// <summary>A ewe kept back is not on the sheet, and a lambing of hers does not agree with the file.</summary>
    [Fact]
    public void Rows_that_do_not_agree_with_the_flock_file_are_refused_with_its_own_words()
    {
        using var bench = Bench("tag,scan\nZZ 0123456 00103,2\nZZ 0123456 00104,1\n");
        bench.Write(FourEwes.File, FourEwes.Text + "\n    to-tup: no\n");
        var before = FourEwes.After(bench);
        var outcome = bench.Run("enter", "scan", FourEwes.File, "--from", "results.csv");
        Assert.Equal(1, outcome.Status);
        Assert.Contains("warning CSV021: ZZ 0123456 00104 is not on the sheet", outcome.Error, StringComparison.Ordinal);
        Assert.Contains("error FLK059", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(before, FourEwes.After(bench));

        outcome = bench.Run("enter", "scan", FourEwes.File, "--from", "results.csv", "--good-rows");
        Assert.Equal(1, outcome.Status);
        Assert.Equal("+ scan: 2", FourEwes.Difference(before, FourEwes.After(bench)));
    }

    private static Workbench Bench(string csv)
    {
        var bench = new Workbench();
        bench.Write(FourEwes.File, FourEwes.Text);
        bench.Write("results.csv", csv);
        return bench;
    }
}
