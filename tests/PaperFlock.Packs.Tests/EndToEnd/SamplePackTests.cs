using PaperFlock.Cli;
using PaperFlock.Sheets;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace PaperFlock.Packs.Tests.EndToEnd;

/// <summary>The whole line on whole flocks, read back with PdfPig.</summary>
public sealed class SamplePackTests
{
    public static TheoryData<string, string, string[]> Flocks => new()
    {
        { "hollin-bank", "2026-11-25", ["hollin-bank-wall.pdf", "hollin-bank.pdf"] },
        { "kanuka-flat", "2027-06-20", ["kanuka-flat-wall.pdf", "kanuka-flat.pdf"] },
        { "smallest", "2026-11-25", ["smallest.pdf"] },
    };

    [Theory]
    [MemberData(nameof(Flocks))]
    public void A_flock_becomes_a_pack_that_names_the_place_and_every_ewe(string name, string asOf, string[] files)
    {
        using var bench = new Workbench();
        var flock = Path.Combine(Samples.Root, "flocks", name + ".yaml");
        var outcome = bench.Run("pack", flock, "--as-of", asOf, "--out", ".");
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        Assert.Equal(files, bench.Everything());

        using var pdf = PdfDocument.Open(bench.PathOf(name + ".pdf"));
        var text = string.Join('\n', pdf.GetPages().Select(p => ContentOrderTextExtractor.GetText(p)));
        var source = File.ReadAllLines(flock);
        Assert.Contains(ValueOf(source.First(l => l.StartsWith("  name: ", StringComparison.Ordinal))), text, StringComparison.Ordinal);
        Assert.All(
            source.Where(l => l.StartsWith("  - tag: ", StringComparison.Ordinal)).Select(ValueOf),
            tag => Assert.Contains(tag, text, StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_flock_on_the_same_day_is_the_same_bytes()
    {
        using var bench = new Workbench();
        foreach (var folder in new[] { "once", "again" })
        {
            bench.Run("pack", Samples.HollinBank, "--as-of", "2026-11-25", "--out", folder);
        }

        Assert.Equal(File.ReadAllBytes(bench.PathOf("once/hollin-bank.pdf")), File.ReadAllBytes(bench.PathOf("again/hollin-bank.pdf")));
    }

    /// <summary>How it went is told when the last has lambed.</summary>
    public static TheoryData<string> Kinds => [.. PackSheets.All.Select(s => s.Kind).Where(kind => kind != "year")];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Any_one_sheet_can_be_printed_alone(string kind)
    {
        using var bench = new Workbench();
        var outcome = bench.Run("pack", Samples.HollinBank, "--out", ".", "--as-of", "2026-11-25", "--sheets", kind);
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        Assert.StartsWith($"hollin-bank-{PackSheets.All.Single(s => s.Kind == kind).Code}", Assert.Single(bench.Everything(), f => !f.Contains("-wall", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    /// <summary>A leap year's lambing and both ends of the size a small flock has.</summary>
    [Theory]
    [InlineData(1, "2027-10-05")] // 147 days on is 29 February 2028
    [InlineData(40, "2026-10-01")]
    public void Flocks_of_any_size_and_year_become_packs(int ewes, string tupIn)
    {
        using var bench = new Workbench();
        var head = Samples.TwoEwes[..Samples.TwoEwes.IndexOf("ewes:", StringComparison.Ordinal)].Replace("2026-08-10", tupIn, StringComparison.Ordinal);
        var list = string.Concat(Enumerable.Range(1, ewes).Select(n => FormattableString.Invariant($"  - tag: ZZ 0123456 {n:00000}\n")));
        var outcome = bench.Run("pack", bench.Write("flock.yaml", head + "ewes:\n" + list));
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        using var pdf = PdfDocument.Open(bench.PathOf("flock.pdf"));
        Assert.True(pdf.NumberOfPages >= 10);
    }

    private static string ValueOf(string line) => line[(line.IndexOf(": ", StringComparison.Ordinal) + 2)..].Trim();
}
