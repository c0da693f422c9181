using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>What is printed again when a ewe dies or was scanned wrongly, and what is only struck through.</summary>
public sealed class LossTests
{
    private const string Comfrey = "    marks: [2026-08-23]\n    scan: 2\n";

    private static readonly string Lambed = Samples.TwoEwes.Replace(
        "    scan: 2\n",
        "    scan: 2\n    lambed: 2027-01-09\n    lambed-time: 03:20\n    lambs-alive: 2\n    lambs-dead: 1\n    lambing-help: hand\n    lambs: [{sex: ewe, tag: ZZ 0123456 10001, weight: 4.1 kg}]\n",
        StringComparison.Ordinal);

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
            ["WALL-28DEC", "DUE", "JOBS", "FEED-TWINS-1", "HOUS 1 and 2"],
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
            ["HAND-27DEC 1 and 2", "WALL-14DEC", "WALL-25JAN", "DUE", "JOBS", "FEED-SINGLES-1", "FEED-TWINS-1", "STOR 1 and 2", "HOUS 1 and 2", "CARD-00106"],
            outcome.Split('\n').Where(line => line.EndsWith("replaces issue 1", StringComparison.Ordinal)).Select(line => line[..line.IndexOf("  ", StringComparison.Ordinal)]));
    }

    [Fact]
    public void Births_are_rows_for_the_flock_book()
    {
        using var bench = new Workbench();
        bench.Write("flock.yaml", Lambed);
        var outcome = bench.Run("births", "flock.yaml", "--as-of", "2027-02-01");
        Assert.Equal("wrote flock-births.csv: 3 lambs of 1 ewe\nNext: open it with your spreadsheet; after another lambing, write it again\n", outcome.Out);
        Assert.Equal(
            [
                "dam tag,dam name,sire,sire is,born on,time,born as,born,reared by her,sex,lamb tag,birth weight kg,help,holding",
                "ZZ 0123456 00101,Bracken,,,2027-01-09,03:20,3,alive,2,ewe,ZZ 0123456 10001,4.1,hand,Hollin Bank",
                "ZZ 0123456 00101,Bracken,,,2027-01-09,03:20,3,alive,2,,,,hand,Hollin Bank",
                "ZZ 0123456 00101,Bracken,,,2027-01-09,03:20,3,dead,2,,,,hand,Hollin Bank",
                "",
            ],
            File.ReadAllText(bench.PathOf("flock-births.csv")).Split("\r\n"));
    }

    /// <summary>The flock's own list is replaced whenever there is another lamb; that of another holding is left alone, and nothing half written lies beside it.</summary>
    [Fact]
    public void Births_of_another_holding_are_replaced_only_where_that_is_wanted()
    {
        using var bench = new Workbench();
        bench.Write("flock.yaml", Lambed);
        Assert.Equal(ExitStatus.Clean, bench.Run("births", "flock.yaml", "--as-of", "2027-02-01").Status);
        var first = File.ReadAllBytes(bench.PathOf("flock-births.csv"));
        bench.Write("flock.yaml", Lambed + "\n    lambed: 2027-01-11\n    lambs-alive: 1\n");
        Assert.Equal(ExitStatus.Clean, bench.Run("births", "flock.yaml", "--as-of", "2027-02-01").Status);
        var ours = File.ReadAllBytes(bench.PathOf("flock-births.csv"));
        Assert.NotEqual(first, ours);

        bench.Write("flock.yaml", Lambed.Replace("Hollin Bank", "Holly, Brow", StringComparison.Ordinal));
        var refused = bench.Run("births", "flock.yaml", "--as-of", "2027-02-01");
        Assert.Equal(ExitStatus.WrongUse, refused.Status);
        Assert.Contains("flock-births.csv is of another holding; nothing was written", refused.Error, StringComparison.Ordinal);
        Assert.Equal(ours, File.ReadAllBytes(bench.PathOf("flock-births.csv")));
        Assert.Equal(["flock-births.csv", "flock.yaml"], bench.Everything());

        Assert.Equal(ExitStatus.Clean, bench.Run("births", "flock.yaml", "--as-of", "2027-02-01", "--overwrite").Status);
        Assert.Equal(ExitStatus.Clean, bench.Run("births", "flock.yaml", "--as-of", "2027-02-01").Status);
    }

    /// <summary>Before the first lambing there are headings alone, and nothing to lose.</summary>
    [Fact]
    public void A_list_without_a_birth_may_be_replaced()
    {
        using var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes);
        Assert.Equal(ExitStatus.Clean, bench.Run("births", "flock.yaml", "--as-of", "2026-12-01").Status);
        bench.Write("flock.yaml", Lambed.Replace("Hollin Bank", "Holly Brow", StringComparison.Ordinal));
        Assert.Equal(ExitStatus.Clean, bench.Run("births", "flock.yaml", "--as-of", "2027-02-01").Status);
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
