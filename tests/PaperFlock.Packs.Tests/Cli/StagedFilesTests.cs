using PaperFlock.Cli;
using PaperFlock.Cli.Files;

namespace PaperFlock.Packs.Tests.Cli;

public sealed class StagedFilesTests
{
    private const string Left = ".paperflock-k3j9x0aa.q1w.tmp";

    [Fact]
    public void Nothing_is_in_place_before_all_is_put_there()
    {
        using var bench = new Workbench();
        using (var staged = new StagedFiles())
        {
            staged.Add(File(bench, "a.pdf"), New);
            Assert.False(System.IO.File.Exists(bench.PathOf("a.pdf")));
            staged.PutInPlace(TestContext.Current.CancellationToken);
        }

        Assert.Equal("new", Said(bench, "a.pdf"));
        Assert.Equal(["a.pdf"], bench.Everything());
    }

    [Fact]
    public void What_was_staged_is_taken_away_with_the_folders_made_for_it()
    {
        using var bench = new Workbench();
        Directory.CreateDirectory(bench.PathOf("zero"));
        using (var staged = new StagedFiles())
        {
            staged.Add(File(bench, "one/two/a.pdf"), New);
            staged.Add(File(bench, "zero/a.pdf"), New);
            Assert.Contains("one/two", bench.Everything());
        }

        Assert.Equal(["zero"], bench.Everything());
    }

    [Fact]
    public void A_second_file_that_cannot_be_written_keeps_the_first_out()
    {
        using var bench = new Workbench();
        Directory.CreateDirectory(bench.PathOf("b.pdf"));
        bench.Write("a.pdf", "old");
        using (var staged = new StagedFiles())
        {
            staged.Add(File(bench, "a.pdf"), New);
            var e = Assert.Throws<UsageException>(() => staged.Add(File(bench, "b.pdf"), New));
            Assert.Contains("that is a folder", e.Message, StringComparison.Ordinal);
        }

        Assert.Equal("old", Said(bench, "a.pdf"));
        Assert.Equal(["a.pdf", "b.pdf"], bench.Everything());
    }

    /// <summary>Not even one that has come there since it was last looked for.</summary>
    [Fact]
    public void A_file_that_must_not_be_there_is_never_replaced()
    {
        using var bench = new Workbench();
        using (var staged = new StagedFiles())
        {
            staged.Add(File(bench, "a.yaml"), New, overwrite: false);
            bench.Write("a.yaml", "mine");
            Assert.Throws<UsageException>(() => staged.PutInPlace(TestContext.Current.CancellationToken));
        }

        Assert.Equal("mine", Said(bench, "a.yaml"));
        Assert.Equal(["a.yaml"], bench.Everything());
    }

    [Fact]
    public void A_name_too_long_for_the_disk_is_said_plainly_and_leaves_nothing()
    {
        using var bench = new Workbench();
        var name = new string('n', 300) + ".pdf";
        using (var staged = new StagedFiles())
        {
            Assert.Throws<UsageException>(() =>
            {
                staged.Add(File(bench, name), New);
                staged.PutInPlace(TestContext.Current.CancellationToken);
            });
        }

        Assert.Empty(bench.Everything());
    }

    [Theory]
    [InlineData(Left, false)]
    [InlineData(".paperflock-notes.txt", true)]
    [InlineData(".paperflock-mine.tmp", true)]
    [InlineData("paperflock-k3j9x0aa.q1w.tmp", true)]
    public void Only_what_the_program_names_so_is_swept_up(string name, bool stays)
    {
        using var bench = new Workbench();
        bench.Write(name, "half");
        Assert.Equal(ExitStatus.Clean, bench.Run("calendar", bench.Write("flock.yaml", Samples.TwoEwes)).Status);
        Assert.Equal(stays, bench.Everything().Contains(name));
    }

    [Fact]
    public void The_files_of_a_run_at_work_are_not_swept_up()
    {
        using var bench = new Workbench();
        using var working = new StagedFiles();
        working.Add(File(bench, "a.pdf"), New);
        using (var other = new StagedFiles())
        {
            other.Add(File(bench, "a.pdf"), "newer"u8.ToArray());
            other.PutInPlace(TestContext.Current.CancellationToken);
        }

        Assert.Equal("newer", Said(bench, "a.pdf"));
        working.PutInPlace(TestContext.Current.CancellationToken);
        Assert.Equal("new", Said(bench, "a.pdf"));
    }

    /// <summary>One may be about to write while another sweeps: none may take the other's file for one that was left behind.</summary>
    [Fact]
    public async Task Runs_at_once_do_not_sweep_up_each_others_files()
    {
        using var bench = new Workbench();
        await Task.WhenAll(Enumerable.Range(0, 4).Select(run => Task.Run(
            () =>
            {
                for (var i = 0; i < 200; i++)
                {
                    using var staged = new StagedFiles();
                    staged.Add(File(bench, $"{run % 2}.pdf"), New);
                    staged.PutInPlace(TestContext.Current.CancellationToken);
                }
            },
            TestContext.Current.CancellationToken)));
        Assert.Equal(["0.pdf", "1.pdf"], bench.Everything());
    }

    [Fact]
    public void A_link_is_replaced_and_what_it_leads_to_is_not_touched()
    {
        using var bench = new Workbench();
        Directory.CreateDirectory(bench.PathOf("packs"));
        bench.Write("elsewhere.txt", "mine");
        System.IO.File.CreateSymbolicLink(bench.PathOf("packs/flock.pdf"), bench.PathOf("elsewhere.txt"));
        System.IO.File.CreateSymbolicLink(bench.PathOf("packs/flock-wall.pdf"), bench.PathOf("nowhere.txt"));
        Assert.Equal(ExitStatus.Clean, bench.Run("pack", bench.Write("flock.yaml", Samples.TwoEwesOnALargerPlanner), "--out", "packs").Status);
        Assert.Equal("mine", Said(bench, "elsewhere.txt"));
        Assert.Null(new FileInfo(bench.PathOf("packs/flock.pdf")).LinkTarget);
        Assert.False(System.IO.File.Exists(bench.PathOf("nowhere.txt")));
    }

    /// <summary>28 is ENOSPC on Linux and macOS; 0x80070070 is ERROR_DISK_FULL as .NET reports it on Windows.</summary>
    [Theory]
    [InlineData(28)]
    [InlineData(unchecked((int)0x80070070))]
    public void A_full_disk_is_called_that(int code) =>
        Assert.Equal("the disk is full: make some room and try again", FileTrouble.Reason(new IOException("No space left on device", code)));

    [Fact]
    public void A_forbidden_file_is_called_that() =>
        Assert.StartsWith("this computer does not allow you to", FileTrouble.Reason(new UnauthorizedAccessException("Access to the path '/x' is denied.")), StringComparison.Ordinal);

    private static ReadOnlyMemory<byte> New => "new"u8.ToArray();

    private static OutputFile File(Workbench bench, string name) => new(bench.PathOf(name), name);

    private static string Said(Workbench bench, string name) => System.IO.File.ReadAllText(bench.PathOf(name));
}
