using PaperFlock.Cli;
using PaperFlock.Sheets;

namespace PaperFlock.Packs.Tests.Cli;

public sealed class FaultTests
{
    [Fact]
    public void A_fault_of_the_program_is_one_line_and_a_file_of_details()
    {
        using var bench = new Workbench { WhenAskedTheDay = () => throw new InvalidOperationException("the sums do not add up") };
        var flock = bench.Write("flock.yaml", Samples.TwoEwes);
        var outcome = bench.Run("dates", flock);

        Assert.Equal(ExitStatus.Fault, outcome.Status);
        var line = Assert.Single(outcome.Error.TrimEnd('\n').Split('\n'));
        Assert.Contains("please report it", line, StringComparison.Ordinal);
        var details = Assert.Single(bench.Everything(), f => f.StartsWith("paperflock-fault-", StringComparison.Ordinal));
        Assert.EndsWith(details, line, StringComparison.Ordinal);
        var report = File.ReadAllText(bench.PathOf(details));
        Assert.Contains("the sums do not add up", report, StringComparison.Ordinal);
        Assert.Contains("at PaperFlock.", report, StringComparison.Ordinal);
        Assert.Contains("\"dates\" \"flock.yaml\"", report, StringComparison.Ordinal);
    }

    [Fact]
    public void What_does_not_fit_names_its_sheet()
    {
        using var bench = new Workbench
        {
            WhenAskedTheDay = () => throw new SheetException("CARD", "note of Bracken: 300 pt needed, 200 pt there", new InvalidOperationException()),
        };
        var outcome = bench.Run("pack", bench.Write("flock.yaml", Samples.TwoEwes));
        Assert.Equal(ExitStatus.Fault, outcome.Status);
        Assert.Contains("paperflock: something is too long for its place on the paper: CARD: note of Bracken", outcome.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("flock.pdf", bench.Everything());
    }
}
