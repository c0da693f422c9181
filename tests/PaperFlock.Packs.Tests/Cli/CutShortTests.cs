using System.Diagnostics;
using System.IO.Hashing;
using PaperFlock.Cli;
using PaperFlock.Cli.Files;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>What a run that was killed while it put a pack in place leaves to the next one.</summary>
public sealed class CutShortTests
{
    private const string Record = "flock.issues.json";
    private const string Kept = ".paperflock-aaaaaaaa.bbb.tmp";
    private const string First = "PaperFlock was putting files in place and has not come to an end; its next run in this folder puts these back";

    /// <summary>The new pack is there and its record is not: by the old record a later run would print the wrong leaves.</summary>
    [Fact]
    public void A_new_pack_with_an_old_record_becomes_the_old_pack_again()
    {
        using var bench = new Workbench();
        bench.Write("flock.pdf", "new");
        bench.Write(Kept, "old");
        bench.Write(Record, "old record");
        Note(bench, ("flock.pdf", Kept, "new"), (Record, "", "new record"));
        CutShort.PutRight(bench.Folder, ".", Stop);
        Assert.Equal(["flock.issues.json", "flock.pdf"], bench.Everything());
        Assert.Equal(("old", "old record"), (Said(bench, "flock.pdf"), Said(bench, Record)));
    }

    [Fact]
    public void What_was_not_there_before_is_taken_away_again()
    {
        using var bench = new Workbench();
        bench.Write("flock.pdf", "new");
        Note(bench, ("flock.pdf", "", "new"));
        CutShort.PutRight(bench.Folder, ".", Stop);
        Assert.Empty(bench.Everything());
    }

    [Fact]
    public void What_somebody_has_put_there_since_is_left_alone()
    {
        using var bench = new Workbench();
        bench.Write("flock.pdf", "mine");
        Note(bench, ("flock.pdf", "", "new"));
        CutShort.PutRight(bench.Folder, ".", Stop);
        Assert.Equal(["flock.pdf"], bench.Everything());
        Assert.Equal("mine", Said(bench, "flock.pdf"));
    }

    /// <summary>Before the note was written to its end nothing had been moved.</summary>
    [Fact]
    public void A_note_that_breaks_off_puts_nothing_back()
    {
        using var bench = new Workbench();
        bench.Write("flock.pdf", "old");
        bench.Write(Kept, "old");
        bench.Write(".paperflock-undo", $"{First}\0flock.pdf\0{Kept}\0{Hash("old"u8)}");
        CutShort.PutRight(bench.Folder, ".", Stop);
        Assert.Equal(["flock.pdf"], bench.Everything());
        Assert.Equal("old", Said(bench, "flock.pdf"));
    }

    /// <summary>A note is a file like any other, and anybody may have written it.</summary>
    [Theory]
    [InlineData("../outside.txt", "")]
    [InlineData("inside.txt", "../outside.txt")]
    [InlineData("inside.txt", "mine.txt")]
    public void A_note_reaches_nothing_that_is_not_the_programs_own(string target, string kept)
    {
        using var bench = new Workbench();
        Directory.CreateDirectory(bench.PathOf("packs"));
        foreach (var name in new[] { "outside.txt", "packs/inside.txt", "packs/mine.txt" })
        {
            bench.Write(name, name == "packs/mine.txt" ? "mine" : "new");
        }

        Note(bench, "packs/", (target, kept, "new"));
        CutShort.PutRight(bench.PathOf("packs"), "packs", Stop);
        Assert.Equal(["outside.txt", "packs", "packs/inside.txt", "packs/mine.txt"], bench.Everything());
        Assert.Equal(("new", "new", "mine"), (Said(bench, "outside.txt"), Said(bench, "packs/inside.txt"), Said(bench, "packs/mine.txt")));
    }

    [Theory]
    [InlineData(".paperflock-k3j9x0aa.q1w.tmp", false)]
    [InlineData(".paperflock-notes.txt", true)]
    [InlineData(".paperflock-mine.tmp", true)]
    [InlineData("paperflock-k3j9x0aa.q1w.tmp", true)]
    public void Only_what_the_program_names_so_is_swept_up(string name, bool stays)
    {
        using var bench = new Workbench();
        bench.Write(name, "half");
        bench.Write("flock.yaml", Samples.TwoEwes);
        Assert.Equal(ExitStatus.Clean, bench.Run("calendar", "flock.yaml").Status);
        Assert.Equal(stays, bench.Everything().Contains(name));
    }

    [Fact]
    public void The_files_of_a_run_at_work_are_not_swept_up()
    {
        using var bench = new Workbench();
        bench.Write(Kept, "half");
        using var stop = new CancellationTokenSource(TimeSpan.FromMilliseconds(300));
        using (FolderLock.Take(bench.Folder, ".", Stop))
        {
            Assert.Throws<OperationCanceledException>(() => CutShort.PutRight(bench.Folder, ".", stop.Token));
        }

        Assert.Equal([Kept], bench.Everything());
    }

