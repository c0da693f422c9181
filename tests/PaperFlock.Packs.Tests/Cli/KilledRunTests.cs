using System.Diagnostics;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>A few rounds of what tests/PaperFlock.Faults does by the hundred: the real process, killed while it puts files in place.</summary>
public sealed class KilledRunTests
{
    [Fact]
    public async Task A_process_killed_at_the_disk_leaves_every_file_whole_and_the_next_run_sweeps_up()
    {
        using var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes);
        bench.Run("pack", "flock.yaml");
        var old = State(bench);
        bench.Run("pack", "flock.yaml", "--as-of", "2026-12-03");
        var next = State(bench);
        var random = new Random(20261125);
        var seen = 0;
        for (var round = 0; round < 4; round++)
        {
            foreach (var (name, bytes) in old)
            {
                await File.WriteAllBytesAsync(bench.PathOf(name), bytes, Stop);
            }

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
            Assert.All(old.Keys, name => Assert.Contains(File.ReadAllBytes(bench.PathOf(name)), new[] { old[name], next[name] }, SameBytes.Instance));

            Assert.Equal(0, bench.Run("pack", "flock.yaml", "--as-of", "2026-12-03").Status);
            Assert.Equal(next.Keys.Order(StringComparer.Ordinal), bench.Everything());
            Assert.All(next, file => Assert.Equal(file.Value, File.ReadAllBytes(bench.PathOf(file.Key))));
        }

        Assert.True(seen > 0, "It was never killed at the disk: the moments are badly chosen.");
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static Dictionary<string, byte[]> State(Workbench bench) => bench.Everything().ToDictionary(name => name, name => File.ReadAllBytes(bench.PathOf(name)), StringComparer.Ordinal);

    private sealed class SameBytes : IEqualityComparer<byte[]>
    {
        public static readonly SameBytes Instance = new();

        public bool Equals(byte[]? x, byte[]? y) => x.AsSpan().SequenceEqual(y);

        public int GetHashCode(byte[] obj) => obj.Length;
    }
}
