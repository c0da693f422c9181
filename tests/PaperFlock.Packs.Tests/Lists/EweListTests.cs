using System.Text;
using PaperFlock.Cli;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Packs.Tests.Lists;

/// <summary>Lists of ewes as spreadsheets save them, with their usual damage, through the commands that take them.</summary>
public sealed class EweListTests
{
    private const string Good =
        """
        tag,name,born,weight kg,score,notes
        ZZ 0123456 00101,Bracken,2021,72,3.5,Needs a quiet corner
        ZZ 0123456 00102,Sorrel,2022,70.5,3,
        ZZ 0123456 00103,,2020,,,"Jumps; kicks, too"

        """;

    [Fact]
    public void A_list_becomes_a_first_flock_file_with_every_row_reported()
    {
        using var bench = new Workbench();
        var begun = Begin(bench, Good);
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        Assert.Contains("ewes.csv: 3 rows taken, none refused\n  line 2: ZZ 0123456 00101  Bracken\n  line 3: ZZ 0123456 00102  Sorrel\n  line 4: ZZ 0123456 00103\n", begun.Out, StringComparison.Ordinal);
        var flock = Flock(bench, "f.yaml");
        Assert.Equal(["ZZ 0123456 00101", "ZZ 0123456 00102", "ZZ 0123456 00103"], flock.Ewes.Select(e => e.Tag));
        Assert.Equal([72m, 70.5m, null], flock.Ewes.Select(e => e.Weight?.Kilograms));
        Assert.Equal([3.5m, 3m, null], flock.Ewes.Select(e => e.Condition));
        Assert.Equal("Jumps; kicks, too", flock.Ewes[2].Note);
        var check = bench.Run("check", "f.yaml");
        Assert.Equal(ExitStatus.Clean, check.Status);
        Assert.Contains("FLK164", check.Error, StringComparison.Ordinal);
        Assert.EndsWith("\n1 warning\n", check.Error, StringComparison.Ordinal);
    }

    /// <summary>Three spreadsheets' ways of saving: separators, marks at the beginning, two-byte characters, one-byte characters with curly quotes.</summary>
    public static TheoryData<string, byte[]> Encodings
    {
        get
        {
            const string Commas = "Ear Tag,Name,Born\r\nZZ 1,Béatrice,2021\r\nZZ 2,“Rúnda”,2022\r\n";
            var semicolons = Commas.Replace(',', ';');
            return new()
            {
                { "UTF-8", Encoding.UTF8.GetBytes(Commas) },
                { "UTF-8 with its mark", [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(Commas)] },
                { "UTF-16 with tabs", [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(Commas.Replace(',', '\t'))] },
                { "UTF-16 the other way", [.. Encoding.BigEndianUnicode.Preamble, .. Encoding.BigEndianUnicode.GetBytes(semicolons)] },
                { "Windows-1252", CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetBytes(semicolons) },
                { "told of its separator", Encoding.UTF8.GetBytes("sep=;\r\n" + semicolons) },
                { "line feeds", Encoding.UTF8.GetBytes(Commas.Replace("\r\n", "\n", StringComparison.Ordinal)) },
                { "no last line break", Encoding.UTF8.GetBytes(Commas.TrimEnd()) },
                { "empty rows and columns", Encoding.UTF8.GetBytes(Commas.Replace("\r\n", ",,\r\n", StringComparison.Ordinal) + ",,,,\r\n,,,,\r\n") },
            };
        }
    }

    [Theory]
    [MemberData(nameof(Encodings))]
    public void However_a_spreadsheet_saves_it_it_is_the_same_list(string how, byte[] bytes)
    {
        using var bench = new Workbench();
        File.WriteAllBytes(bench.PathOf("ewes.csv"), bytes);
        var begun = bench.Run("begin", "f", "--yes", "--ewes", "ewes.csv");
        Assert.True(begun.Status == ExitStatus.Clean, $"{how}: {begun.Error}");
        Assert.Equal([("ZZ 1", "Béatrice", 2021), ("ZZ 2", "“Rúnda”", 2022)], Flock(bench, "f.yaml").Ewes.Select(e => (e.Tag, e.Name!, e.Born!.Value)));
    }

