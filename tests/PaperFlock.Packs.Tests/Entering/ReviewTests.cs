namespace PaperFlock.Packs.Tests.Entering;

/// <summary>On leaving: old beside new, and any line undone.</summary>
public sealed class ReviewTests
{
    [Fact]
    public void What_has_changed_is_shown_old_beside_new()
    {
        using var bench = new Workbench { Keys = "e2\n1\nq\n\n" };
        bench.Write(FourEwes.File, FourEwes.Text.Replace("group: Paddock}", "group: Paddock, scan: 3}", StringComparison.Ordinal));
        var outcome = bench.Run("enter", "scan", FourEwes.File);
        Assert.Equal(0, outcome.Status);
        Assert.Contains(
            """
            Changed in this sitting:
            line  ewe      tag               before                now
            1     Sorrel   ZZ 0123456 00103  nothing written down  2 lambs, early
            2     Bracken  ZZ 0123456 00101  3 lambs               1 lamb

            """,
            outcome.Out,
            StringComparison.Ordinal);
        Assert.Contains("1 entered, 1 changed.\n", outcome.Out, StringComparison.Ordinal);
    }

    /// <summary>What is typed on leaving, and what is left of two counts.</summary>
    [Theory]
    [InlineData("-1\n\n", "- 1 - -")]
    [InlineData("-2\n\n", "2 - - -")]
    [InlineData("-2\n- 1\n\n", "- - - -")]
    [InlineData("-2\n-2\n-7\nx\n1\n\n", "2 - - -")]
    [InlineData("<\n3\nq\n\n", "2 1 3 -")]
    [InlineData("\u2191\u21910\nq\n\n", "2 0 - -")]
    [InlineData("-1\n<\n<\n<\n4\nq\n-2\n\n", "4 - - -")]
    public void Any_line_can_be_undone_and_there_is_a_way_back(string typed, string counts)
    {
        using var bench = new Workbench { Keys = $"2\n1\nq\n{typed}" };
        bench.Write(FourEwes.File, FourEwes.Text);
        Assert.Equal(0, bench.Run("enter", "scan", FourEwes.File).Status);
        Assert.Equal(counts, string.Join(' ', FourEwes.Read(bench).Ewes.Select(e => e.Scan?.ToString(CultureInfo.InvariantCulture) ?? "-")));
    }

    /// <summary>All that was written for one ewe, and her comments, are as they were to the letter.</summary>
    [Theory]
    [InlineData("scan", "2026-11-25", "/sorrel|e2|<|l1")]
    [InlineData("marks", "2026-11-25", "/campion|15 aug, 29 aug|<|-29 aug")]
    [InlineData("marks", "2026-11-25", "/campion|-")]
    [InlineData("teeth-toes-teats", "2026-08-20", "/sorrel|3.5 x wlh")]
    [InlineData("lambed", "2027-01-20", "/sorrel|14 jan 3:20 2 1 h")]
    public void Undone_it_is_as_it_was(string sheet, string day, string typed)
    {
        using var bench = new Workbench { Answers = $"{typed.Replace('|', '\n')}\nq\n-1\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        var before = FourEwes.Read(bench);
        var outcome = bench.Run("enter", sheet, FourEwes.File, "--as-of", day);
        Assert.Contains("  line 1 is undone\n", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("Nothing was entered; the file is as it was.", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(before.Ewes.Select(e => e with { Span = default }).Select(e => e.ToString()), FourEwes.Read(bench).Ewes.Select(e => e with { Span = default }).Select(e => e.ToString()));
        Assert.DoesNotContain("+", FourEwes.Difference(FourEwes.Text, FourEwes.After(bench)).Replace("+ marks: [2026-08-12]", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_changed_elsewhere_meanwhile_is_not_undone()
    {
        using var bench = new Workbench { Answers = "2\nq\n-1\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        using var said = new SaidFirst("undo > ", () => bench.Write(FourEwes.File, FourEwes.After(bench).Replace("scan: 2", "scan: 3", StringComparison.Ordinal)));
        var outcome = bench.RunInto(said, "enter", "scan", FourEwes.File);
        Assert.Contains("  not undone: she has been changed elsewhere meanwhile", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(3, FourEwes.Read(bench).Ewes[0].Scan);
    }

    /// <summary>A line too many is not meant to undo another.</summary>
    [Fact]
    public void A_pipe_undoes_only_when_it_says_so()
    {
        using var bench = new Workbench { Answers = "2\n1\n0\n3\n1\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        bench.Run("enter", "scan", FourEwes.File);
        Assert.Equal([2, 1, 0, 3], FourEwes.Read(bench).Ewes.Select(e => e.Scan!.Value));
    }

    [Fact]
    public void After_Ctrl_C_what_has_changed_is_shown_all_the_same()
    {
        using var bench = new Workbench { Keys = "2\n1" };
        bench.Write(FourEwes.File, FourEwes.Text);
        var outcome = bench.Run("enter", "scan", FourEwes.File);
        Assert.Contains("1     Sorrel  ZZ 0123456 00103  nothing written down  2 lambs\n", outcome.Out, StringComparison.Ordinal);
        Assert.Equal("+ scan: 2", FourEwes.Difference(FourEwes.Text, FourEwes.After(bench)));
    }
}
