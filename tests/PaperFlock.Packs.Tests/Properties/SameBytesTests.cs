using System.Diagnostics;
using System.IO.Hashing;

namespace PaperFlock.Packs.Tests.Properties;

/// <summary>The real process, in one surroundings and in another.</summary>
public sealed class SameBytesTests
{
    /// <summary>The variables, parted by spaces; whether it is called from the folder or from far away.</summary>
    [Theory]
    [InlineData("DOTNET_PROCESSOR_COUNT=1 LANG=tr_TR.UTF-8 LC_ALL=tr_TR.UTF-8 TZ=Pacific/Kiritimati", false)]
    [InlineData("DOTNET_PROCESSOR_COUNT=2 LANG=ar_SA.UTF-8 LC_ALL=ar_SA.UTF-8 TZ=Pacific/Pago_Pago", true)]
    [InlineData("DOTNET_PROCESSOR_COUNT=8 LANG=de_DE.UTF-8 LC_ALL=de_DE.UTF-8 TZ=Nowhere/AtAll DOTNET_TieredPGO=0 DOTNET_gcServer=1", true)]
    public async Task The_same_flock_is_the_same_bytes_in_any_surroundings(string variables, bool fromAfar)
    {
        using var here = new Workbench();
        using var there = new Workbench();
        foreach (var bench in new[] { here, there })
        {
            bench.Write("flock.yaml", Samples.TwoEwes);
        }

        Assert.Equal(0, here.Run("pack", "flock.yaml", "--png", "--as-of", "2026-11-25").Status);
        var start = new ProcessStartInfo(
            "dotnet",
            [
                Path.Combine(AppContext.BaseDirectory, "paperflock.dll"), "pack", fromAfar ? there.PathOf("flock.yaml") : "flock.yaml", "--png",
                "--as-of", "2026-11-25", "--out", fromAfar ? there.Folder : ".",
            ])
        {
            WorkingDirectory = fromAfar ? Path.GetTempPath() : there.Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var variable in variables.Split(' '))
        {
            start.Environment[variable.Split('=')[0]] = variable.Split('=')[1];
        }

        using var process = Process.Start(start)!;
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(0, process.ExitCode);
        Assert.Equal(All(here), All(there));
    }

    private static string[] All(Workbench bench) =>
        [.. bench.Everything().Where(n => File.Exists(bench.PathOf(n))).Select(n => $"{n} {Convert.ToHexString(XxHash128.Hash(File.ReadAllBytes(bench.PathOf(n))))}")];
}