    /// <summary>Any order, any of the usual headings, capitals and points aside.</summary>
    [Theory]
    [InlineData("Notes;Ear Tag No.;Name", "quiet;ZZ 1;Fern")]
    [InlineData("NAME\tCOMMENTS\tUK TAG", "Fern\tquiet\tZZ 1")]
    [InlineData("ewe,eid,remarks", "Fern,ZZ 1,quiet")]
    [InlineData("EID,Tag,Pet name,Note", "826 000,ZZ 1,Fern,quiet")]
    public void Columns_are_known_by_their_headings_in_any_order(string headings, string row)
    {
        using var bench = new Workbench();
        Assert.Equal(ExitStatus.Clean, Begin(bench, $"{headings}\n{row}\n").Status);
        var ewe = Assert.Single(Flock(bench, "f.yaml").Ewes);
        Assert.Equal(("ZZ 1", "Fern", "quiet"), (ewe.Tag, ewe.Name, ewe.Note));
    }

    [Fact]
    public void A_column_nobody_knows_is_named_and_left_out()
    {
        using var bench = new Workbench();
        var begun = Begin(bench, "tag,sire,eid\nZZ 1,Bramley,826\n");
        Assert.Equal(ExitStatus.Clean, begun.Status);
        Assert.Contains("ewes.csv:1:5: warning LST003: the column `sire` is left out", begun.Error, StringComparison.Ordinal);
        Assert.Contains("ewes.csv:1:10: warning LST004: the column `eid` is left out: `tag` says the same", begun.Error, StringComparison.Ordinal);
    }

    /// <summary>The pound: Weights and Measures Act 1985, section 1; fourteen pounds to the stone: Schedule 1, Part V.</summary>
    [Theory]
    [InlineData("weight", "72 kg", "72")]
    [InlineData("weight", "72kg", "72")]
    [InlineData("weight (kg)", "72", "72")]
    [InlineData("Weight kg", "72.5", "72.5")]
    [InlineData("wt lb", "158", "71.66759446")]
    [InlineData("weight (lbs)", "72 kg", "72")]
    [InlineData("weight", "158 lbs", "71.66759446")]
    [InlineData("weight", "11 st 4", "71.66759446")]
    [InlineData("weight", "11st 4lb", "71.66759446")]
    [InlineData("weight (st)", "11", "69.85322498")]
    [InlineData("live weight kg", "\"72,5\"", "72.5")]
    public void Weights_have_their_unit_in_the_cell_or_in_the_heading(string heading, string cell, string kilograms)
    {
        using var bench = new Workbench();
        var begun = Begin(bench, $"tag,{heading}\nZZ 1,{cell}\n");
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        Assert.Equal(decimal.Parse(kilograms, null), Assert.Single(Flock(bench, "f.yaml").Ewes).Weight!.Value.Kilograms);
    }

    /// <summary>The tup goes in on 5 November 2026. The third date of the fourth row can only be day first, so all are.</summary>
    [Theory]
    [InlineData("2026-11-09", "2026-11-09")]
    [InlineData("2026-11-09 00:00:00", "2026-11-09")]
    [InlineData("9 Nov 2026", "2026-11-09")]
    [InlineData("9-Nov-26", "2026-11-09")]
    [InlineData("November 9 2026", "2026-11-09")]
    [InlineData("20/11/2026", "2026-11-20")]
    [InlineData("11/20/2026", "2026-11-20")]
    [InlineData("11.11.2026", "2026-11-11")]
    [InlineData("9/11/2026;26/11/2026", "2026-11-09 2026-11-26")]
    [InlineData("11/9/2026;11/26/2026", "2026-11-09 2026-11-26")]
    public void Dates_are_taken_as_people_write_them(string cell, string marks)
    {
        using var bench = new Workbench();
        var begun = Begin(bench, $"tag|marks\nZZ 1|{cell}\n".Replace('|', '\t'));
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        Assert.Equal(marks.Split(' '), Assert.Single(Flock(bench, "f.yaml").Ewes).Marks.Select(NodaTime.Text.LocalDatePattern.Iso.Format));
    }

