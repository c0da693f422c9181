using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

public sealed class ExplainTests
{
    private const string Away =
        """


        keeper-days:
          free: [saturday, sunday]
          away: [{from: 2026-12-27, to: 2027-01-02, sitter: Tom Birkett}]
        """;

    /// <summary>The words after the file, with spaces between, and lines of the answer. Days are counted on a calendar.</summary>
    [Theory]
    [InlineData("scan", "Scan the ewes: Sat 24 Oct 2026", "counted from   the day the tup goes in, Mon 10 Aug 2026: 75 to 80 days after, best 75", "moved          no: it is on its best day", "source         common practice; Teagasc")]
    [InlineData("HOUSE", "Bring in the ewes: Sat 26 Dec 2026", "moved          from its best day, Mon 28 Dec 2026: the nearest free day, as the keeper is away on Mon 28 Dec", "known by       the tup goes in on Mon 10 Aug, and 147 days on from there", "together with Dag the ewes")]
    [InlineData("2026-12-27", "Sun 27 Dec 2026", "keeper         away, Sun 27 Dec 2026 to Sat 2 Jan 2027; Tom Birkett has the flock", "Bring in the ewes: planned for Sat 26 Dec 2026", "so many for    the heavy weeks, from 6 weeks")]
    [InlineData("27 dec", "Sun 27 Dec 2026", "rounds         4: ", "daylight       sun up ", "feed           ")]
    [InlineData("Sunday 27 December", "Sun 27 Dec 2026")]
    [InlineData("Bracken", "ZZ 0123456 00101 Bracken", "dated by       marked Fri 14 Aug", "counted        147 days from Fri 14 Aug is Fri 8 Jan.", "ration         stepped: the energy sum of each week", " a day at first light and dusk", "jobs past      Check the tup")]
    [InlineData("bracken", "ZZ 0123456 00101 Bracken")]
    [InlineData("ZZ 0123456 00102", "ZZ 0123456 00102 Sorrel", "she is         planned to lamb, fed for 1 lamb, since nobody has scanned her", "scanned        not yet")]
    [InlineData("zz012345600102", "ZZ 0123456 00102 Sorrel")]
    [InlineData("ZZ-0123456\u201300102", "ZZ 0123456 00102 Sorrel")]
    [InlineData("27/12/2026", "Sun 27 Dec 2026")]
    [InlineData("102", "ZZ 0123456 00102 Sorrel")]
    public void A_day_a_job_or_a_ewe_is_explained(string words, string title, params string[] lines)
    {
        using var bench = new Workbench();
        var outcome = bench.Run(["explain", bench.Write("flock.yaml", Samples.TwoEwes + Away), .. words.Split(' '), "--as-of", "2026-11-25"]);
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.StartsWith(title + "\n", outcome.Out, StringComparison.Ordinal);
        Assert.All(lines, l => Assert.Contains(l, outcome.Out, StringComparison.Ordinal));
        Assert.DoesNotContain("\u00a0", outcome.Out, StringComparison.Ordinal);
    }

    /// <summary>No booster and no feeds are hers, and what she lost is said though the scan says what she is.</summary>
    [Fact]
    public void A_ewe_without_lambs_to_come_has_none_of_the_jobs_of_those_that_have()
    {
        using var bench = new Workbench();
        var flock = bench.Write("flock.yaml", Samples.TwoEwes.Replace("name: Sorrel", "name: Sorrel\n    scan: 0\n    lost-lambs: 2026-10-20", StringComparison.Ordinal));
        var (empty, other) = (bench.Run("explain", flock, "Sorrel", "--as-of", "2026-11-25").Out, bench.Run("explain", flock, "Bracken", "--as-of", "2026-11-25").Out);
        Assert.Contains("lost lambs     Tue 20 Oct 2026", empty, StringComparison.Ordinal);
        Assert.All(["booster", "Bring in the ewes"], job => Assert.Contains(job, other, StringComparison.Ordinal));
        Assert.All(["booster", "Bring in the ewes", "FEED-"], job => Assert.DoesNotContain(job, empty, StringComparison.Ordinal));
    }

