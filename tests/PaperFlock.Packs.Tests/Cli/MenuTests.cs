using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>The program double-clicked, in a window of its own that goes when it ends.</summary>
public sealed class MenuTests
{
    private static readonly string[] SampleFiles = ["paperflock-sample", "paperflock-sample/hollin-bank-wall.pdf", "paperflock-sample/hollin-bank.pdf", "paperflock-sample/hollin-bank.yaml"];

    [Fact]
    public void A_file_can_be_opened_or_dragged_onto_the_window_and_the_choice_comes_again()
    {
        using var bench = Clicked("1\n\"flock.yaml\"\nflock.yaml\nnope.yaml\n\n");
        bench.Write("flock.yaml", Samples.TwoEwes);
        var outcome = bench.Run();
        Assert.Equal(5, outcome.Out.Split("Type 1, 2 or 3").Length);
        Assert.Contains("wrote flock.pdf", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("cannot read nope.yaml", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
    }

    [Fact]
    public void A_flock_file_can_be_started()
    {
        using var bench = Clicked("2\n\n\n\n\n\n\n\n\n");
        Assert.Equal(ExitStatus.Clean, bench.Run().Status);
        Assert.Equal(["my-flock.yaml"], bench.Everything());
    }

    [Fact]
    public void The_sample_is_written_and_packed_and_what_was_changed_in_it_stays()
    {
        using var bench = Clicked("3\n\n");
        Assert.Equal(ExitStatus.Clean, bench.Run().Status);
        Assert.Equal(SampleFiles, bench.Everything());
        Assert.Equal(File.ReadAllBytes(Samples.HollinBank), File.ReadAllBytes(bench.PathOf(SampleFiles[^1])));

        bench.Write(SampleFiles[^1], Samples.TwoEwes);
        bench.Answers = "3\n\n";
        bench.Run();
        Assert.Equal(Samples.TwoEwes, File.ReadAllText(bench.PathOf(SampleFiles[^1])));
    }

    [Fact]
    public void In_a_shell_nothing_is_asked()
    {
        using var bench = new Workbench { Answers = "3\n" };
        Assert.Contains("paperflock --help", bench.Run().Out, StringComparison.Ordinal);
        Assert.Empty(bench.Everything());
    }

    private static Workbench Clicked(string answers) => new() { Answers = answers, AtAKeyboard = true, WaitBeforeClosing = () => { } };
}
