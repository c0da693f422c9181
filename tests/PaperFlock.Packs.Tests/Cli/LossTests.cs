using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>What is printed again when a ewe dies or was scanned wrongly, and what is only struck through.</summary>
public sealed class LossTests
{
    private const string Comfrey = "    marks: [2026-08-23]\n    scan: 2\n";

    /// <summary>Register, what to take out, the sitter's leaf and the stores: four sheets of paper.</summary>
    [Fact]
    public void A_ewe_that_dies_takes_four_sheets_and_is_struck_from_the_others()
    {
        using var bench = new Workbench();
        var flock = File.ReadAllText(Samples.HollinBank);
        bench.Write("flock.yaml", flock);
        Assert.Equal(ExitStatus.Clean, bench.Run("pack", "flock.yaml", "--as-of", "2026-12-02").Status);
        bench.Write("flock.yaml", flock.Replace(Comfrey, Comfrey + "    gone: {on: 2026-12-03, why: died}\n", StringComparison.Ordinal));

        var outcome = bench.Run("pack", "flock.yaml", "--changed", "--dry-run", "--as-of", "2026-12-04").Out;
        Assert.Equal(
            ["HAND-27DEC 1 and 2", "STOR 1 and 2"],
            outcome.Split('\n').Where(line => line.EndsWith("replaces issue 1", StringComparison.Ordinal)).Select(line => line[..line.IndexOf("  ", StringComparison.Ordinal)]));
        Assert.Contains("CARD-00111  Comfrey, no longer part of the pack", outcome, StringComparison.Ordinal);
        Assert.Equal(
            ["WALL-11JAN", "DUE", "JOBS", "FEED-TWINS-1", "HOUS 1 and 2"],
            outcome.Split('\n').Where(line => line.Contains("stays: strike through", StringComparison.Ordinal)).Select(line => line[..line.IndexOf("  ", StringComparison.Ordinal)]));
    }

    /// <summary>From two lambs to one: her own sheets, and those of the classes she leaves and joins. No other ewe changes her pen, her chart or her card.</summary>
    [Fact]
    public void A_scan_put_right_prints_what_says_something_else_now()
    {
        using var bench = new Workbench();
        var flock = File.ReadAllText(Samples.HollinBank);
        bench.Write("flock.yaml", flock);
        Assert.Equal(ExitStatus.Clean, bench.Run("pack", "flock.yaml", "--as-of", "2026-11-25").Status);
        var bryony = flock.IndexOf("scan: 2", flock.IndexOf("name: Bryony", StringComparison.Ordinal), StringComparison.Ordinal);
        bench.Write("flock.yaml", flock.Remove(bryony, "scan: 2".Length).Insert(bryony, "scan: 1"));

        var outcome = bench.Run("pack", "flock.yaml", "--changed", "--dry-run", "--as-of", "2026-11-26").Out;
        Assert.Equal(
            ["HAND-27DEC 1 and 2", "WALL-23NOV", "WALL-11JAN", "DUE", "JOBS", "FEED-SINGLES-1", "FEED-TWINS-1", "STOR 1 and 2", "HOUS 1 and 2", "CARD-00106"],
            outcome.Split('\n').Where(line => line.EndsWith("replaces issue 1", StringComparison.Ordinal)).Select(line => line[..line.IndexOf("  ", StringComparison.Ordinal)]));
    }

    [Fact]
    public void Births_are_rows_for_the_flock_book()
    {
        using var bench = new Workbench();
        bench.Write(
            "flock.yaml",
            Samples.TwoEwes.Replace("    scan: 2\n", "    scan: 2\n    lambed: 2027-01-09\n    lambed-time: 03:20\n    lambs-alive: 2\n    lambs-dead: 1\n    lambing-help: hand\n    lambs: [{sex: ewe, tag: ZZ 0123456 10001, weight: 4.1 kg}]\n", StringComparison.Ordinal));
        var outcome = bench.Run("births", "flock.yaml", "--as-of", "2027-02-01");
        Assert.Equal("wrote flock-births.csv: 3 lambs of 1 ewe\n", outcome.Out);
        Assert.Equal(
            [
                "dam tag,dam name,sire,sire is,born on,time,born as,born,reared by her,sex,lamb tag,birth weight kg,help",
                "ZZ 0123456 00101,Bracken,,,2027-01-09,03:20,3,alive,2,ewe,ZZ 0123456 10001,4.1,hand",
                "ZZ 0123456 00101,Bracken,,,2027-01-09,03:20,3,alive,2,,,,hand",
                "ZZ 0123456 00101,Bracken,,,2027-01-09,03:20,3,dead,2,,,,hand",
                "",
            ],
            File.ReadAllText(bench.PathOf("flock-births.csv")).Split("\r\n"));
    }

    /// <summary>When the last has lambed, and not before.</summary>
    [Theory]
    [InlineData("lambed: 2027-01-09", true)]
    [InlineData("lost-lambs: 2026-12-20", false)]
    public void The_season_is_told_when_the_last_has_lambed(string sorrel, bool told)
    {
        using var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes.Replace("    scan: 2\n", $"    scan: 2\n    {sorrel}\n", StringComparison.Ordinal) + "\n    scan: 0\n");
        var outcome = bench.Run("pack", "flock.yaml", "--sheets", "year", "--as-of", "2027-02-01");
        Assert.Equal(told ? ExitStatus.Clean : ExitStatus.WrongUse, outcome.Status);
    }
}
