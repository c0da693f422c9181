using PaperFlock.Flocks;

namespace PaperFlock.Packs.Tests.Entering;

/// <summary>Ewes that have gone or lost their lambs, and lambs for the flock book, from pencil to file.</summary>
public sealed class LossesTests
{
    [Theory]
    [InlineData("/sorrel|died 3 dec", "+ gone: {on: 2026-12-03, why: died}")]
    [InlineData("/sorrel|s today", "+ gone: {on: 2026-12-10, why: sold}")]
    [InlineData("/sorrel|culled yesterday", "+ gone: {on: 2026-12-09, why: culled}")]
    [InlineData("/sorrel|m 5", "+ gone: {on: 2026-12-05, why: missing}")]
    [InlineData("/sorrel|died Thu 3/12/2026", "+ gone: {on: 2026-12-03, why: died}")]
    [InlineData("/sorrel|lost 30 nov", "+ lost-lambs: 2026-11-30")]
    [InlineData("/sorrel|lost 30 nov, died 3 dec", "+ lost-lambs: 2026-11-30|+ gone: {on: 2026-12-03, why: died}")]
    [InlineData("/sorrel|died 3 dec|<|sold 4 dec", "+ gone: {on: 2026-12-04, why: sold}")]
    [InlineData("/sorrel|died 3 dec|<|-", "")]
    [InlineData("/sorrel|died 3 dec|q|-1", "")]
    public void A_loss_is_written_down(string typed, string change)
    {
        using var bench = new Workbench { Answers = typed.Replace('|', '\n') + "\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        var outcome = bench.Run("enter", "losses", FourEwes.File, "--as-of", "2026-12-10");
        Assert.Equal((0, ""), (outcome.Status, outcome.Error));
        FourEwes.Read(bench);
        Assert.Equal(change.Split('|').Order(StringComparer.Ordinal), FourEwes.Difference(FourEwes.Text, FourEwes.After(bench)).Split('\n').Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("died", "the day is missing; type it too, such as `died today`")]
    [InlineData("eaten 3 dec", "`eaten` does not say what became of her")]
    [InlineData("died 12 dec", "`12 dec` is yet to come: today is Thu 10 Dec 2026")]
    [InlineData("died 3/12/2024", "cannot be")]
    [InlineData("lost 1 aug", "cannot be: she can have carried them from Tue 11 Aug 2026")]
    [InlineData("died 3 dec, sold 4 dec", "one thing too many")]
    public void What_cannot_be_is_refused(string typed, string against)
    {
        using var bench = new Workbench { Answers = $"/sorrel\n{typed}\nq\n", AtAKeyboard = true };
        bench.Write(FourEwes.File, FourEwes.Text);
        var outcome = bench.Run("enter", "losses", FourEwes.File, "--as-of", "2026-12-10");
        Assert.Contains(against, outcome.Out, StringComparison.Ordinal);
        Assert.Equal(FourEwes.Text, FourEwes.After(bench));
    }

    /// <summary>A mark after the day she went is refused by the flock file's reader, in its words.</summary>
    [Fact]
    public void What_was_seen_of_her_afterwards_speaks_against_it()
    {
        using var bench = new Workbench { Answers = "/campion\ndied 2026-08-11\nq\n", AtAKeyboard = true };
        bench.Write(FourEwes.File, FourEwes.Text);
        var outcome = bench.Run("enter", "losses", FourEwes.File, "--as-of", "2026-12-10");
        Assert.Contains("not taken: a mark on Wed 12 Aug 2026, and she had gone on Tue 11 Aug 2026", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(FourEwes.Text, FourEwes.After(bench));
    }

    [Fact]
    public void Losses_come_from_a_spreadsheet_too()
    {
        using var bench = new Workbench();
        bench.Write(FourEwes.File, FourEwes.Text);
        bench.Write("losses.csv", "tag,date,reason,aborted\n00103,03/12/2026,died,\n00102,,,30/11/2026\n00104,04/12/2026,,\n");
        var outcome = bench.Run("enter", "losses", FourEwes.File, "--from", "losses.csv", "--as-of", "2026-12-10");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("losses.csv:4:7: warning CSV016: left out, of ZZ 0123456 00104: it is not said what became of her", outcome.Error, StringComparison.Ordinal);
        var ewes = FourEwes.Read(bench).Ewes;
        Assert.Equal(new Loss(new(2026, 12, 3), LossReason.Died), ewes[0].Gone);
        Assert.Equal(new(2026, 11, 30), ewes[2].LostLambs);
        Assert.Null(ewes[3].Gone);
    }

    [Theory]
    [InlineData("/sorrel|14 jan 2; ewe ZZ 0123456 10001 4.1 kg; ram", "+ lambed: 2027-01-14|+ lambs-alive: 2|+ lambs: [{tag: ZZ 0123456 10001, sex: ewe, weight: 4.1 kg}, {sex: ram}]")]
    [InlineData("/sorrel|14 jan 1|<|; w 10002 9 lb", "+ lambed: 2027-01-14|+ lambs-alive: 1|+ lambs: [{tag: '10002', sex: wether, weight: 9 lb}]")]
    [InlineData("/sorrel|14 jan 2; ewe; ewe|q|-1", "")]
    [InlineData("/sorrel|14 jan 2; ewe; ewe|<|-", "")]
    public void Lambs_are_written_down_behind_their_lambing(string typed, string change)
    {
        using var bench = new Workbench { Answers = typed.Replace('|', '\n') + "\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        var outcome = bench.Run("enter", "lambed", FourEwes.File, "--as-of", "2027-01-20");
        Assert.Equal((0, ""), (outcome.Status, outcome.Error));
        FourEwes.Read(bench);
        Assert.Equal(change.Split('|').Order(StringComparer.Ordinal), FourEwes.Difference(FourEwes.Text, FourEwes.After(bench)).Split('\n').Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("14 jan 1; ewe; ram", "2 lambs under `lambs`, and 1 under `lambs-alive`")]
    [InlineData("14 jan 2; goat", "`goat` is no lamb; type ewe, ram or wether")]
    [InlineData("; ewe", "the day she lambed is not given")]
    [InlineData("14 jan 1; ewe 10001 4.1", "`4.1` has no unit; a weight is typed with kg or lb")]
    [InlineData("14 jan 2; ewe ram", "has two lambs in it")]
    public void Lambs_that_cannot_be_are_refused(string typed, string against)
    {
        using var bench = new Workbench { Answers = $"/sorrel\n{typed}\nq\n", AtAKeyboard = true };
        bench.Write(FourEwes.File, FourEwes.Text);
        var outcome = bench.Run("enter", "lambed", FourEwes.File, "--as-of", "2027-01-20");
        Assert.Contains(against, outcome.Out, StringComparison.Ordinal);
        Assert.Equal(FourEwes.Text, FourEwes.After(bench));
    }
}
