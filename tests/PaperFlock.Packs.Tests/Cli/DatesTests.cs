using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

public sealed class DatesTests
{
    private static readonly char[] Decoration = ['│', '─', '╭', '\u001b'];

    [Fact]
    public void In_a_pipe_the_tables_are_plain_whole_and_without_trailing_blanks()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("dates", Samples.HollinBank, "--as-of", "2026-11-25");
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.DoesNotContain(outcome.Out, c => Decoration.Contains(c));
        Assert.DoesNotContain('…', outcome.Out);
        var lines = outcome.Out.Split('\n');
        Assert.All(lines, l => Assert.Equal(l.TrimEnd(), l));
        // Each job has its reason on its own line, longer than a screen is wide.
        Assert.Contains(lines, l => l.Length > 80);
    }

    [Fact]
    public void Every_ewe_is_there_by_her_tag_as_written()
    {
        using var bench = new Workbench();
        var lines = bench.Run("dates", Samples.HollinBank, "--as-of", "2026-11-25").Out.Split('\n');
        Assert.All(Enumerable.Range(101, 24), n => Assert.Single(lines, l => l.StartsWith($"ZZ 0123456 00{n}  ", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_day_carries_its_weekday_and_its_month_in_letters()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("dates", Samples.HollinBank, "--as-of", "2026-11-25");
        // 10 August 2026 is a Monday.
        Assert.Contains("\nMon 10 Aug 2026  ", outcome.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("2026-08-10", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void On_a_terminal_there_are_borders()
    {
        using var bench = new Workbench { OnATerminal = true };
        var outcome = bench.Run("dates", bench.Write("flock.yaml", Samples.TwoEwes));
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Contains('│', outcome.Out);
    }

    [Fact]
    public void Brackets_in_a_name_are_no_markup()
    {
        using var bench = new Workbench();
        var flock = Samples.TwoEwes.Replace("name: Bracken", "name: \"[red]Bracken[/]\"", StringComparison.Ordinal);
        Assert.Contains("[red]Bracken[/]", bench.Run("dates", bench.Write("flock.yaml", flock)).Out, StringComparison.Ordinal);
    }
}
