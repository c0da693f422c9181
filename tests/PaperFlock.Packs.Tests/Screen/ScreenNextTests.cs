using PaperFlock.Packs.Screen;

namespace PaperFlock.Packs.Tests.Screen;

/// <summary>The next season begun on a screen: the file that the command line writes, and what is said of it.</summary>
public sealed class ScreenNextTests
{
    private static readonly string Flock = File.ReadAllText(Samples.HollinBank);

    [Fact]
    public void It_is_the_file_of_the_command_line()
    {
        using var bench = new Workbench();
        bench.Write("hollin-bank.yaml", Flock);
        bench.Run("begin", "next.yaml", "--from", "hollin-bank.yaml", "--tup-in", "2027-08-09", "--as-of", "2027-03-01");

        var begun = ScreenNext.Begin(new OpenFlock(Flock, "hollin-bank.yaml", "2027-03-01"), "9 Aug 2027");
        Assert.Equal(File.ReadAllText(bench.PathOf("next.yaml")), begun["text"]!.GetValue<string>());
        Assert.Equal("hollin-bank-2027.yaml", begun["name"]!.GetValue<string>());
        Assert.StartsWith("24 ewes, tup in Mon 9 Aug 2027.", begun["summary"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal(["Left behind:", "Should not go to the tup again:", "Think about:"], begun["said"]!.AsArray().Select(s => s!["heading"]!.GetValue<string>()));
    }

    /// <summary>52 weeks after Mon 10 Aug 2026.</summary>
    [Fact]
    public void Without_a_day_it_is_the_same_day_of_the_week_a_year_on() =>
        Assert.Contains("tup-in: 2027-08-09", ScreenNext.Begin(new OpenFlock(Flock, "hollin-bank.yaml", "2027-03-01"), " ")["text"]!.GetValue<string>(), StringComparison.Ordinal);

    [Theory]
    [InlineData("10 Aug 2026", "comes after it")]
    [InlineData("in August", "is no date")]
    [InlineData("9/8/27", "could be two days")]
    public void A_day_that_cannot_be_is_said(string typed, string says) =>
        Assert.Contains(says, ScreenNext.Begin(new OpenFlock(Flock, "hollin-bank.yaml", "2027-03-01"), typed)["wrong"]!.GetValue<string>(), StringComparison.Ordinal);

    [Fact]
    public void A_flock_of_which_nobody_is_left_has_no_next_season() =>
        Assert.Throws<PackRequestException>(() => ScreenNext.Begin(new OpenFlock(Samples.TwoEwes.Split("  - tag: ZZ 0123456 00102")[0].TrimEnd() + "\n    gone: {on: 2026-11-20, why: sold}\n", "flock.yaml", "2026-12-01"), ""));
}
