using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

public sealed class CommandLineTests
{
    [Fact]
    public void No_arguments_say_what_to_do_next_in_four_lines()
    {
        using var bench = new Workbench();
        var outcome = bench.Run();
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Equal(4, outcome.Out.TrimEnd('\n').Split('\n').Length);
        Assert.Contains("paperflock check my-flock.yaml", outcome.Out, StringComparison.Ordinal);
        Assert.Empty(outcome.Error);
    }

    [Theory]
    [InlineData("--help")]
    [InlineData("-h")]
    public void Help_names_every_command(string option)
    {
        using var bench = new Workbench();
        var outcome = bench.Run(option);
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.All(["pack <FLOCK.yaml>", "check <FLOCK.yaml>", "dates <FLOCK.yaml>", "figures <FLOCK.yaml>", "testpage"], c => Assert.Contains(c, outcome.Out, StringComparison.Ordinal));
        Assert.Empty(outcome.Error);
    }

    [Fact]
    public void Help_for_a_command_names_every_option_of_it()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("pack", "--help");
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.All(["--out <DIR>", "--sheets <a,b,…>", "--as-of <DATE>", "--from <DATE>", "--to <DATE>", "--split", "--png", "planner", "cards"], o => Assert.Contains(o, outcome.Out, StringComparison.Ordinal));
    }

    [Fact]
    public void Version_is_the_program_and_a_number()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("--version");
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Matches("^paperflock [0-9]+\\.[0-9]+\\.[0-9]+\n$", outcome.Out);
    }

    /// <summary>The arguments with spaces between, and what the first line of the complaint holds.</summary>
    [Theory]
    [InlineData("pakc x.yaml", "no command 'pakc'; did you mean 'pack'?")]
    [InlineData("figure x.yaml", "did you mean 'figures'?")]
    [InlineData("xylophone", "no command 'xylophone'")]
    [InlineData("pack", "pack wants a flock file, such as: paperflock pack flocks/hollin-bank.yaml")]
    [InlineData("dates", "dates wants a flock file")]
    [InlineData("dates x.yaml y.yaml", "'y.yaml' is one thing too many")]
    [InlineData("pack x.yaml --ot y", "no option '--ot'; did you mean '--out'?")]
    [InlineData("pack x.yaml --out", "--out wants something after it")]
    [InlineData("dates x.yaml --as-of 2026-02-30", "'2026-02-30' is no date: write it year first, such as --as-of 2026-11-25")]
    [InlineData("dates x.yaml --as-of 5/11/2026", "`5/11/2026` may be Thu 5 Nov 2026 or Mon 11 May 2026; write `2026-11-05` or `2026-05-11`")]
    [InlineData("dates x.yaml --as-of 9999-12-31", "'9999-12-31' is outside the years this program works in, 1900 to 2200")]
    [InlineData("dates x.yaml --as-of", "--as-of wants something after it")]
    [InlineData("pack x.yaml --sheets plnner", "no sheet 'plnner'; did you mean 'planner'?")]
    [InlineData("pack x.yaml --sheets zzz", "no sheet 'zzz'; there are register")]
    [InlineData("pack x.yaml --sheets ,", "--sheets wants the names of sheets")]
    [InlineData("check nope.yaml", "cannot read nope.yaml: there is no such file")]
    [InlineData("check no/where/nope.yaml", "cannot read no/where/nope.yaml: there is no such folder")]
    [InlineData("check .", "there is no flock file in .: their names end in .yaml")]
    [InlineData("dates .", "cannot read .: that is a folder")]
    public void A_wrong_command_line_is_status_2_and_says_what_to_do(string args, string complaint)
    {
        using var bench = new Workbench();
        var outcome = bench.Run(args.Split(' '));
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.StartsWith("paperflock: ", outcome.Error, StringComparison.Ordinal);
        Assert.Contains(complaint, outcome.Error.Split('\n')[0], StringComparison.Ordinal);
        Assert.Empty(outcome.Out);
        Assert.Empty(bench.Everything());
    }

    [Fact]
    public void Every_wrong_sheet_is_named_at_once()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("pack", "x.yaml", "--sheets", "plnner,cards,jbos");
        Assert.Contains("'plnner'", outcome.Error, StringComparison.Ordinal);
        Assert.Contains("'jbos'", outcome.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-11-25T12:30Z", "2026-11-26")] // 01:30 on the 26th in Auckland, summer time, UTC+13
    [InlineData("2026-11-25T10:59Z", "2026-11-25")] // one minute to midnight
    public void Today_is_the_day_at_the_holding(string instant, string asOf)
    {
        using var bench = new Workbench { Now = NodaTime.Text.InstantPattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm'Z'").Parse(instant).Value };
        var flock = bench.Write("flock.yaml", Samples.TwoEwes.Replace("Europe/London", "Pacific/Auckland", StringComparison.Ordinal));
        Assert.Contains($"\"asOf\": \"{asOf}\"", bench.Run("figures", flock).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void As_of_stands_in_for_today()
    {
        using var bench = new Workbench();
        var flock = bench.Write("flock.yaml", Samples.TwoEwes);
        Assert.Contains("\"asOf\": \"2027-02-28\"", bench.Run("figures", flock, "--as-of", "2027-02-28").Out, StringComparison.Ordinal);
    }
}
