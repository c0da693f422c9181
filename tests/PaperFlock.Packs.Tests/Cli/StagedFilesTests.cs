using PaperFlock.Cli;
using PaperFlock.Cli.Files;

namespace PaperFlock.Packs.Tests.Cli;

public sealed class StagedFilesTests
{
    [Fact]
    public void Nothing_is_in_place_before_all_is_put_there()
    {
        using var bench = new Workbench();
        using var staged = new StagedFiles();
        staged.Add(bench.PathOf("a.pdf"), "a.pdf", "new"u8.ToArray());
        Assert.False(File.Exists(bench.PathOf("a.pdf")));
        staged.PutInPlace(TestContext.Current.CancellationToken);
        Assert.Equal("new", File.ReadAllText(bench.PathOf("a.pdf")));
        Assert.Equal(["a.pdf"], bench.Everything());
    }

    [Fact]
    public void What_was_staged_is_taken_away_with_the_folders_made_for_it()
    {
        using var bench = new Workbench();
        using (var staged = new StagedFiles())
        {
            staged.AddFolder(bench.PathOf("zero/one"), "zero/one");
            staged.Add(bench.PathOf("one/two/a.pdf"), "a.pdf", "new"u8.ToArray());
            Assert.False(staged.PutInPlace(TestContext.Current.CancellationToken, lastLook: () => Directory.Exists(bench.PathOf("no such"))));
            Assert.Equal(["one", "one/two", "zero", "zero/one"], bench.Everything());
        }

        Assert.Empty(bench.Everything());
    }

    [Fact]
    public void A_folder_that_was_there_before_stays()
    {
        using var bench = new Workbench();
        Directory.CreateDirectory(bench.PathOf("packs"));
        using (var staged = new StagedFiles())
        {
            staged.Add(bench.PathOf("packs/new/a.pdf"), "a.pdf", "new"u8.ToArray());
        }

        Assert.Equal(["packs"], bench.Everything());
    }

    [Fact]
    public void A_second_file_that_cannot_be_written_keeps_the_first_out()
    {
        using var bench = new Workbench();
        Directory.CreateDirectory(bench.PathOf("b.pdf"));
        using (var staged = new StagedFiles())
        {
            staged.Add(bench.PathOf("a.pdf"), "a.pdf", "new"u8.ToArray());
            var e = Assert.Throws<UsageException>(() => staged.Add(bench.PathOf("b.pdf"), "b.pdf", "new"u8.ToArray()));
            Assert.Contains("that is a folder", e.Message, StringComparison.Ordinal);
        }

        Assert.Equal(["b.pdf"], bench.Everything());
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
                staged.Add(bench.PathOf(name), name, "new"u8.ToArray());
                staged.PutInPlace(TestContext.Current.CancellationToken);
            });
        }

        Assert.Empty(bench.Everything());
    }

    /// <summary>28 is ENOSPC on Linux and macOS; 0x80070070 is ERROR_DISK_FULL as .NET reports it on Windows.</summary>
    [Theory]
    [InlineData(28)]
    [InlineData(unchecked((int)0x80070070))]
    public void A_full_disk_is_called_that(int code)
    {
        Assert.Equal(Messages.DiskFull, FileTrouble.Reason(new IOException("No space left on device", code)));
    }

    [Fact]
    public void A_forbidden_file_is_called_that()
    {
        Assert.Equal(Messages.NotAllowed, FileTrouble.Reason(new UnauthorizedAccessException("Access to the path '/x' is denied.")));
    }
}
