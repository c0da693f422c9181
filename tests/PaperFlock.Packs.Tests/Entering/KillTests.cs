using System.Diagnostics;
using System.Text.RegularExpressions;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Packs.Tests.Entering;

/// <summary>The real process, killed by its id with no warning while answers go in.</summary>
public sealed class KillTests
{
    private const int Ewes = 40;

    private static readonly string Flock =
        $"# kept\npaperflock: 1\nholding: {{name: Hollin Bank, location: {{latitude: 54.46, longitude: -2.74}}, time-zone: Europe/London}}\nseason: {{tup-in: 2026-08-10}}\newes:\n{string.Concat(Enumerable.Range(1, Ewes).Select(n => string.Create(CultureInfo.InvariantCulture, $"  - tag: Z{n:000}   # ear {n}\n    note: Quiet\n")))}";

    [Fact]
    public async Task What_was_read_back_is_in_the_file_and_the_file_is_whole()
    {
        var random = new Random(RandomCases.First);
        var killedHalfWay = 0;
        for (var run = 0; run < 8; run++)
        {
            using var bench = new Workbench();
            bench.Write(FourEwes.File, Flock);
            var said = await EnterAndKill(bench.Folder, random.Next(1, Ewes - 5), random.Next(0, 12));

            var reading = FlockReader.Read(FourEwes.File, await File.ReadAllBytesAsync(bench.PathOf(FourEwes.File), TestContext.Current.CancellationToken));
            Assert.Empty(reading.Diagnostics);
            var confirmed = Regex.Matches(said, "  = (Z[0-9]+): ([0-9]) lambs?\n").Select(m => (m.Groups[1].Value, (int?)int.Parse(m.Groups[2].Value, CultureInfo.InvariantCulture))).ToList();
            var written = reading.Flock!.Ewes.Where(e => e.Scan is not null).Select(e => (e.Tag, e.Scan)).ToList();
            Assert.Equal(confirmed, written.Take(confirmed.Count));
            // One more may have been written and not yet read back.
            Assert.InRange(written.Count - confirmed.Count, 0, 1);
            Assert.Equal(Flock, Regex.Replace(FourEwes.After(bench), "    scan: [0-9]\n", ""));
            killedHalfWay += written.Count < Ewes ? 1 : 0;
        }

        Assert.True(killedHalfWay > 0, "The program was never killed while it worked: the moments are badly chosen.");
    }

    /// <summary>Answers all it is asked, and kills it so many milliseconds after so many answers were read back.</summary>
    private static async Task<string> EnterAndKill(string folder, int after, int milliseconds)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "paperflock.dll");
        using var process = Process.Start(new ProcessStartInfo("dotnet", [program, "enter", "scan", FourEwes.File, "--as-of", "2026-11-25"])
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        })!;
        for (var n = 1; n <= Ewes; n++)
        {
            await process.StandardInput.WriteLineAsync((1 + (n % 3)).ToString(CultureInfo.InvariantCulture));
        }

        await process.StandardInput.FlushAsync(TestContext.Current.CancellationToken);
        var said = "";
        for (var read = 0; read < after && await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } line;)
        {
            said += line + "\n";
            read += line.StartsWith("  = ", StringComparison.Ordinal) ? 1 : 0;
        }

        await Task.Delay(milliseconds, TestContext.Current.CancellationToken);
        process.Kill();
        said += await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return said;
    }
}