    [Fact]
    public void Born_may_be_a_date_and_an_age_counts_to_the_tupping()
    {
        using var bench = new Workbench();
        Begin(bench, "tag,dob\nZZ 1,3/4/2021\nZZ 2,2022-04-01\nZZ 3,2020\n");
        Assert.Equal([2021, 2022, 2020], Flock(bench, "f.yaml").Ewes.Select(e => e.Born));
        var begun = Begin(bench, "tag,age\nZZ 1,5\n");
        Assert.Equal([2021], Flock(bench, "f.yaml").Ewes.Select(e => e.Born));
        Assert.Contains("warning LST026", begun.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("twins", 2)]
    [InlineData("Single", 1)]
    [InlineData("barren", 0)]
    [InlineData("3", 3)]
    public void A_scan_may_be_in_words(string cell, int lambs)
    {
        using var bench = new Workbench();
        Begin(bench, $"tag,lambs\nZZ 1,{cell}\n");
        Assert.Equal(lambs, Assert.Single(Flock(bench, "f.yaml").Ewes).Scan);
    }

    /// <summary>The list, and the place and words of what is said of it.</summary>
    [Theory]
    [InlineData("tag\n8.26E+11\n", "2:1: error LST011: the spreadsheet has turned this tag into a number, `8.26E+11`")]
    [InlineData("tag\n\"8,26E+11\"\n", "2:1: error LST011")]
    [InlineData("tag\n0012345\n0012346\n12347\n", "4:1: error LST013: this tag has 5 figures and the others 7")]
    [InlineData("tag\n8260123456001000\n", "2:1: error LST012: a spreadsheet keeps fifteen figures")]
    [InlineData("tag\n\"826,012,345\"\n", "2:1: error LST014")]
    [InlineData("tag\n12345.00\n", "2:1: error LST014")]
    [InlineData("tag\n#REF!\n", "2:1: error LST015")]
    [InlineData("tag\n#N/A\n", "2:1: error LST015")]
    [InlineData("tag\n#######\n", "2:1: error LST015")]
    [InlineData("tag,name\n,Fern\n", "2:1: error LST010: this row has no tag")]
    [InlineData("tag,name\nZZ 1,A\nzz1,B\n", "3:1: error FLK052: the tag `zz1` is already on the ewe")]
    [InlineData("tag\nZZ 0123456 00101 0000000\n", "2:1: error FLK039")]
    [InlineData("name,born\nFern,2021\n", "1:1: error LST002: no column here is known to hold ear tags")]
    [InlineData("tag,name\n", "error LST001: there are no ewes in the list")]
    [InlineData("", "error LST001")]
    public void A_row_that_is_wrong_is_refused_at_its_place_and_nothing_is_written(string list, string complaint)
    {
        using var bench = new Workbench();
        var begun = Begin(bench, list);
        Assert.NotEqual(ExitStatus.Clean, begun.Status);
        Assert.Contains(complaint, begun.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("fault of the program", begun.Error, StringComparison.Ordinal);
        Assert.Equal(["ewes.csv"], bench.Everything());
    }

    [Theory]
    [InlineData("tag,note\nZZ 1,lame, left fore\n", "2:11: warning LST016: `left fore` is left out")]
    [InlineData("tag,weight kg\nZZ 1,72,5\n", "2:9: warning LST016: `5` is left out")]
    [InlineData("tag,name\nZZ 1,Fern,,2021\n", "2:12: warning LST016: `2021` is left out")]
    public void Cells_beyond_the_last_heading_are_said_to_be_left_out(string list, string complaint)
    {
        using var bench = new Workbench();
        Assert.Contains(complaint, Begin(bench, list).Error, StringComparison.Ordinal);
        Assert.Single(Flock(bench, "f.yaml").Ewes);
    }

    /// <summary>The list, and the place and words of what is said of a cell; the ewe is taken without it.</summary>
    [Theory]
    [InlineData("tag,marks\nZZ 1,9/11/2026\n", "2:6: warning LST020: left out: `9/11/2026` could be Mon 9 Nov 2026 or Fri 11 Sep 2026")]
    [InlineData("tag,marks\nZZ 1,9/11/2026\nZZ 2,20/11/2026\nZZ 3,11/20/2026\n", "2:6: warning LST020")]
    [InlineData("tag,marks\nZZ 1,46335\n", "2:6: warning LST022: left out: `46335` is a spreadsheet's number of a day")]
    [InlineData("tag,marks\nZZ 1,soon\n", "2:6: warning LST021")]
    [InlineData("tag,weight\nZZ 1,72\n", "2:6: warning LST023: left out: `72` has no unit")]
    [InlineData("tag,weight\nZZ 1,heavy\n", "2:6: warning LST024")]
    [InlineData("tag,age\nZZ 1,2-tooth\n", "2:6: warning LST025")]
    [InlineData("tag,weight kg\nZZ 1,720\n", "2:6: warning FLK035: left out: `720 kg` cannot be right for `weight`")]
    [InlineData("tag,note\nZZ 1,Fern 羊\n", "2:6: warning FLK120: left out: `羊` (U+7F8A) is in none of the typefaces")]
    [InlineData("tag,teeth\nZZ 1,sond\n", "2:6: warning FLK030: left out: `teeth` cannot be `sond`")]
    [InlineData("tag,marks\nZZ 1,2025-11-09\n", "2:6: warning FLK057")]
    [InlineData("tag,marks\nZZ 1,2027-02-09\n", "2:6: warning FLK057: left out: she cannot have been marked on")]
    [InlineData("tag,lambed\nZZ 1,2027-03-25\n", "2:6: warning FLK070: left out: a lambing on")]
    [InlineData("tag,scan,stage\nZZ 1,x,early\n", "2:8: warning FLK060: left out: ")]
    public void A_cell_that_is_wrong_is_left_out_at_its_place_and_the_ewe_is_taken(string list, string complaint)
    {
        using var bench = new Workbench();
        var begun = Begin(bench, list);
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        Assert.Contains(complaint, begun.Error, StringComparison.Ordinal);
        Assert.Contains(" left out\n  line 2: ZZ 1  without ", begun.Out, StringComparison.Ordinal);
        Assert.Equal("ZZ 1", Flock(bench, "f.yaml").Ewes[0].Tag);
    }

    /// <summary>Figures that a spreadsheet was told are text, and flock numbers that never had zeros.</summary>
    [Theory]
    [InlineData("tag\n\"=\"\"00101\"\"\"\n", "00101")]
    [InlineData("tag\n'00101\n", "00101")]
    [InlineData("tag\n00101\n00102\n", "00101 00102")]
    [InlineData("tag\n9\n10\n11\n12\n", "9 10 11 12")]
    [InlineData("tag\nno\n", "no")]
    public void Tags_stay_as_they_are(string list, string tags)
    {
        using var bench = new Workbench();
        var begun = Begin(bench, list);
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        Assert.Equal(tags.Split(' '), Flock(bench, "f.yaml").Ewes.Select(e => e.Tag));
    }

    [Fact]
    public void Good_rows_are_taken_alone_when_that_is_asked_for_and_the_others_are_named()
    {
        using var bench = new Workbench();
        const string List = "tag,name\nZZ 1,Fern\n8.26E+11,Lost\nZZ 2,Moss\n";
        Assert.Contains("0 rows taken, 1 refused\n  line 2: good, not taken  ZZ 1  Fern\n  line 3: REFUSED  8.26E+11\n", Begin(bench, List).Out, StringComparison.Ordinal);
        Assert.Equal(ExitStatus.FlockErrors, Begin(bench, List, "--good-rows").Status);
        Assert.Equal(["ZZ 1", "ZZ 2"], Flock(bench, "f.yaml").Ewes.Select(e => e.Tag));
    }

    [Fact]
    public void Groups_of_a_list_are_made()
    {
        using var bench = new Workbench();
        var begun = Begin(bench, "tag,group\nZZ 1,Orchard\nZZ 2,Paddock\nZZ 3,Orchard\n");
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        var flock = Flock(bench, "f.yaml");
        Assert.Equal(["Orchard", "Paddock"], flock.Groups.Select(g => g.Name));
        Assert.Equal(["Orchard", "Paddock", "Orchard"], flock.Ewes.Select(e => e.Group));
    }

    [Fact]
    public void Ewes_are_added_to_a_file_that_is_there_and_the_rest_of_it_stays_to_the_letter()
    {
        using var bench = new Workbench();
        var before = "# mine\n" + Samples.TwoEwes + "  # the last\n";
        bench.Write("flock.yaml", before);
        bench.Write("ewes.csv", "tag,name,born,weight lb\nZZ 0123456 00103,Fern: the second,2021,158\nZZ 0123456 00104,,2022,\n");
        var added = bench.Run("add", "ewes", "flock.yaml", "ewes.csv");
        Assert.True(added.Status == ExitStatus.Clean, added.Error);
        Assert.EndsWith("wrote flock.yaml: 2 ewes added, 4 in all\nNext: paperflock check flock.yaml, and then paperflock pack flock.yaml\n", added.Out, StringComparison.Ordinal);
        var after = File.ReadAllText(bench.PathOf("flock.yaml"));
        Assert.StartsWith(before.TrimEnd('\n'), after, StringComparison.Ordinal);
        var flock = Flock(bench, "flock.yaml");
        Assert.Equal("Fern: the second", flock.Ewes[2].Name);
        Assert.Equal(158m, decimal.Round(flock.Ewes[2].Weight!.Value.Kilograms / Mass.KilogramsPerPound, 6));
        Assert.Equal(["ewes.csv", "flock.yaml"], bench.Everything());
    }

    [Theory]
    [InlineData("tag,name\nZZ 0123456 00101,Again\n", "2:1: error FLK052: the tag `ZZ 0123456 00101` is already on the ewe on line")]
    [InlineData("tag\n8.26E+11\n", "2:1: error LST011")]
    public void What_does_not_go_with_the_flock_is_refused_and_the_file_stays_as_it_was(string list, string complaint)
    {
        using var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes);
        bench.Write("ewes.csv", list);
        var added = bench.Run("add", "ewes", "flock.yaml", "ewes.csv");
        Assert.Equal(ExitStatus.FlockErrors, added.Status);
        Assert.Contains(complaint, added.Error, StringComparison.Ordinal);
        Assert.Contains("REFUSED", added.Out, StringComparison.Ordinal);
        Assert.Equal(Samples.TwoEwes, File.ReadAllText(bench.PathOf("flock.yaml")));
    }

    /// <summary>Advice for the file would mend nothing in a spreadsheet, and what else is wrong with a row is said beside it.</summary>
    [Fact]
    public void A_list_without_groups_is_told_of_the_column_and_of_its_other_faults()
    {
        using var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes.Replace("ewes:", "groups: [{name: Orchard}, {name: Paddock}]\newes:", StringComparison.Ordinal).Replace("    name:", "    group: Orchard\n    name:", StringComparison.Ordinal));
        var tag = new string('7', 50_000);
        bench.Write("ewes.csv", $"tag,name\nZZ 3,Fern\nzz3,Dock\n{tag},Moss\n");
        var added = bench.Run("add", "ewes", "flock.yaml", "ewes.csv", "--as-of", "2026-11-25");
        Assert.Equal(ExitStatus.FlockErrors, added.Status);
        Assert.Contains("error FLK055: `Fern` is in none of the groups", added.Error, StringComparison.Ordinal);
        Assert.Contains("under the heading `group`, in a column of its own, write `Orchard` or `Paddock`", added.Error, StringComparison.Ordinal);
        Assert.Contains("error FLK052: the tag `zz3` is already on the ewe", added.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("add `group:`", added.Error, StringComparison.Ordinal);
        Assert.InRange(added.Error.Length + added.Out.Length, 0, 10_000);
    }

    /// <summary>A cell that does not go with the flock, or with the calendar, is left out.</summary>
    [Theory]
    [InlineData("tag,group\nZZ 0123456 00103,Orchard\n", "2:18: warning FLK054: left out: there is no group `Orchard`")]
    [InlineData("tag,born\nZZ 0123456 00103,1990\n", "2:18: warning FLK062")]
    [InlineData("tag,marks\nZZ 0123456 00103,2026-08-21\n", "2:18: warning FLK070")]
    [InlineData("tag,scan\nZZ 0123456 00103,2\n", "2:18: warning FLK071: left out: ")]
    public void A_cell_that_does_not_go_with_the_flock_is_left_out(string list, string complaint)
    {
        using var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes.Replace("    scan: 2\n", "", StringComparison.Ordinal));
        bench.Write("ewes.csv", list);
        var added = bench.Run("add", "ewes", "flock.yaml", "ewes.csv", "--as-of", "2026-08-20");
        Assert.Equal(ExitStatus.Clean, added.Status);
        Assert.Contains(complaint, added.Error, StringComparison.Ordinal);
        Assert.Contains("1 row taken, none refused, 1 cell left out\n  line 2: ZZ 0123456 00103  without ", added.Out, StringComparison.Ordinal);
        Assert.Equal(3, Flock(bench, "flock.yaml").Ewes.Length);
    }