    [Fact]
    public void A_second_file_that_cannot_be_moved_puts_the_first_one_back()
    {
        using var bench = new Workbench();
        bench.Write("a.pdf", "old");
        using var staged = new StagedFiles();
        staged.Add(bench.PathOf("a.pdf"), "a.pdf", "new"u8.ToArray());
        staged.Add(bench.PathOf("b.pdf"), "b.pdf", "new"u8.ToArray());
        staged.Add(bench.PathOf("c.pdf"), "c.pdf", "new"u8.ToArray(), overwrite: false);
        bench.Write("c.pdf", "mine");
        Assert.Throws<UsageException>(() => staged.PutInPlace(Stop));
        Assert.Equal(["a.pdf", "c.pdf"], bench.Everything());
        Assert.Equal(("old", "mine"), (Said(bench, "a.pdf"), Said(bench, "c.pdf")));
    }

    [Fact]
    public void A_link_is_replaced_and_what_it_leads_to_is_not_touched()
    {
        using var bench = new Workbench();
        Directory.CreateDirectory(bench.PathOf("packs"));
        bench.Write("elsewhere.txt", "mine");
        File.CreateSymbolicLink(bench.PathOf("packs/flock.pdf"), bench.PathOf("elsewhere.txt"));
        File.CreateSymbolicLink(bench.PathOf("packs/flock-wall.pdf"), bench.PathOf("nowhere.txt"));
        Assert.Equal(ExitStatus.Clean, bench.Run("pack", bench.Write("flock.yaml", Samples.TwoEwes), "--out", "packs").Status);
        Assert.Equal("mine", Said(bench, "elsewhere.txt"));
        Assert.Null(new FileInfo(bench.PathOf("packs/flock.pdf")).LinkTarget);
        Assert.False(File.Exists(bench.PathOf("nowhere.txt")));
    }

    /// <summary>The issue is made again after that of the run that was faster.</summary>
    [Fact]
    public void A_pack_that_another_run_has_overtaken_is_made_again()
    {
        var overtakes = true;
        Workbench? bench = null;
        bench = new Workbench
        {
            Line = new BreakableLine
            {
                BeforePrint = _ =>
                {
                    if (overtakes)
                    {
                        overtakes = false;
                        Assert.Equal(ExitStatus.Clean, bench!.Run("pack", "flock.yaml", "--as-of", "2026-11-20").Status);
                    }
                },
            },
        };
        using (bench)
        {
            bench.Write("flock.yaml", Samples.TwoEwes);
            Assert.Equal(ExitStatus.Clean, bench.Run("pack", "flock.yaml").Status);
            Assert.Contains("\"number\":2,\"on\":\"2026-11-25\"", Said(bench, Record), StringComparison.Ordinal);
        }
    }

    /// <summary>A few rounds of what tests/PaperFlock.Faults does by the hundred: the real process, killed while it puts files in place.</summary>
    [Fact]
    public async Task A_process_killed_at_the_disk_leaves_one_pack_or_the_other()
    {
        using var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes);
        bench.Run("pack", "flock.yaml");
        var old = State(bench);
        var random = new Random(RandomCases.First);
        var seen = 0;
        for (var round = 0; round < 4; round++)
        {
            using var process = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "paperflock.dll"), "pack", "flock.yaml", "--as-of", "2026-12-03"])
            {
                WorkingDirectory = bench.Folder,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            })!;
            while (!process.HasExited && !Directory.EnumerateFiles(bench.Folder, ".paperflock-*").Any())
            {
                Thread.SpinWait(50);
            }

            Thread.Sleep(random.Next(0, 4));
            process.Kill();
            await process.WaitForExitAsync(Stop);
            seen += Directory.EnumerateFiles(bench.Folder, ".paperflock-*").Any() ? 1 : 0;
            CutShort.PutRight(bench.Folder, ".", Stop);
            Assert.DoesNotContain(bench.Everything(), name => name.StartsWith('.'));
            if (State(bench) != old)
            {
                Assert.Contains("nothing has changed since issue 2", bench.Run("pack", "flock.yaml", "--changed", "--as-of", "2026-12-03").Out, StringComparison.Ordinal);
                return;
            }
        }

        Assert.True(seen > 0, "It was never killed at the disk: the moments are badly chosen.");
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static string Hash(ReadOnlySpan<byte> bytes) => Convert.ToHexString(XxHash128.Hash(bytes));

    private static string Said(Workbench bench, string name) => File.ReadAllText(bench.PathOf(name));

    private static string State(Workbench bench) => string.Join('\n', bench.Everything().Select(name => $"{name} {Hash(File.ReadAllBytes(bench.PathOf(name)))}"));

    private static void Note(Workbench bench, params (string Target, string Kept, string New)[] files) => Note(bench, "", files);

    private static void Note(Workbench bench, string folder, params (string Target, string Kept, string New)[] files) =>
        bench.Write(
            folder + ".paperflock-undo",
            string.Join('\0', [First, .. files.SelectMany(f => new[] { f.Target, f.Kept, Hash(System.Text.Encoding.UTF8.GetBytes(f.New)) }), "end"]));
}
