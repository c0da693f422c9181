using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>An issue of changed leaves, as somebody types it.</summary>
public sealed class ChangedTests
{
    private const string Record = "flock.issues.json";
    private const string Later = "2026-11-26";

    [Fact]
    public void Changed_leaves_come_in_a_file_of_their_own_and_the_old_pack_is_untouched()
    {
        using var bench = Printed();
        var (pack, record) = (Bytes(bench, "flock.pdf"), Bytes(bench, Record));
        var outcome = WithANote(bench);
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        Assert.Equal(["flock-issue-2.pdf", "flock-wall.pdf", Record, "flock.pdf", "flock.yaml"], bench.Everything());
        Assert.Equal(pack, Bytes(bench, "flock.pdf"));
        Assert.NotEqual(record, Bytes(bench, Record));
        Assert.Contains("issue 2: ", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_changed_writes_nothing()
    {
        using var bench = Printed();
        var before = All(bench);
        var outcome = bench.Run("pack", "flock.yaml", "--changed", "--as-of", Later);
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Contains("nothing has changed since issue 1", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(before, All(bench));
    }

    [Fact]
    public void A_dry_run_says_what_would_change_and_writes_nothing()
    {
        using var bench = Printed();
        var record = Bytes(bench, Record);
        var outcome = WithANote(bench, "--dry-run");
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Contains("issue 2 would be ", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("Nothing was written.", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(["flock-wall.pdf", Record, "flock.pdf", "flock.yaml"], bench.Everything());
        Assert.Equal(record, Bytes(bench, Record));
    }

    [Theory]
    [InlineData("lost", "there is no ")]
    [InlineData("cut short", "is damaged")]
    [InlineData("not text", "is not a record of issues")]
    [InlineData("of a later version", "a later PaperFlock")]
    [InlineData("other season", "the first issue of another pack")]
    [InlineData("other paper", "every leaf is another")]
    public void Without_a_record_to_go_by_the_pack_is_whole_and_says_so(string trouble, string said)
    {
        using var bench = Printed();
        var file = bench.PathOf(Record);
        switch (trouble)
        {
            case "lost":
                File.Delete(file);
                break;
            case "cut short":
                File.WriteAllBytes(file, File.ReadAllBytes(file)[..^10]);
                break;
            case "not text":
                File.WriteAllBytes(file, [0xff, 0xfe, 0]);
                break;
            case "of a later version":
                File.WriteAllText(file, File.ReadAllText(file).Replace("\"version\":2", "\"version\":3", StringComparison.Ordinal));
                break;
            case "other season":
                bench.Write("flock.yaml", Samples.TwoEwes.Replace("2026-08-1", "2027-08-1", StringComparison.Ordinal));
                break;
            default:
                bench.Write("flock.yaml", Samples.TwoEwes + "\nprint:\n  paper: Letter\n");
                break;
        }

        var outcome = bench.Run("pack", "flock.yaml", "--changed", "--as-of", trouble == "other season" ? "2027-11-26" : Later);
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        Assert.Contains(said, outcome.Out, StringComparison.Ordinal);
        Assert.Equal(["flock-wall.pdf", Record, "flock.pdf", "flock.yaml"], bench.Everything());
        Assert.Contains("nothing has changed", bench.Run("pack", "flock.yaml", "--changed", "--as-of", trouble == "other season" ? "2027-11-27" : "2026-11-27").Out, StringComparison.Ordinal);
    }

    /// <summary>Until then a record was a text file: it is read once more, and the next one is what it is now.</summary>
    [Fact]
    public void A_record_of_the_earlier_format_is_taken_over()
    {
        using var bench = new Workbench();
        bench.Write("hollin-bank.yaml", File.ReadAllText(Samples.HollinBank).Replace("note: Needs a quiet corner", "note: Lame behind", StringComparison.Ordinal));
        bench.Write("hollin-bank.issues.txt", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "records", "hollin-bank.issues.txt")));
        var outcome = bench.Run("pack", "hollin-bank.yaml", "--changed", "--as-of", "2026-11-26");
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        Assert.Contains("issue 2: ", outcome.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("whole pack", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("nothing has changed since issue 2", bench.Run("pack", "hollin-bank.yaml", "--changed", "--as-of", "2026-11-27").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--changed", "--sheets", "cards")]
    [InlineData("--dry-run")]
    public void What_does_not_go_together_is_wrong_use(params string[] options)
    {
        using var bench = Printed();
        var before = All(bench);
        Assert.Equal(ExitStatus.WrongUse, bench.Run(["pack", "flock.yaml", .. options]).Status);
        Assert.Equal(before, All(bench));
    }

    [Fact]
    public void The_same_changes_give_the_same_bytes()
    {
        using var one = Printed();
        using var other = Printed();
        WithANote(one);
        WithANote(other);
        Assert.Equal(All(one), All(other));
    }

    [Fact]
    public void A_pack_made_twice_on_a_day_is_one_issue()
    {
        using var bench = Printed();
        var before = All(bench);
        Assert.Equal(ExitStatus.Clean, bench.Run("pack", "flock.yaml").Status);
        Assert.Equal(before, All(bench));
    }

    [Fact]
    public void A_record_that_cannot_be_written_keeps_the_pack_out_too()
    {
        using var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes);
        Directory.CreateDirectory(bench.PathOf(Record));
        var outcome = bench.Run("pack", "flock.yaml");
        Assert.NotEqual(ExitStatus.Clean, outcome.Status);
        Assert.Contains(Record, outcome.Error, StringComparison.Ordinal);
        Assert.Equal([Record, "flock.yaml"], bench.Everything());
    }

    private static Workbench Printed()
    {
        var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes);
        var outcome = bench.Run("pack", "flock.yaml");
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        return bench;
    }

    private static Outcome WithANote(Workbench bench, params string[] more)
    {
        bench.Write("flock.yaml", Samples.TwoEwes + "\n    note: Lame behind\n");
        return bench.Run(["pack", "flock.yaml", "--changed", "--as-of", Later, .. more]);
    }

    private static byte[] Bytes(Workbench bench, string name) => File.ReadAllBytes(bench.PathOf(name));

    private static string[] All(Workbench bench) => [.. bench.Everything().Select(name => $"{name} {Convert.ToHexString(Bytes(bench, name))}")];
}
