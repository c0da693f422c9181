using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

public sealed class ManyFlocksTests
{
    private static readonly string[] Good = ["a.yaml", "b.yaml", "c.yaml", "d.yaml", "e.yaml"];

    [Fact]
    public void One_bad_file_does_not_stop_the_rest_and_the_summary_is_in_the_order_given()
    {
        using var bench = new Workbench();
        var files = Write(bench, "a.yaml", "c.yaml");
        bench.Write("b.yaml", Samples.BadDate);
        var outcome = bench.Run("pack", "c.yaml", "b.yaml", "nope.yaml", "a.yaml", "--sheets", "jobs");

        Assert.EndsWith(
            """

            2 packs made, 2 failed
            flock      came to                       pack     sheets  warnings  first due
            c.yaml     done                          HB-2027  1       3         Mon 4 Jan 2027
            b.yaml     there are errors in it
            nope.yaml  could not be read or written
            a.yaml     done                          HB-2027  1       3         Mon 4 Jan 2027

            """,
            outcome.Out,
            StringComparison.Ordinal);
        Assert.Contains("b.yaml:7:11: error FLK", outcome.Error, StringComparison.Ordinal);
        Assert.Contains("cannot read nope.yaml: there is no such file", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(["a-JOBS.pdf", "a.yaml", "b.yaml", "c-JOBS.pdf", "c.yaml"], bench.Everything());
        Assert.Equal(2, files.Length);
    }

    /// <summary>The gravest of them; the names of the files with spaces between.</summary>
    [Theory]
    [InlineData("a.yaml b.yaml", ExitStatus.Clean)]
    [InlineData("a.yaml bad.yaml", ExitStatus.FlockErrors)]
    [InlineData("bad.yaml nope.yaml a.yaml", ExitStatus.WrongUse)]
    public void The_status_is_the_gravest_of_any(string files, int status)
    {
        using var bench = new Workbench();
        Write(bench, "a.yaml", "b.yaml");
        bench.Write("bad.yaml", Samples.BadDate);
        Assert.Equal(status, bench.Run(["check", .. files.Split(' ')]).Status);
        Assert.Equal(status, bench.Run(["pack", .. files.Split(' '), "--sheets", "jobs"]).Status);
    }

    [Fact]
    public void A_fault_in_one_is_status_3_and_the_others_are_made()
    {
        var asked = 0;
        using var bench = new Workbench { WhenAskedTheDay = () => _ = asked++ == 0 ? throw new InvalidOperationException("broken") : 0 };
        Write(bench, "a.yaml");
        bench.Write("b.yaml", Samples.TwoEwes);
        var outcome = bench.Run("pack", "b.yaml", "a.yaml", "--sheets", "jobs");
        Assert.Equal(ExitStatus.Fault, outcome.Status);
        Assert.Matches("\nb.yaml +failed by a fault of the program\na.yaml +done ", outcome.Out);
        Assert.Contains("a-JOBS.pdf", bench.Everything());
        Assert.DoesNotContain("b-JOBS.pdf", bench.Everything());
    }

    [Fact]
    public void Together_and_one_at_a_time_give_the_same_bytes()
    {
        using var bench = new Workbench();
        Write(bench, Good);
        Assert.Equal(ExitStatus.Clean, bench.Run("pack", ".", "--out", "together").Status);
        foreach (var file in Good)
        {
            bench.Run("pack", file, "--out", "alone");
            var name = Path.ChangeExtension(file, "pdf");
            Assert.Equal(File.ReadAllBytes(bench.PathOf($"alone/{name}")), File.ReadAllBytes(bench.PathOf($"together/{name}")));
        }

        Assert.Equal(Files(bench, "alone"), Files(bench, "together"));
    }

    /// <summary>Each file has two warnings, and so a summary of its own after them.</summary>
    [Fact]
    public void What_each_file_has_to_say_is_said_together_and_in_the_order_given()
    {
        using var bench = new Workbench();
        foreach (var file in Good)
        {
            bench.Write(file, Samples.TwoEwes.Replace("name: Sorrel", "name: Sorrel\n    toes: lame", StringComparison.Ordinal));
        }

        var outcome = bench.Run(["check", .. Good.Reverse(), "--as-of", "2026-11-25"]);
        var places = outcome.Error.Split('\n').Where(l => l.Contains(": warning ", StringComparison.Ordinal)).Select(l => l[..6]).ToList();
        Assert.Equal(Good.Reverse(), places.Distinct());
        Assert.Equal(places, places.OrderDescending(StringComparer.Ordinal));
        Assert.Equal(Good.Reverse(), outcome.Out.Split('\n').Where(l => l.Contains(": 2 ewes", StringComparison.Ordinal)).Select(l => l[..6]));
    }

    [Theory]
    [InlineData("a.yaml", "far/a.yaml", "a.yaml and far/a.yaml would both be written to out/a.pdf")]
    [InlineData("a.yaml", "far/A.yml", "a.yaml and far/A.yml would both be written to out/A.pdf")]
    [InlineData("a.yaml", "far/a-wall.yaml", "a.yaml and far/a-wall.yaml would both be written to out/a-wall.pdf")]
    public void Two_packs_of_one_name_are_refused_before_anything_is_written(string first, string second, string complaint)
    {
        using var bench = new Workbench();
        Directory.CreateDirectory(bench.PathOf("far"));
        Write(bench, "b.yaml", first, second);
        var before = bench.Everything();
        var outcome = bench.Run("pack", "b.yaml", first, second, "--out", "out");
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains(complaint, outcome.Error.Replace('\\', '/'), StringComparison.Ordinal);
        Assert.Empty(outcome.Out);
        Assert.Equal(before, bench.Everything());
    }

    [Theory]
    [InlineData("*.yaml", "a.yaml b.yaml")]
    [InlineData("?.y*", "a.yaml b.yaml c.yml")]
    [InlineData(".", "a.yaml b.yaml c.yml long.yaml")]
    [InlineData("sub", "sub/z.yaml")]
    [InlineData("sub/*", "sub/z.yaml")]
    public void Folders_and_stars_stand_for_the_files_by_name(string typed, string meant)
    {
        using var bench = new Workbench();
        Directory.CreateDirectory(bench.PathOf("sub"));
        Write(bench, "b.yaml", "a.yaml", "c.yml", "long.yaml", ".hidden.yaml", "sub/z.yaml");
        bench.Write("notes.txt", "not a flock");
        var found = bench.Run("check", typed, "--as-of", "2026-11-25").Out.Split('\n').Where(l => l.Contains(": 2 ewes", StringComparison.Ordinal));
        Assert.Equal(
            meant.Split(' ').Where(f => typed != "*.yaml" || f != "long.yaml").Concat(typed == "*.yaml" ? ["long.yaml"] : []),
            found.Select(l => l[..l.IndexOf(':', StringComparison.Ordinal)].Replace('\\', '/')));
    }

    [Theory]
    [InlineData("none-*.yaml", "no file is called none-*.yaml")]
    [InlineData("empty", "there is no flock file in empty")]
    public void Stars_and_folders_without_a_file_are_status_2(string typed, string complaint)
    {
        using var bench = new Workbench();
        Directory.CreateDirectory(bench.PathOf("empty"));
        var outcome = bench.Run("pack", typed);
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains(complaint, outcome.Error, StringComparison.Ordinal);
    }

    /// <summary>Two holdings with the same initials: the second is not made, and what to type is said; with it, both are.</summary>
    [Fact]
    public void Pages_of_two_holdings_never_bear_one_mark()
    {
        using var bench = new Workbench();
        Write(bench, "a.yaml");
        bench.Write("b.yaml", Samples.TwoEwes.Replace("Hollin Bank", "Hare Brow", StringComparison.Ordinal));
        var outcome = bench.Run("pack", "a.yaml", "b.yaml", "--sheets", "jobs");
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains("the pages of Hare Brow would bear HB-2027, as those of Hollin Bank do (a.yaml)", outcome.Error, StringComparison.Ordinal);
        Assert.Contains("`code: HB2` under `holding`", outcome.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("b-JOBS.pdf", bench.Everything());

        bench.Write("b.yaml", Samples.TwoEwes.Replace("name: Hollin Bank", "name: Hare Brow\n  code: hb2", StringComparison.Ordinal));
        Assert.Equal(ExitStatus.Clean, bench.Run("pack", "a.yaml", "b.yaml", "--sheets", "jobs").Status);
        using var pdf = new PackPdf(bench.PathOf("b-JOBS.pdf"));
        Assert.Contains("HB2-2027", string.Concat(pdf.Texts), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_named_twice_is_done_once()
    {
        using var bench = new Workbench();
        Write(bench, "a.yaml");
        Assert.Single(bench.Run("check", "a.yaml", "./a.yaml", "*.yaml").Out.Split('\n'), l => l.Contains(": 2 ewes", StringComparison.Ordinal));
    }

    [Fact]
    public void When_all_fail_the_new_folder_goes_again()
    {
        using var bench = new Workbench();
        bench.Write("a.yaml", Samples.BadDate);
        bench.Write("b.yaml", Samples.BadDate);
        Assert.Equal(ExitStatus.FlockErrors, bench.Run("pack", "a.yaml", "b.yaml", "--out", "new/packs").Status);
        Assert.Equal(["a.yaml", "b.yaml"], bench.Everything());
    }

    [Fact]
    public void Stopping_keeps_what_is_done_and_says_how_much()
    {
        Workbench? stopped = null;
        var asked = 0;
        using var bench = new Workbench
        {
            WhenAskedTheDay = () =>
            {
                if (asked++ == 1)
                {
                    stopped!.Stop();
                }
            },
        };
        stopped = bench;
        Write(bench, Good);
        var outcome = bench.Run(["pack", .. Good, "--sheets", "jobs"]);
        Assert.Equal(ExitStatus.Stopped, outcome.Status);
        Assert.Equal("paperflock: stopped: 1 of 5 flocks done, and what was written for them stays\n", outcome.Error[outcome.Error.IndexOf("paperflock: stopped", StringComparison.Ordinal)..]);
        Assert.Equal(["a-JOBS.pdf", .. Good], bench.Everything());
    }

    private static string[] Write(Workbench bench, params string[] files) => [.. files.Select(f => bench.Write(f, Samples.TwoEwes))];

    private static IEnumerable<string> Files(Workbench bench, string folder) =>
        Directory.EnumerateFiles(bench.PathOf(folder)).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal);
}
