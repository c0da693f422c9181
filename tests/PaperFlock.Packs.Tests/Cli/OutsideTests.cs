using PaperFlock.Cli;
using PaperFlock.Cli.Files;
using PaperFlock.Sheets;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>What the world outside may do to the program, and how it is called from there.</summary>
public sealed class OutsideTests
{
    [Theory]
    [InlineData("check")]
    [InlineData("dates")]
    [InlineData("figures")]
    public void A_full_disk_under_the_results_is_status_2_and_no_fault(string command)
    {
        using var bench = new Workbench { Results = GuardedWriter.Results(new FullWriter()) };
        var outcome = bench.Run(command, bench.Write("flock.yaml", Samples.TwoEwes));
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.EndsWith("paperflock: cannot write the results out: the disk is full: make some room and try again\n", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(["flock.yaml"], bench.Everything());
    }

    [Fact]
    public void A_full_disk_under_the_results_of_many_is_no_fault_either()
    {
        using var bench = new Workbench { Results = GuardedWriter.Results(new FullWriter()) };
        var outcome = bench.Run("check", bench.Write("a.yaml", Samples.TwoEwes), bench.Write("b.yaml", Samples.TwoEwes));
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains("the disk is full", outcome.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Nobody_to_complain_to_changes_no_status()
    {
        using var bench = new Workbench { Complaints = GuardedWriter.Complaints(new FullWriter()) };
        Assert.Equal(ExitStatus.WrongUse, bench.Run("check", "nope.yaml").Status);
        Assert.Equal(ExitStatus.FlockErrors, bench.Run("check", bench.Write("flock.yaml", Samples.BadDate)).Status);
        Assert.Equal(ExitStatus.Clean, bench.Run("check", bench.Write("flock.yaml", Samples.TwoEwes)).Status);
    }

    [Theory]
    [InlineData("pack flock.yaml --out flock.yaml/sub", "cannot write into flock.yaml/sub: flock.yaml is a file, not a folder")]
    [InlineData("pack flock.yaml --out flock.yaml/sub/deeper", "flock.yaml is a file, not a folder")]
    [InlineData("pack flock.yaml --out flock.yaml/", "cannot write into flock.yaml/: that is a file, not a folder")]
    [InlineData("testpage --out flock.yaml/sub", "flock.yaml is a file, not a folder")]
    public void A_folder_inside_a_file_is_refused_in_plain_words(string args, string complaint)
    {
        using var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes);
        var outcome = bench.Run(args.Split(' '));
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains(complaint, outcome.Error, StringComparison.Ordinal);
        Assert.Equal(["flock.yaml"], bench.Everything());
    }

    [Fact]
    public void A_folder_the_system_keeps_to_itself_is_refused_in_plain_words()
    {
        if (!OperatingSystem.IsLinux())
        {
            // No other system has such a folder.
            return;
        }

        using var bench = new Workbench();
        var outcome = bench.Run("pack", bench.Write("flock.yaml", Samples.TwoEwes), "--sheets", "jobs", "--out", "/proc/x/y");
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains("cannot write /proc/x/y/flock-JOBS.pdf: this computer does not allow you to", outcome.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_dropped_on_the_program_has_its_pack_beside_it()
    {
        using var bench = new Workbench();
        Directory.CreateDirectory(bench.PathOf("far"));
        var outcome = bench.Run(bench.PathOf(bench.Write("far/flock.yaml", Samples.TwoEwes)));
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Equal(["far", "far/flock.pdf", "far/flock.yaml"], bench.Everything());
    }

    [Fact]
    public void Options_may_follow_a_dropped_file()
    {
        using var bench = new Workbench();
        var outcome = bench.Run(bench.Write("flock.yaml", Samples.TwoEwes), "--sheets", "REG", "--out", "packs");
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Equal(["flock.yaml", "packs", "packs/flock-REG.pdf"], bench.Everything());
    }

    [Fact]
    public void Several_dropped_files_have_their_packs_beside_them()
    {
        using var bench = new Workbench();
        Directory.CreateDirectory(bench.PathOf("far"));
        var outcome = bench.Run(bench.Write("a.yaml", Samples.TwoEwes), bench.Write("far/a.yaml", Samples.TwoEwes), "--sheets", "jobs");
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Equal(["a-JOBS.pdf", "a.yaml", "far", "far/a-JOBS.pdf", "far/a.yaml"], bench.Everything());
    }

    [Fact]
    public void A_dropped_file_that_is_not_there_is_said_to_be_so()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("nope.yaml");
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Equal("paperflock: cannot read nope.yaml: there is no such file\n", outcome.Error);
    }

    /// <summary>The arguments with spaces between; whether a window of the program's own waits for Enter.</summary>
    [Theory]
    [InlineData("flock.yaml", true)]
    [InlineData("bad.yaml", true)]
    [InlineData("nope.yaml", true)]
    [InlineData("check flock.yaml", false)]
    [InlineData("pakc flock.yaml", false)]
    public void A_window_of_its_own_stays_open_until_what_happened_has_been_read(string args, bool waits)
    {
        var waited = 0;
        using var bench = new Workbench { WaitBeforeClosing = () => waited++ };
        bench.Write("flock.yaml", Samples.TwoEwes);
        bench.Write("bad.yaml", Samples.BadDate);
        var outcome = bench.Run(args.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(waits ? 1 : 0, waited);
        Assert.Equal(waits, outcome.Error.EndsWith("\nPress Enter to close this window.\n", StringComparison.Ordinal));
    }

    [Fact]
    public void A_shells_window_is_not_waited_for()
    {
        using var bench = new Workbench();
        Assert.DoesNotContain("Press Enter", bench.Run(bench.Write("flock.yaml", Samples.TwoEwes)).Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("REG", "register")]
    [InlineData("wall", "planner")]
    [InlineData("FEED,CARD", "feed,cards")]
    [InlineData("card,jobs", "cards,jobs")]
    public void Sheets_are_known_by_their_page_codes_too(string codes, string names)
    {
        using var bench = new Workbench();
        var flock = bench.Write("flock.yaml", Samples.TwoEwes);
        Assert.Equal(ExitStatus.Clean, bench.Run("pack", flock, "--sheets", codes, "--out", "by-code").Status);
        Assert.Equal(ExitStatus.Clean, bench.Run("pack", flock, "--sheets", names, "--out", "by-name").Status);
        var (name, code) = (Directory.GetFiles(bench.PathOf("by-name")).Single(), Directory.GetFiles(bench.PathOf("by-code")).Single());
        Assert.Equal((Path.GetFileName(name), Convert.ToHexString(File.ReadAllBytes(name))), (Path.GetFileName(code), Convert.ToHexString(File.ReadAllBytes(code))));
    }

    [Theory]
    [InlineData("WALLL", "there is no sheet 'WALLL'; did you mean 'WALL'?")]
    [InlineData("crad", "did you mean 'CARD'?")]
    [InlineData("plnner", "did you mean 'planner'?")]
    [InlineData("CHG", "comes with changed leaves only: type --changed instead")]
    public void A_near_miss_in_a_code_is_put_right(string typed, string complaint)
    {
        using var bench = new Workbench();
        Assert.Contains(complaint, bench.Run("pack", "x.yaml", "--sheets", typed).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_sheet_of_the_sample_packs_has_a_code_of_its_kind()
    {
        foreach (var flock in new[] { Samples.HollinBank, Samples.KanukaFlat })
        {
            var sheets = Compose(flock).Sheets;
            Assert.All(sheets, s => Assert.Equal(s.Definition, PackSheets.OfCode(s.Code)));
        }

        Assert.Distinct(PackSheets.All.Select(s => s.Kind), StringComparer.OrdinalIgnoreCase);
        Assert.Distinct(PackSheets.All.Select(s => s.Code), StringComparer.OrdinalIgnoreCase);
    }

    private static ComposedPack Compose(string flock)
    {
        var reading = PaperFlock.Flocks.Reading.FlockReader.Read(flock, File.ReadAllBytes(flock));
        var plan = PaperFlock.Planning.SeasonPlanner.Plan(reading.Flock!, new NodaTime.LocalDate(2026, 11, 25));
        return PackComposer.Compose(plan, PaperFlock.Pdf.FontLibrary.Measurer, PackRequest.Everything);
    }

    /// <summary>A disk with no room left: ENOSPC, 28 on Linux and macOS.</summary>
    private sealed class FullWriter : TextWriter
    {
        public override System.Text.Encoding Encoding => System.Text.Encoding.UTF8;

        public override void Write(char value) => throw new IOException("No space left on device", 28);
    }
}