    /// <summary>Housing from three days before its best day to two after it, so that its window may lie on both sides of the first due day.</summary>
    [Theory]
    [InlineData(0, "from 3 days before to 2 days after, best that day")]
    [InlineData(1, "from 4 days before to 1 day after, best 1 day before")]
    [InlineData(2, "5 to 0 days before, best 2")]
    public void A_window_on_both_sides_of_its_anchor_has_its_best_day(int days, string words)
    {
        using var bench = new Workbench();
        var flock = bench.Write("flock.yaml", $"{Samples.TwoEwes}\n\npractice: {{house-days-before-lambing: {days}}}\n");
        Assert.Contains($"counted from   the day the first is due, Mon 4 Jan 2027: {words}\n", bench.Run("explain", flock, "house", "--as-of", "2026-11-25").Out, StringComparison.Ordinal);
    }

    /// <summary>Wed 10 June lies in the window of the check before the tup, and is not a day to share.</summary>
    [Theory]
    [InlineData("teeth", "not joined     the gathering on Wed 10 Jun 2026: the keeper is not free that day")]
    [InlineData("visit", "counted from   the date in the flock file", "any use        that day, whatever the keeper's week")]
    public void A_gathering_that_is_not_joined_is_named(string words, params string[] lines)
    {
        using var bench = new Workbench();
        var outcome = bench.Run("explain", bench.Write("flock.yaml", Samples.TwoEwes + Away + "\njobs: [{title: Visit, on: 2026-06-10, handled: true}]\n"), words, "--as-of", "2026-11-25");
        Assert.All(lines, l => Assert.Contains(l, outcome.Out, StringComparison.Ordinal));
    }

