namespace PaperFlock.Packs.Tests.Entering;

/// <summary>Ewes of two flocks have the same number on the end of their tags: what is entered goes to the one whose whole tag was given, and to nobody where there is none.</summary>
public sealed class TagsThatEndAlikeTests
{
    private const string Flock =
        """
        paperflock: 1
        holding: {name: Hollin Bank, location: {latitude: 54.46, longitude: -2.74}, time-zone: Europe/London}
        season: {tup-in: 2026-08-10}
        ewes:
          - tag: ZZ 0123456 00101
            note: first
          - tag: ZZ 7654321 00101
            note: second
          - tag: ZZ 0123456 00102
            note: third
        """;

    [Fact]
    public void Rows_of_a_spreadsheet_go_to_the_ewes_with_those_tags()
    {
        using var bench = Bench("tag,scan\nZZ 7654321 00101,3\nZZ 0123456 00101,1\n");
        Assert.Equal((0, ""), From(bench) is var outcome ? (outcome.Status, outcome.Error) : default);
        Assert.Equal(Flock.Replace("note: first", "note: first\n    scan: 1", StringComparison.Ordinal).Replace("note: second", "note: second\n    scan: 3", StringComparison.Ordinal), InOrder(FourEwes.After(bench)));
    }

    /// <summary>A neighbour's ewe in the same list.</summary>
    [Theory]
    [InlineData("ZZ 9999999 00101")]
    [InlineData("ZZ 9999999 00102")]
    [InlineData("ZZ999999900102")]
    [InlineData("900102")]
    public void A_strangers_tag_that_ends_like_one_of_ours_is_nobodys(string stranger)
    {
        using var bench = Bench($"tag,scan\n{stranger},3\n");
        var outcome = From(bench);
        Assert.Equal(1, outcome.Status);
        Assert.Contains($"no ewe has the tag `{stranger}`, or one that ends so", outcome.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("ZZ 0123456", outcome.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("ZZ 7654321", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(Flock, FourEwes.After(bench));
    }

    /// <summary>Blanks and capitals may have gone astray on the way; whose tag it is, is plain.</summary>
    [Theory]
    [InlineData("zz765432100101", "ZZ 7654321 00101", "ZZ 0123456 00101")]
    [InlineData("ZZ0123456 00101", "ZZ 0123456 00101", "ZZ 7654321 00101")]
    public void A_tag_without_its_blanks_is_hers_and_not_the_other_ewes(string typed, string hers, string others)
    {
        using var bench = Bench($"tag,scan\n{typed},3\n");
        var outcome = From(bench);
        var said = outcome.Out + outcome.Error;
        Assert.Contains(hers, said, StringComparison.Ordinal);
        Assert.DoesNotContain(others, said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("00102", "third")]
    [InlineData("102", "third")]
    [InlineData("zz-0123456\u201300102", "third")]
    [InlineData("ZZ\u00a07654321\u00a000101", "second")]
    [InlineData("21-00101", "second")]
    public void The_end_of_a_tag_serves_where_one_ewe_has_it(string typed, string note)
    {
        using var bench = Bench($"tag,scan\n{typed},3\n");
        Assert.Equal(0, From(bench).Status);
        Assert.Equal(Flock.Replace($"note: {note}", $"note: {note}\n    scan: 3", StringComparison.Ordinal), InOrder(FourEwes.After(bench)));
    }

    [Fact]
    public void The_end_of_two_tags_is_listed_in_a_pipe()
    {
        using var bench = Bench("tag,scan\n00101,3\n");
        var outcome = From(bench);
        Assert.Equal(1, outcome.Status);
        Assert.Contains("results.csv:2:1: error CSV017: `00101` is the end of more than one tag: `ZZ 0123456 00101` and `ZZ 7654321 00101`", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(Flock, FourEwes.After(bench));
    }

    [Fact]
    public void The_end_of_two_tags_is_asked_about_at_a_terminal()
    {
        using var bench = new Workbench { AtAKeyboard = true, Answers = "2\n\n" };
        bench.Write(FourEwes.File, Flock);
        bench.Write("results.csv", "tag,scan\n00101,3\n");
        var outcome = From(bench);
        Assert.Contains("  2  ZZ 7654321 00101\n", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(Flock.Replace("note: second", "note: second\n    scan: 3", StringComparison.Ordinal), InOrder(FourEwes.After(bench)));
    }

    [Fact]
    public void At_the_keys_the_end_of_two_tags_is_asked_about_by_row()
    {
        using var bench = new Workbench { Keys = "/101\n2\n4\nq\n\n" };
        bench.Write(FourEwes.File, Flock);
        var outcome = bench.Run("enter", "scan", FourEwes.File);
        Assert.Contains("  `101` may be\n    row 1, no name, ZZ 0123456 00101\n    row 2, no name, ZZ 7654321 00101\nwhich row? > ", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(Flock.Replace("note: second", "note: second\n    scan: 4", StringComparison.Ordinal), InOrder(FourEwes.After(bench)));
    }

    [Fact]
    public void A_pipe_that_asks_for_one_of_two_is_stopped()
    {
        using var bench = new Workbench { Answers = "/101\n4\n" };
        bench.Write(FourEwes.File, Flock);
        var outcome = bench.Run("enter", "scan", FourEwes.File);
        Assert.Equal(2, outcome.Status);
        Assert.Contains("`101` may be row 1, no name, ZZ 0123456 00101 or row 2, no name, ZZ 7654321 00101", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(Flock, FourEwes.After(bench));
    }

    [Theory]
    [InlineData("/ZZ 7654321 00101", "second")]
    [InlineData("/ZZ 0123456 00101", "first")]
    [InlineData("/00102", "third")]
    public void At_the_keys_a_whole_tag_leads_to_her(string typed, string note)
    {
        using var bench = Bench("");
        bench.Answers = $"{typed}\n4\nq\n";
        Assert.Equal("", bench.Run("enter", "scan", FourEwes.File).Error);
        Assert.Equal(Flock.Replace($"note: {note}", $"note: {note}\n    scan: 4", StringComparison.Ordinal), InOrder(FourEwes.After(bench)));
    }

    private static Outcome From(Workbench bench) => bench.Run("enter", "scan", FourEwes.File, "--from", "results.csv");

    /// <summary>Which of her two keys stands first is not asked here.</summary>
    private static string InOrder(string text) =>
        System.Text.RegularExpressions.Regex.Replace(text, "(    scan: [0-9])\n(    note: [a-z]+)", "$2\n$1");

    private static Workbench Bench(string csv)
    {
        var bench = new Workbench();
        bench.Write(FourEwes.File, Flock);
        bench.Write("results.csv", csv);
        return bench;
    }
}