    [Fact]
    public void Ewes_still_without_a_tag_are_mentioned_when_a_list_is_added_beside_them()
    {
        using var bench = new Workbench();
        bench.Run("begin", "f", "--yes", "--ewes", "3");
        bench.Write("ewes.csv", "tag\nZZ 1\n");
        Assert.Contains("3 ewes without a tag are still in the file", bench.Run("add", "ewes", "f.yaml", "ewes.csv").Out, StringComparison.Ordinal);
        Assert.Equal(4, Flock(bench, "f.yaml").Ewes.Length);
    }

    [Theory]
    [InlineData("add ewes flock.yaml nope.csv", "cannot read nope.csv: there is no such file")]
    [InlineData("add ewes flock.yaml", "add ewes wants a list as well, such as: paperflock add ewes my-flock.yaml ewes.csv")]
    [InlineData("add ewes nope.yaml ewes.csv", "cannot read nope.yaml: there is no such file")]
    public void A_file_that_is_not_there_is_status_2(string args, string complaint)
    {
        using var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes);
        bench.Write("ewes.csv", Good);
        var outcome = bench.Run(args.Split(' '));
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains(complaint, outcome.Error, StringComparison.Ordinal);
    }

    private static Outcome Begin(Workbench bench, string list, params string[] options)
    {
        bench.Write("ewes.csv", list);
        return bench.Run(["begin", "f", "--yes", "--overwrite", "--tup-in", "2026-11-05", "--as-of", "2027-02-20", "--ewes", "ewes.csv", .. options]);
    }

    private static Flock Flock(Workbench bench, string file)
    {
        var reading = FlockReader.Read(file, File.ReadAllBytes(bench.PathOf(file)));
        Assert.Equal("", DiagnosticRenderer.Render(reading.Source, [.. reading.Diagnostics.Where(d => d.Severity == Severity.Error)]));
        return reading.Flock!;
    }
}
