using PaperFlock.Cli;
using PaperFlock.Flocks;
using PaperFlock.Flocks.Reading;
using PaperFlock.Packs.Tests.Entering;

namespace PaperFlock.Packs.Tests.Lists;

/// <summary>
/// Files in <c>calc/</c>, saved by LibreOffice Calc 7.4 from sheets of invented ewes: CSV with commas, with semicolons and one byte a character,
/// with tabs in UTF-16, with single quotes; headings in two rows below a title; and a spreadsheet's own three kinds of file.
/// </summary>
public sealed class SpreadsheetFileTests
{
    [Theory]
    [InlineData("comma.csv")]
    [InlineData("semicolon-windows.csv")]
    [InlineData("tab-utf16.csv")]
    [InlineData("single-quotes.csv")]
    public void However_it_was_saved_it_is_the_same_list(string file)
    {
        using var bench = Bench(file);
        var begun = bench.Run("begin", "f", "--yes", "--tup-in", "2026-11-05", "--as-of", "2026-12-01", "--ewes", file);
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        Assert.Contains("4 rows taken, none refused, 1 cell left out", begun.Out, StringComparison.Ordinal);
        Assert.Contains("  line 6: ZZ 0123456 00104  Fern  without weight\n", begun.Out.Replace("line 7", "line 6", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("LST024: left out: `heavy` is no weight", begun.Error, StringComparison.Ordinal);
        var ewes = Read(bench, "f.yaml").Ewes;
        Assert.Equal(["ZZ 0123456 00101", "ZZ 0123456 00102", "zz-0123456-00103", "ZZ 0123456 00104"], ewes.Select(e => e.Tag));
        Assert.Equal(["Bracken", "B\u00e9atrice", null, "Fern"], ewes.Select(e => e.Name));
        Assert.Equal([2021, 2022, 2020, 2021], ewes.Select(e => e.Born));
        Assert.Equal([72.5m, 70, null, null], ewes.Select(e => e.Weight?.Kilograms));
        Assert.Equal(["2026-11-09", "2026-11-20"], ewes.SelectMany(e => e.Marks).Select(NodaTime.Text.LocalDatePattern.Iso.Format));
        Assert.Equal(["Needs a quiet corner", "Jumps; kicks, \"hard\"", "Two lines", null], ewes.Select(e => e.Note));
    }

    [Fact]
    public void Headings_in_two_rows_below_a_title_are_read_as_one()
    {
        using var bench = Bench("two-rows.csv");
        var begun = bench.Run("begin", "f", "--yes", "--ewes", "two-rows.csv");
        Assert.Equal((ExitStatus.Clean, ""), (begun.Status, begun.Error));
        var ewes = Read(bench, "f.yaml").Ewes;
        Assert.Equal([("ZZ 0123456 00101", "Bracken", 72.5m, 3.5m, "quiet"), ("ZZ 0123456 00102", "Sorrel", 70, 3, null)], ewes.Select(e => (e.Tag, e.Name!, e.Weight!.Value.Kilograms, e.Condition!.Value, e.Note)));
    }

    [Theory]
    [InlineData("tag,weight,score,name\n,kg,bcs,\nZZ 1,72,3,Fern\n")]
    [InlineData("Ear,,Condition,\nnumber,weight kg,score,name\nZZ 1,72,3,Fern\n")]
    [InlineData("Our ewes\n\ntag;weight kg;score;name\nZZ 1;72;3;Fern\n")]
    public void Two_rows_of_headings_may_part_anywhere(string list)
    {
        using var bench = new Workbench();
        bench.Write("ewes.csv", list);
        var begun = bench.Run("begin", "f", "--yes", "--ewes", "ewes.csv");
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        var ewe = Assert.Single(Read(bench, "f.yaml").Ewes);
        Assert.Equal(("ZZ 1", 72m, 3m, "Fern"), (ewe.Tag, ewe.Weight!.Value.Kilograms, ewe.Condition!.Value, ewe.Name));
    }

    /// <summary>A row without a tag below the headings is a ewe without one, not a second row of headings.</summary>
    [Fact]
    public void A_first_ewe_without_a_tag_is_no_heading()
    {
        using var bench = new Workbench();
        bench.Write("ewes.csv", "tag,name\n,Fern\nZZ 1,Moss\n");
        Assert.Contains("ewes.csv:2:1: error LST010: this row has no tag", bench.Run("begin", "f", "--yes", "--ewes", "ewes.csv").Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no-tag.xlsx", "(.xlsx)")]
    [InlineData("no-tag.ods", "(.ods)")]
    [InlineData("no-tag.xls", "(.xls)")]
    public void A_spreadsheets_own_file_is_named_for_what_it_is(string file, string kind)
    {
        using var bench = Bench(file);
        bench.Write("flock.yaml", Samples.TwoEwes);
        foreach (var command in new[] { new[] { "add", "ewes", "flock.yaml", file }, ["enter", "scan", "flock.yaml", "--from", file], ["begin", "f", "--yes", "--ewes", file] })
        {
            var outcome = bench.Run(command);
            Assert.NotEqual(ExitStatus.Clean, outcome.Status);
            Assert.Contains($"{file}: error LST006: this is a spreadsheet\u2019s own file {kind}, and a list is read from a CSV file\n    open it in the spreadsheet, choose Save As or Download, and CSV as the kind of file\n    then type the name of the new file", outcome.Error, StringComparison.Ordinal);
        }

        Assert.Equal(Samples.TwoEwes, File.ReadAllText(bench.PathOf("flock.yaml")));
    }

    [Theory]
    [InlineData("--tag-column", "A")]
    [InlineData("--tag-column", "1")]
    [InlineData("--tag-column", "sheep")]
    public void The_column_of_the_tags_can_be_said(params string[] option)
    {
        using var bench = Bench("no-tag.csv");
        bench.Write("flock.yaml", Samples.TwoEwes);
        var asked = bench.Run("enter", "scan", "flock.yaml", "--from", "no-tag.csv");
        Assert.Equal(ExitStatus.FlockErrors, asked.Status);
        Assert.Contains("no-tag.csv:1:1: error LST002: no column here is known to hold ear tags\n", asked.Error, StringComparison.Ordinal);
        Assert.Contains("give that column the heading `tag`, or say which it is: --tag-column A, or B for the second of 3", asked.Error, StringComparison.Ordinal);

        var entered = bench.Run(["enter", "scan", "flock.yaml", "--from", "no-tag.csv", .. option]);
        Assert.True(entered.Status == ExitStatus.Clean, entered.Error);
        Assert.Equal([2, 1], Read(bench, "flock.yaml").Ewes.Select(e => e.Scan));
    }

    [Fact]
    public void A_column_that_is_not_there_is_said_with_those_that_are()
    {
        using var bench = Bench("no-tag.csv");
        var begun = bench.Run("begin", "f", "--yes", "--ewes", "no-tag.csv", "--tag-column", "Q");
        Assert.Equal(ExitStatus.WrongUse, begun.Status);
        Assert.Contains("--tag-column: no-tag.csv has no column `Q`; there are A (Sheep), B (Called) and C (Scanned)", begun.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void At_a_terminal_the_column_of_the_tags_is_asked_for_and_the_first_rows_are_shown()
    {
        using var bench = new Workbench { AtAKeyboard = true, Answers = "x\na\n\n" };
        Copy(bench, "no-tag.csv");
        bench.Write("flock.yaml", Samples.TwoEwes);
        var outcome = bench.Run("enter", "scan", "flock.yaml", "--from", "no-tag.csv");
        Assert.Contains("A                 B        C\nSheep             Called   Scanned\nZZ 0123456 00101  Bracken  2\n", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("there is no column `x`", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Equal([2, 1], Read(bench, "flock.yaml").Ewes.Select(e => e.Scan));
    }

    /// <summary>A list without headings: the first row is a ewe too.</summary>
    [Fact]
    public void A_list_without_headings_can_be_taken_by_its_column()
    {
        using var bench = new Workbench();
        bench.Write("ewes.csv", "Fern,ZZ 1\nMoss,ZZ 2\n");
        var begun = bench.Run("begin", "f", "--yes", "--ewes", "ewes.csv", "--tag-column", "B");
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        Assert.Equal(["ZZ 1", "ZZ 2"], Read(bench, "f.yaml").Ewes.Select(e => e.Tag));
    }

    [Fact]
    public void Results_with_tabs_find_their_ewes_by_the_ends_of_tags()
    {
        using var bench = Bench("scans.csv");
        bench.Write(FourEwes.File, FourEwes.Text);
        var outcome = bench.Run("enter", "scan", FourEwes.File, "--from", "scans.csv", "--tag-column", "number");
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        Assert.Equal([2, 1, 0, null], Read(bench, FourEwes.File).Ewes.Select(e => e.Scan));
    }

    /// <summary>More rows than a flock can have are refused, and as many as it can have are taken, wrong cells and all, in the time it takes to read them.</summary>
    [Fact]
    public void Six_thousand_rows_are_refused_and_two_thousand_taken_at_once()
    {
        using var bench = new Workbench();
        bench.Write("many.csv", "tag,weight kg,teeth\n" + string.Concat(Enumerable.Range(1, 6000).Select(n => $"ZZ 0123456 {n:00000},72,sond\n")));
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var refused = bench.Run("begin", "f", "--yes", "--ewes", "many.csv");
        Assert.Contains("LST005: the list has 6000 rows, and a flock has at most 5000 ewes", refused.Error, StringComparison.Ordinal);
        bench.Write("most.csv", "tag,weight kg,teeth,born\n" + string.Concat(Enumerable.Range(1, 2000).Select(n => $"ZZ 0123456 {n:00000},72,sond,1890\n")));
        var taken = bench.Run("begin", "f", "--yes", "--ewes", "most.csv");
        Assert.Contains("2000 rows taken, none refused, 4000 cells left out", taken.Out, StringComparison.Ordinal);
        bench.Write("scans.csv", "tag,scan,stage\n" + string.Concat(Enumerable.Range(1, 2000).Select(n => $"{n:00000},{n % 4},\n")));
        var entered = bench.Run("enter", "scan", "f.yaml", "--from", "scans.csv", "--as-of", "2027-02-20");
        Assert.Contains("2000 entered, 0 changed", entered.Out, StringComparison.Ordinal);
        // Row by row it took an hour; a slow and busy machine has ten times what it needs.
        Assert.True(clock.Elapsed < TimeSpan.FromMinutes(2), $"It took {clock.Elapsed}.");
    }

    private static Workbench Bench(string file)
    {
        var bench = new Workbench();
        Copy(bench, file);
        return bench;
    }

    private static void Copy(Workbench bench, string file) => File.Copy(Path.Combine(AppContext.BaseDirectory, "Lists", "calc", file), bench.PathOf(file));

    private static Flock Read(Workbench bench, string file)
    {
        var reading = FlockReader.Read(file, File.ReadAllBytes(bench.PathOf(file)));
        return reading.Flock!;
    }
}
