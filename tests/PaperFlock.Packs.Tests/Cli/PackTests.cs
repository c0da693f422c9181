using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

public sealed class PackTests
{
    private static readonly byte[] PdfBegins = "%PDF-"u8.ToArray();
    private static readonly byte[] PngBegins = [0x89, (byte)'P', (byte)'N', (byte)'G'];

    [Fact]
    public void A_pack_is_written_beside_the_flock_file_and_nothing_else_is()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("pack", bench.Write("flock.yaml", Samples.TwoEwes), "--sheets", "jobs");
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Equal(["flock-JOBS.pdf", "flock.yaml"], bench.Everything());
        Assert.Equal(PdfBegins, File.ReadAllBytes(bench.PathOf("flock-JOBS.pdf"))[..5]);
    }

    [Fact]
    public void It_says_what_it_wrote_how_much_paper_that_is_and_how_to_print_it()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("pack", bench.Write("flock.yaml", Samples.TwoEwes), "--out", "packs", "--sheets", "jobs,cards");
        Assert.Matches("^wrote packs.flock-JOBS-CARD\\.pdf: [0-9]+ pages on [0-9]+ sheets? of A4 and 1 sheet of A4 card\n", outcome.Out);
        Assert.Contains("at actual size (100 %)", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("on both sides, flip on long edge", outcome.Out, StringComparison.Ordinal);
        Assert.Contains(" on A4 card", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void In_a_pipe_there_is_no_progress()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("pack", Samples.HollinBank, "--out", ".", "--as-of", "2026-11-25", "--sheets", "jobs");
        Assert.DoesNotContain("laying out", outcome.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("\u001b", outcome.Out + outcome.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("\r", outcome.Out + outcome.Error, StringComparison.Ordinal);
    }

    /// <summary>By a watch on which it takes a minute between one look and the next, or no time at all.</summary>
    [Theory]
    [InlineData(60, true)]
    [InlineData(0, false)]
    public void On_a_terminal_the_steps_are_named_where_they_take_long(int seconds, bool named)
    {
        using var bench = new Workbench { OnATerminal = true, Watch = new SlowWatch(TimeSpan.FromSeconds(seconds)) };
        var outcome = bench.Run("pack", bench.Write("flock.yaml", Samples.TwoEwes), "--sheets", "jobs,register,due");
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Equal(named, outcome.Error.Contains("laying out the sheets", StringComparison.Ordinal) || outcome.Error.Contains("printing flock-", StringComparison.Ordinal));
    }

    [Fact]
    public void The_folder_is_made_when_it_is_not_there()
    {
        using var bench = new Workbench();
        bench.Run("pack", bench.Write("flock.yaml", Samples.TwoEwes), "--out", "new/packs", "--sheets", "jobs");
        Assert.Equal(["flock.yaml", "new", "new/packs", "new/packs/flock-JOBS.pdf"], bench.Everything());
    }

    [Fact]
    public void Pictures_are_named_by_page_code()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("pack", bench.Write("flock.yaml", Samples.TwoEwes), "--sheets", "jobs,cards", "--png");
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        var pictures = bench.Everything().Where(f => f.StartsWith("flock-pages/", StringComparison.Ordinal)).ToList();
        Assert.Contains(pictures, p => p.StartsWith("flock-pages/JOBS", StringComparison.Ordinal));
        Assert.Contains("flock-pages/CARD-1.png", pictures);
        Assert.All(pictures, p => Assert.Equal(PngBegins, File.ReadAllBytes(bench.PathOf(p))[..4]));
        Assert.Contains($"wrote {pictures.Count} pictures into flock-pages", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_in_the_way_of_the_pdf_is_status_2_and_stays()
    {
        using var bench = new Workbench();
        Directory.CreateDirectory(bench.PathOf("flock-JOBS.pdf"));
        var outcome = bench.Run("pack", bench.Write("flock.yaml", Samples.TwoEwes), "--sheets", "jobs");
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains("cannot write flock-JOBS.pdf: that is a folder", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(["flock-JOBS.pdf", "flock.yaml"], bench.Everything());
    }

    [Fact]
    public void A_file_in_the_way_of_the_folder_is_status_2()
    {
        using var bench = new Workbench();
        var flock = bench.Write("flock.yaml", Samples.TwoEwes);
        var outcome = bench.Run("pack", flock, "--out", bench.Write("packs", "not a folder"));
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains("cannot write into packs: that is a file, not a folder", outcome.Error, StringComparison.Ordinal);
        Assert.Equal("not a folder", File.ReadAllText(bench.PathOf("packs")));
    }

    [Fact]
    public void The_flock_file_is_never_written_over()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("pack", bench.Write("flock.pdf", Samples.TwoEwes));
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains("that is your flock file", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(Samples.TwoEwes, File.ReadAllText(bench.PathOf("flock.pdf")));
    }

    [Fact]
    public void A_second_file_that_cannot_be_written_leaves_the_old_pack_whole_and_no_litter()
    {
        using var bench = new Workbench();
        bench.Write("flock-WALL.pdf", "the old pack");
        Directory.CreateDirectory(bench.PathOf("flock-WALL-wall.pdf"));
        var outcome = bench.Run("pack", bench.Write("flock.yaml", Samples.TwoEwesOnALargerPlanner), "--sheets", "planner", "--overwrite");
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Equal("the old pack", File.ReadAllText(bench.PathOf("flock-WALL.pdf")));
        Assert.Equal(["flock-WALL-wall.pdf", "flock-WALL.pdf", "flock.yaml"], bench.Everything());
    }

    [Fact]
    public void Stopping_leaves_the_old_pack_whole_and_no_litter()
    {
        Workbench? stopped = null;
        using var bench = new Workbench { WhenAskedTheDay = () => stopped!.Stop() };
        stopped = bench;
        bench.Write("flock.pdf", "the old pack");
        var outcome = bench.Run("pack", bench.Write("flock.yaml", Samples.TwoEwes), "--sheets", "planner");
        Assert.Equal(ExitStatus.Stopped, outcome.Status);
        Assert.Contains("stopped; nothing was written", outcome.Error, StringComparison.Ordinal);
        Assert.Equal("the old pack", File.ReadAllText(bench.PathOf("flock.pdf")));
        Assert.Equal(["flock.pdf", "flock.yaml"], bench.Everything());
    }

    [Fact]
    public void Sheets_with_nothing_on_them_are_not_printed()
    {
        using var bench = new Workbench();
        // Nobody is away, so there is nothing to hand over.
        var outcome = bench.Run("pack", bench.Write("flock.yaml", Samples.TwoEwes), "--sheets", "handover");
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains("nothing was written", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(["flock.yaml"], bench.Everything());
    }

    [Fact]
    public void A_new_pack_takes_the_place_of_the_old_one()
    {
        using var bench = new Workbench();
        bench.Run("pack", bench.Write("flock.yaml", Samples.TwoEwes));
        var old = File.ReadAllBytes(bench.PathOf("flock.pdf"));
        Assert.Equal(ExitStatus.Clean, bench.Run("pack", bench.Write("flock.yaml", Samples.TwoEwes + "\n    note: Lame behind\n")).Status);
        Assert.NotEqual(old, File.ReadAllBytes(bench.PathOf("flock.pdf")));
    }

    private sealed class SlowWatch(TimeSpan each) : TimeProvider
    {
        private TimeSpan _now;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => (_now += each).Ticks;
    }
}
