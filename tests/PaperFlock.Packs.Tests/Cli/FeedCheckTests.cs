using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>Rations that are absurd, at the terminal: placed at the value that would change them, with the number that would be printed.</summary>
public sealed class FeedCheckTests
{
    [Theory]
    [InlineData("per-lamb: 1 kg", "flock.yaml:17:13: warning FLK127: 1 kg a lamb a day is far over the usual pound (0.45 kg)")]
    [InlineData("largest-feed: 1 kg", "flock.yaml:17:17: warning FLK131: a feed of 1 kg is too much at one time: 0.5 kg is printed at most")]
    [InlineData("forage: {energy: 4 MJ/kg}", "flock.yaml:17:3: warning FLK121: FEED-TWINS-1: ")]
    [InlineData("concentrate: none", "warning FLK123: FEED-TWINS-1: forage alone gives ")]
    [InlineData("{scales: no, concentrate: {scoop: 3 kg}}", "warning FLK136: FEED-TWINS-1: half a scoop is 1.5 kg and the smallest feed ")]
    public void An_absurd_ration_is_warned_of(string feeds, string said)
    {
        using var bench = new Workbench();
        var outcome = bench.Run("check", bench.Write("flock.yaml", Flock(feeds)));
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Contains(said, outcome.Out + outcome.Error, StringComparison.Ordinal);
    }

    /// <summary>A lamb's weight and a forage she hardly eats: nothing that can be weighed is safe.</summary>
    [Fact]
    public void A_ewe_for_whom_no_ration_can_be_made_is_an_error_that_names_her()
    {
        using var bench = new Workbench();
        var file = bench.Write("flock.yaml", Flock("forage: {intake: 0.3 %, substitution: 1}").Replace("weight: 72 kg", "weight: 15 kg", StringComparison.Ordinal));
        var outcome = bench.Run("check", file);
        Assert.Equal(ExitStatus.FlockErrors, outcome.Status);
        Assert.Contains("error FLK120: no ration can be made for Bracken", outcome.Out + outcome.Error, StringComparison.Ordinal);
    }

    private static string Flock(string feeds) =>
        """
        paperflock: 1
        holding:
          name: Hollin Bank
          location: {latitude: 54.46, longitude: -2.74}
          time-zone: Europe/London
        season:
          tup-in: 2026-08-10
        ewes:
          - tag: ZZ 0123456 00101
            name: Bracken
            weight: 72 kg
            marks: [2026-08-14]
            scan: 2
          - {tag: ZZ 0123456 00102, weight: 72 kg, marks: [2026-08-15], scan: 2}


        """ + (feeds.StartsWith('{') ? $"feeds: {feeds}\n" : $"feeds:\n  {feeds}\n");
}
