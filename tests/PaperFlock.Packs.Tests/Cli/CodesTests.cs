using PaperFlock.Packs.Figures;
using PaperFlock.Planning;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>Other programs compare with these words, and people's calendars know jobs by them: they never change.</summary>
public sealed class CodesTests
{
    [Fact]
    public void Jobs_keep_their_codes() => Keeps<JobKind>(
        "abortion-vaccine teeth-toes-teats tup-check bought-tup shear tup-in raddle-change tup-change tup-out fluke-and-worms scan sort look-over feed-from buckets-out booster two-feeds heavy-rounds shed-ready house dag "
        + "first-due ring-and-tag turnout last-due own");

    [Fact]
    public void Evidence_keeps_its_codes() => Keeps<Evidence>("lambed mating mark scan tup-stay");

    [Fact]
    public void Standings_keep_their_codes() => Keeps<Standing>("to-lamb empty left-out lambed lost-lambs gone");

    [Fact]
    public void Verdicts_keep_their_codes() => Keeps<TupVerdict>("to-the-tup treat-first leave-out cull");

    [Fact]
    public void Places_keep_their_codes() => Keeps<PlaceKind>("field pen lambing-pen with-lambs gone");

    [Fact]
    public void States_keep_their_codes() => Keeps<EweState>("with-tup in-lamb lambed not-in-lamb left-out gone");

    private static void Keeps<T>(string codes)
        where T : struct, Enum => Assert.Equal(codes.Split(' '), Enum.GetValues<T>().Select(Codes.Of));
}
