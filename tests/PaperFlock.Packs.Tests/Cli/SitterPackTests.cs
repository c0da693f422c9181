using NodaTime.Text;
using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>Just the leaves for some days.</summary>
public sealed class SitterPackTests
{
    private static readonly string[] AsOf = ["--as-of", "2026-11-25"];

    [Fact]
    public void A_sitters_pack_has_a_file_of_its_own_with_the_handover_on_top()
    {
        using var bench = new Workbench();
        using var pdf = Sitter(bench, "hollin-bank-27DEC-02JAN.pdf", "2026-12-27", "2027-01-02");
        Assert.Equal(["hollin-bank-27DEC-02JAN.pdf"], bench.Everything());
        Assert.Contains("While Tom is in charge", pdf.Texts[0], StringComparison.Ordinal);
        Assert.Equal(
            ["HAND-27DEC", "CALL", "DUE", "JOBS", "GIVEN", "Round", "CARD", "LOOK"],
            pdf.Outline.Where(l => !l.StartsWith(' ')).Select(l => l.Split(' ')[0]));
    }

    [Fact]
    public void Its_logs_are_of_exactly_those_days()
    {
        using var bench = new Workbench();
        using var pdf = Sitter(bench, "hollin-bank-27DEC-02JAN-LOG.pdf", "2026-12-27", "2027-01-02", "--sheets", "log");
        var text = pdf.Text.Replace('\u00a0', ' ');
        Assert.All(
            ["Sun 27 Dec", "Mon 28 Dec", "Tue 29 Dec", "Wed 30 Dec", "Thu 31 Dec", "Fri 1 Jan", "Sat 2 Jan"],
            day => Assert.Contains(day, text, StringComparison.Ordinal));
        Assert.DoesNotContain("Sat 26 Dec", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Sun 3 Jan", text, StringComparison.Ordinal);
    }

    /// <summary>The ewes whose window of nine chances in ten touches the days, worked out here from the figures the program gives other programs.</summary>
    [Theory]
    [InlineData("2026-12-27", "2027-01-02")]
    [InlineData("2027-01-05", "2027-01-05")]
    [InlineData("2026-12-01", "2026-12-05")]
    public void Cards_and_who_lambs_when_are_of_the_ewes_who_may_lamb_then(string from, string to)
    {
        using var bench = new Workbench();
        var figures = System.Text.Json.JsonDocument.Parse(bench.Run(["figures", Samples.HollinBank, .. AsOf]).Out).RootElement;
        var ewes = figures.GetProperty("ewes").EnumerateArray().Select(e => (Tag: e.GetProperty("tag").GetString()!, Due: e.GetProperty("due"))).ToArray();
        var may = ewes.Where(e => e.Due.ValueKind == System.Text.Json.JsonValueKind.Object
            && string.CompareOrdinal(e.Due.GetProperty("earliest").GetString(), to) <= 0
            && string.CompareOrdinal(e.Due.GetProperty("latest").GetString(), from) >= 0).Select(e => e.Tag).ToArray();
        foreach (var sheet in new[] { "cards", "due" })
        {
            var outcome = bench.Run(["pack", Samples.HollinBank, .. AsOf, "--from", from, "--to", to, "--sheets", sheet, "--out", sheet]);
            if (may.Length == 0)
            {
                Assert.Contains("nothing was written", outcome.Error, StringComparison.Ordinal);
                continue;
            }

            using var pdf = new PackPdf(Directory.GetFiles(bench.PathOf(sheet)).Single());
            var text = pdf.Text;
            Assert.Equal(may.Order(StringComparer.Ordinal), ewes.Select(e => e.Tag).Where(t => text.Contains(t, StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public void Days_when_nobody_is_away_are_handed_over_with_blanks_to_fill_in()
    {
        using var bench = new Workbench();
        using var pdf = Sitter(bench, "hollin-bank-10JAN-11JAN-HAND.pdf", "2027-01-10", "2027-01-11", "--sheets", "handover");
        var text = pdf.Text.Replace('\u00a0', ' ');
        Assert.Contains("While Nell is away: Sun 10 Jan to Mon 11 Jan", text, StringComparison.Ordinal);
        Assert.Contains("in charge ____", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Tom Birkett", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_jobs_of_those_days_are_listed()
    {
        using var bench = new Workbench();
        using var pdf = Sitter(bench, "hollin-bank-24DEC-26DEC-JOBS.pdf", "2026-12-24", "2026-12-26", "--sheets", "jobs");
        var text = pdf.Text.Replace('\u00a0', ' ');
        // Closed on 25 December and on 1 January, says the flock file.
        Assert.Equal(2, text.Split("Feed merchant closed").Length);
        Assert.DoesNotContain("Sun 20 Dec", text, StringComparison.Ordinal);
    }

    /// <summary>Whoever is in charge does not stand in the list they ring, and class charts are over the keeper's bins.</summary>
    [Fact]
    public void The_sitter_rings_the_keeper_and_the_keeper_the_sitter()
    {
        using var bench = new Workbench();
        using var sitter = Sitter(bench, "hollin-bank-27DEC-02JAN-CALL.pdf", "2026-12-27", "2027-01-02", "--sheets", "calls");
        Assert.Contains("Nell Ashworth", sitter.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Tom Birkett", sitter.Text, StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Clean, bench.Run(["pack", Samples.HollinBank, .. AsOf, "--sheets", "calls", "--out", "keeper"]).Status);
        using var keeper = new PackPdf(Directory.GetFiles(bench.PathOf("keeper")).Single());
        Assert.Contains("Tom Birkett", keeper.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Nell Ashworth", keeper.Text, StringComparison.Ordinal);
        var early = bench.Run(["pack", Samples.HollinBank, "--out", ".", .. AsOf, "--from", "2026-12-27", "--to", "2027-01-02", "--sheets", "feed"]);
        Assert.Equal(ExitStatus.WrongUse, early.Status);
    }

    [Fact]
    public void Every_leaf_says_which_days_it_is_for()
    {
        using var bench = new Workbench();
        using var pdf = Sitter(bench, "hollin-bank-27DEC-02JAN-CALL-JOBS-LOG.pdf", "2026-12-27", "2027-01-02", "--sheets", "calls,jobs,log");
        var texts = pdf.Texts.Select(t => t.Replace('\u00a0', ' ')).Where(t => !t.Contains(" back · issue 1", StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(texts);
        Assert.All(texts, t => Assert.Contains("from Sun 27 Dec · not after Sat 2 Jan 2027", t, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("--from 2026-12-27", "--from wants --to as well")]
    [InlineData("--to 2027-01-02", "--to wants --from as well")]
    [InlineData("--from 2027-01-02 --to 2026-12-27", "--from Sat 2 Jan 2027 comes after --to Sun 27 Dec 2026")]
    [InlineData("--from 2026-12-27 --to 2028-01-01", "and Sat 1 Jan 2028 is outside it")]
    [InlineData("--from 2025-12-27 --to 2026-12-27", "and Sat 27 Dec 2025 is outside it")]
    [InlineData("--from 27/13/2026 --to 2027-01-02", "'27/13/2026' is no date: write it year first, such as --from 2026-11-25")]
    [InlineData("--from 2026-12-27 --to", "--to wants something after it")]
    [InlineData("--from 2026-12-27 --to 2027-01-02 --sheets planner,jobs", "a pack for some days leaves out planner")]
    public void Wrong_days_are_status_2_and_nothing_is_written(string options, string complaint)
    {
        using var bench = new Workbench();
        var outcome = bench.Run(["pack", Samples.HollinBank, "--out", ".", .. AsOf, .. options.Split(' ')]);
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains(complaint, outcome.Error, StringComparison.Ordinal);
        Assert.Empty(outcome.Out);
        Assert.Empty(bench.Everything());
    }

    /// <summary>Tom is in charge from 27 December to 2 January: days asked for before and after have handovers of their own, to somebody whose name is written in.</summary>
    [Theory]
    [InlineData("2026-12-30", "2027-01-05", "While Tom is in charge: Sun 27 Dec to Sat 2 Jan", "While Nell is away: Sun 3 Jan to Tue 5 Jan")]
    [InlineData("2026-12-24", "2027-01-03", "While Nell is away: Thu 24 Dec to Sat 26 Dec", "While Tom is in charge: Sun 27 Dec to Sat 2 Jan", "While Nell is away: Sun 3 Jan")]
    [InlineData("2026-12-28", "2026-12-29", "While Tom is in charge: Sun 27 Dec to Sat 2 Jan")]
    public void Every_day_asked_for_is_handed_over(string from, string to, params string[] titles)
    {
        using var bench = new Workbench();
        using var pdf = Sitter(bench, $"hollin-bank-{Code(from)}-{Code(to)}-HAND.pdf", from, to, "--sheets", "handover");
        var text = pdf.Text.Replace('\u00a0', ' ');
        Assert.Equal(titles, text.Split('\n').Select(l => l.Trim()).Where(l => l.StartsWith("While ", StringComparison.Ordinal)).Select(l => l.Split("HAND")[0].Trim()).Distinct());

        static string Code(string day) => LocalDatePattern.Iso.Parse(day).Value.ToString("ddMMM", CultureInfo.InvariantCulture).ToUpperInvariant();
    }

    /// <summary>Both ends of the season, one night alone, and another hemisphere on another paper.</summary>
    [Theory]
    [InlineData("hollin-bank", "2026-11-25", "2026-12-31", "2026-12-31")]
    [InlineData("hollin-bank", "2026-11-25", "2027-01-05", "2027-01-20")]
    [InlineData("kanuka-flat", "2027-06-20", "2027-07-10", "2027-07-14")]
    [InlineData("smallest", "2026-11-25", "2027-01-04", "2027-01-06")]
    public void Any_days_of_any_flock_make_a_pack(string flock, string asOf, string from, string to)
    {
        using var bench = new Workbench();
        var outcome = bench.Run("pack", Path.Combine(Samples.Root, "flocks", flock + ".yaml"), "--out", ".", "--as-of", asOf, "--from", from, "--to", to);
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        Assert.Single(bench.Everything());
    }

    private static PackPdf Sitter(Workbench bench, string file, string from, string to, params string[] more)
    {
        var outcome = bench.Run(["pack", Samples.HollinBank, "--out", ".", .. AsOf, "--from", from, "--to", to, .. more]);
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        return new PackPdf(bench.PathOf(file));
    }
}
