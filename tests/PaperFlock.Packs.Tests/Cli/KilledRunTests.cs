using System.Diagnostics;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>
/// A few rounds of what tests/PaperFlock.Faults does by the hundred: the real process, killed at the disk. The system does it, by the signal it sends
/// whoever writes more of a file than it may (SIGXFSZ; POSIX, setrlimit()): at the same byte however busy the machine is.
/// </summary>
public sealed class KilledRunTests
{
    /// <summary>How a shell tells of it: 128, and the signal's number, which is 25 on Linux and macOS.</summary>
    private const int KilledAtTheDisk = 128 + 25;

    [Fact]
    public async Task A_process_killed_at_the_disk_leaves_every_file_whole_and_the_next_run_sweeps_up()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes);
        bench.Run("pack", "flock.yaml");
        var old = State(bench);
        bench.Run("pack", "flock.yaml", "--as-of", "2026-12-03");
        var next = State(bench);
        var whole = next["flock.pdf"].Length / 1024;
        foreach (var kilobytes in new[] { 1, whole / 2, whole - 1 })
        {
            foreach (var (name, bytes) in old)
            {
                await File.WriteAllBytesAsync(bench.PathOf(name), bytes, Stop);
            }

            Assert.Equal(KilledAtTheDisk, await RunWithFilesOf(kilobytes, bench.Folder));
            Assert.NotEmpty(Directory.EnumerateFiles(bench.Folder, ".paperflock-*"));
            Assert.All(old, file => Assert.Equal(file.Value, File.ReadAllBytes(bench.PathOf(file.Key))));

            Assert.Equal(0, bench.Run("pack", "flock.yaml", "--as-of", "2026-12-03").Status);
            Assert.Equal(next.Keys.Order(StringComparer.Ordinal), bench.Everything());
            Assert.All(next, file => Assert.Equal(file.Value, File.ReadAllBytes(bench.PathOf(file.Key))));
        }
    }

    private static async Task<int> RunWithFilesOf(int kilobytes, string folder)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "paperflock.dll");
        var start = new ProcessStartInfo("bash", ["-c", $"ulimit -c 0; ulimit -f {kilobytes}; dotnet \"$0\" pack flock.yaml --as-of 2026-12-03", program])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        // The runtime keeps large files of its own for these.
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        start.Environment["DOTNET_EnableDiagnostics"] = "0";
        using var process = Process.Start(start)!;
        await Task.WhenAll(process.StandardOutput.ReadToEndAsync(Stop), process.StandardError.ReadToEndAsync(Stop));
        await process.WaitForExitAsync(Stop);
        return process.ExitCode;
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static Dictionary<string, byte[]> State(Workbench bench) => bench.Everything().ToDictionary(name => name, name => File.ReadAllBytes(bench.PathOf(name)), StringComparer.Ordinal);
}