    [Fact]
    public void Several_that_are_meant_are_all_explained()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("explain", Samples.HollinBank, "scan", "--as-of", "2026-11-25");
        Assert.Contains("Scan Bramley\u2019s ewes: ", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("\n\nScan Damson\u2019s ewes: ", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void One_of_several_can_be_had_by_its_group()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("explain", Samples.HollinBank, "scan bramley\u2019s ewes", "--as-of", "2026-11-25");
        Assert.StartsWith("Scan Bramley\u2019s ewes: ", outcome.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Paddock", outcome.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Brakcen", "no day, job or ewe of this plan is called 'Brakcen'; did you mean 'Bracken'?")]
    [InlineData("hosue", "did you mean 'house'?")]
    [InlineData("xylophone", "called 'xylophone'; `paperflock dates` lists them")]
    [InlineData("2027-02-30", "'2027-02-30' is no date")]
    [InlineData("5/12/2026", "`5/12/2026` may be Sat 5 Dec 2026 or Tue 12 May 2026")]
    [InlineData("00101x", "called '00101x'")]
    [InlineData("zz", "called 'zz'")]
    [InlineData("2031-01-01", "the plan runs from Mon 1 Jun 2026 to ")]
    [InlineData("Mon 27 Dec", "called 'Mon 27 Dec'")]
    [InlineData("--asof", "there is no option '--asof'; did you mean '--as-of'?")]
    public void What_is_not_there_is_status_2_with_a_way_on(string words, string complaint)
    {
        using var bench = new Workbench();
        var outcome = bench.Run(["explain", bench.Write("flock.yaml", Samples.TwoEwes), .. words.Split(' ')]);
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains(complaint, outcome.Error, StringComparison.Ordinal);
        Assert.Empty(outcome.Out);
    }

    [Fact]
    public void Too_many_are_listed_and_not_explained()
    {
        using var bench = new Workbench();
        var ewes = string.Concat(Enumerable.Range(1, 13).Select(n => $"\n  - tag: ZZ {n} 0777"));
        var told = bench.Run("explain", bench.Write("flock.yaml", Samples.TwoEwes + ewes), "0777");
        Assert.Equal(ExitStatus.WrongUse, told.Status);
        Assert.Contains("'0777' could be any of 13: ZZ 1 0777, ZZ 2 0777", told.Error, StringComparison.Ordinal);
    }

    /// <summary>Two ewes whose tags end alike: asked about at a terminal, listed in a pipe.</summary>
    [Fact]
    public void The_end_of_two_tags_is_asked_about()
    {
        var text = Samples.TwoEwes + "\n  - tag: ZZ 7654321 00101\n    name: Moss\n";
        using var bench = new Workbench { AtAKeyboard = true, Answers = "5\n2\n" };
        var told = bench.Run("explain", bench.Write("flock.yaml", text), "00101", "--as-of", "2026-11-25");
        Assert.Equal(ExitStatus.Clean, told.Status);
        Assert.Contains("  1  ZZ 0123456 00101  Bracken\n  2  ZZ 7654321 00101  Moss\n", told.Out, StringComparison.Ordinal);
        Assert.Contains("there is no number `5`", told.Out, StringComparison.Ordinal);
        Assert.Contains("\nZZ 7654321 00101 Moss\n", told.Out.Replace("> ", "> \n", StringComparison.Ordinal), StringComparison.Ordinal);

        using var pipe = new Workbench();
        told = pipe.Run("explain", pipe.Write("flock.yaml", text), "00101", "--as-of", "2026-11-25");
        Assert.Equal(ExitStatus.WrongUse, told.Status);
        Assert.Contains("'00101' could be any of 2: ZZ 0123456 00101 Bracken and ZZ 7654321 00101 Moss; type more of the tag", told.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_to_explain_says_how_to_ask()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("explain", bench.Write("flock.yaml", Samples.TwoEwes));
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.StartsWith("paperflock: explain wants a flock file and a day, a job or a ewe, such as: ", outcome.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Pounds_are_spoken_where_the_flock_is_in_pounds()
    {
        using var bench = new Workbench();
        var flock = bench.Write("flock.yaml", Samples.TwoEwes + "\n\nprint: {units: imperial}\n");
        Assert.Contains("0.2 lb a day at first light", bench.Run("explain", flock, "Bracken").Out, StringComparison.Ordinal);
    }

    /// <summary>Every job, every ewe and every day of both demo flocks has something said of it.</summary>
    [Theory]
    [InlineData("hollin-bank", "2026-11-25")]
    [InlineData("kanuka-flat", "2027-06-20")]
    public void Everything_in_a_plan_can_be_explained(string sample, string asOf)
    {
        var day = NodaTime.Text.LocalDatePattern.Iso.Parse(asOf).Value;
        var file = Path.Combine(Samples.Root, "flocks", sample + ".yaml");
        var plan = PaperFlock.Planning.SeasonPlanner.Plan(PaperFlock.Flocks.Reading.FlockReader.Read(file, File.ReadAllBytes(file)).Flock!, day);
        Assert.All(plan.Jobs, j => Assert.NotEmpty(PaperFlock.Packs.Explain.JobExplainer.Of(j, plan).Lines));
        Assert.All(plan.Ewes, e => Assert.NotEmpty(PaperFlock.Packs.Explain.EweExplainer.Of(e, plan).Lines));
        Assert.All(plan.Rounds, r => Assert.NotEmpty(PaperFlock.Packs.Explain.DayExplainer.Of(r.Date, plan).Lines));
    }

    [Fact]
    public void On_a_terminal_the_labels_stand_beside_their_words()
    {
        using var bench = new Workbench { OnATerminal = true };
        var outcome = bench.Run("explain", bench.Write("flock.yaml", Samples.TwoEwes), "scan");
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Contains("counted from", outcome.Out, StringComparison.Ordinal);
    }
}
