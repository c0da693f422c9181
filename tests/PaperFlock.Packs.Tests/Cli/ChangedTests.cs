using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>An issue of changed leaves, as somebody types it.</summary>
public sealed class ChangedTests
{
    private const string Later = "2026-11-26";

    [Fact]
    public void Changed_leaves_come_in_a_file_of_their_own_and_the_old_pack_is_untouched()
    {
        using var bench = Printed();
        var pack = Bytes(bench, "flock.pdf");
        var outcome = WithANote(bench);
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        Assert.Equal(["flock-issue-2.pdf", "flock.pdf", "flock.yaml"], bench.Everything());
        Assert.Equal(pack, Bytes(bench, "flock.pdf"));
        Assert.Contains("issue 2: ", outcome.Out, StringComparison.Ordinal);
        Assert.Contains(" since issue 1 of Wed 25 Nov 2026, in flock.pdf. Sheet CHG, on top, says which.\n", outcome.Out, StringComparison.Ordinal);
    }

    /// <summary>The issue after next goes by the leaves of the last, wherever they were printed.</summary>
    [Theory]
    [InlineData]
    [InlineData("--split")]
    public void The_newest_issue_beside_the_pack_is_the_one_that_counts(params string[] options)
    {
        using var bench = Printed(options);
        var file = options.Length == 0 ? "flock-issue-2.pdf" : "flock-issue-2-binder.pdf";
        WithANote(bench, options);
        Assert.Contains(file, bench.Everything());
        var again = bench.Run(["pack", "flock.yaml", "--changed", "--as-of", "2026-11-27", .. options]);
        Assert.Contains($"nothing has changed since issue 2 of Thu 26 Nov 2026, in {file}: all ", again.Out, StringComparison.Ordinal);

        File.Delete(bench.PathOf(file));
        Assert.Contains("since issue 1 of Wed 25 Nov 2026, in ", bench.Run(["pack", "flock.yaml", "--changed", "--as-of", "2026-11-27", .. options]).Out, StringComparison.Ordinal);
    }

    /// <summary>What is printed of a pack may go into the very file that remembers it.</summary>
    [Fact]
    public void A_sheet_printed_alone_forgets_nothing()
    {
        using var bench = Printed();
        Assert.Equal(ExitStatus.Clean, bench.Run("pack", "flock.yaml", "--sheets", "jobs").Status);
        Assert.Contains("nothing has changed since issue 1", bench.Run("pack", "flock.yaml", "--changed", "--as-of", Later).Out, StringComparison.Ordinal);
    }

    /// <summary>A name alone makes no issue: a sitter's pack and the files of another flock remember nothing of this one.</summary>
    [Fact]
    public void Only_issues_of_this_flock_are_looked_into()
    {
        using var bench = Printed();
        File.Move(bench.PathOf("flock.pdf"), bench.PathOf("flock-issue-x.pdf"));
        File.Copy(bench.PathOf("flock-issue-x.pdf"), bench.PathOf("flock2.pdf"));
        bench.Write("flock-notes.pdf", "not a pack");
        var outcome = bench.Run("pack", "flock.yaml", "--changed", "--dry-run", "--as-of", Later);
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.StartsWith("paperflock: no earlier issue of Hollin Bank was found beside flock.yaml", outcome.Error[outcome.Error.IndexOf("paperflock:", StringComparison.Ordinal)..], StringComparison.Ordinal);
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
        var outcome = WithANote(bench, "--dry-run");
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Contains("issue 2 would be ", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("Nothing was written.", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(["flock.pdf", "flock.yaml"], bench.Everything());
    }

    /// <summary>Nobody is handed a whole pack who asked for what has changed: what to type is said.</summary>
    [Theory]
    [InlineData("lost", "no earlier issue of Hollin Bank was found beside flock.yaml")]
    [InlineData("cut short", "flock.pdf is damaged")]
    [InlineData("no pack", "flock.pdf is no pack that this program has made")]
    [InlineData("no record", "flock.pdf has no record of an issue in it")]
    [InlineData("other season", "flock.pdf is of HB-2027, and this is HB-2028")]
    [InlineData("other holding", "flock.pdf is of another holding, Hollin Bank HB-2027")]
    public void Without_a_record_to_go_by_nothing_is_written(string trouble, string said)
    {
        using var bench = Printed();
        var file = bench.PathOf("flock.pdf");
        switch (trouble)
        {
            case "lost":
                File.Delete(file);
                break;
            case "cut short":
                File.WriteAllBytes(file, File.ReadAllBytes(file)[..^10]);
                break;
            case "no pack":
                File.WriteAllText(file, "%PDF-1.7 of somebody else");
                break;
            case "no record":
                bench.Run("guide");
                File.Move(bench.PathOf("how-to-use-this-pack.pdf"), file, overwrite: true);
                break;
            case "other season":
                bench.Write("flock.yaml", Samples.TwoEwes.Replace("2026-08-1", "2027-08-1", StringComparison.Ordinal));
                break;
            default:
                bench.Write("flock.yaml", Samples.TwoEwes.Replace("Hollin Bank", "Holly Brow", StringComparison.Ordinal));
                break;
        }

        var before = All(bench);
        var outcome = bench.Run("pack", "flock.yaml", "--changed", "--as-of", trouble == "other season" ? "2027-11-26" : Later);
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains(said, outcome.Error, StringComparison.Ordinal);
        Assert.Contains("make a whole pack: paperflock pack flock.yaml\n", outcome.Error, StringComparison.Ordinal);
        Assert.Contains("--since FILE.pdf", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(before, All(bench));
    }

    [Fact]
    public void On_other_paper_every_leaf_is_another()
    {
        using var bench = Printed();
        bench.Write("flock.yaml", Samples.TwoEwes + "\nprint:\n  paper: Letter\n");
        Assert.Contains("every leaf is another: this is a whole pack, issue 2.", bench.Run("pack", "flock.yaml", "--changed", "--as-of", Later).Out, StringComparison.Ordinal);
        Assert.Contains("nothing has changed since issue 2", bench.Run("pack", "flock.yaml", "--changed", "--as-of", Later).Out, StringComparison.Ordinal);
    }

    /// <summary>The last issue cannot be read, but the one before can: whoever goes by that is told.</summary>
    [Fact]
    public void A_damaged_issue_is_named_even_where_another_is_found()
    {
        using var bench = Printed();
        WithANote(bench);
        var file = bench.PathOf("flock-issue-2.pdf");
        File.WriteAllBytes(file, File.ReadAllBytes(file)[..^10]);
        var outcome = bench.Run("pack", "flock.yaml", "--changed", "--dry-run", "--as-of", Later);
        Assert.Contains("flock-issue-2.pdf is damaged, or another program has changed it\nissue 3 would be ", outcome.Out, StringComparison.Ordinal);
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
        Assert.Contains("in hollin-bank.issues.txt", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("what hollin-bank.issues.txt says is in the pack itself now: it is no longer needed", outcome.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("whole pack", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("nothing has changed since issue 2", bench.Run("pack", "hollin-bank.yaml", "--changed", "--as-of", "2026-11-27").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--changed", "--sheets", "cards")]
    [InlineData("--since", "1", "--from", "2026-12-27", "--to", "2026-12-28")]
    [InlineData("--dry-run")]
    [InlineData("--printed", "--look")]
    [InlineData("--printed", "--changed")]
    [InlineData("--changed", "--look")]
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

    private static Workbench Printed(params string[] options)
    {
        var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes);
        var outcome = bench.Run(["pack", "flock.yaml", .. options]);
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
