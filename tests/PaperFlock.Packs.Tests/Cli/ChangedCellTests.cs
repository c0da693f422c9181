using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>A row of which one cell alone says something else is a row that changed, wherever in it that cell stands.</summary>
public sealed class ChangedCellTests
{
    private const string Flock = Samples.TwoEwes + "\n    note: Quiet\n";

    private const string Vet = "  contacts:\n    - {role: Vet, name: Fell Gate Vets, phone: 01632 960 202}\n";

    /// <summary>The vet's number stands last in its row of the call sheet, and nobody gets through on the old one.</summary>
    [Theory]
    [InlineData("01632 960 202", "01632 960 203")]
    [InlineData("Fell Gate Vets", "Beck Foot Vets")]
    [InlineData("role: Vet", "role: Horse vet")]
    public void Whatever_changes_of_a_contact_the_call_sheet_is_printed_again(string old, string now)
    {
        using var bench = new Workbench();
        var text = Flock.Replace("season:", Vet + "season:", StringComparison.Ordinal);
        bench.Write("flock.yaml", text);
        Assert.Equal(ExitStatus.Clean, bench.Run("pack", "flock.yaml").Status);
        bench.Write("flock.yaml", text.Replace(old, now, StringComparison.Ordinal));
        var outcome = bench.Run("pack", "flock.yaml", "--changed", "--dry-run", "--as-of", "2026-11-26");
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Contains("CALL", outcome.Out, StringComparison.Ordinal);
    }
}
