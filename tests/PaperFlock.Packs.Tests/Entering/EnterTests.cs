namespace PaperFlock.Packs.Tests.Entering;

/// <summary>Somebody with a sheet in one hand, as the program hears and answers them.</summary>
public sealed class EnterTests
{
    /// <summary>Sheet, day, what is typed, what changes in the file.</summary>
    [Theory]
    [InlineData("scan", "2026-11-25", "2|0|1|3", "- - {tag: ZZ 0123456 00101, name: Bracken, group: Paddock}|+ scan: 2|+ - {tag: ZZ 0123456 00101, name: Bracken, group: Paddock, scan: 0}|+ scan: 1|+ scan: 3")]
    [InlineData("scan", "2026-11-25", "e2||L 1", "+ scan: 2|+ scan-stage: early|+ scan: 1|+ scan-stage: late")]
    [InlineData("scan", "2026-11-25", "twins|q", "+ scan: 2")]
    [InlineData("scan", "2026-11-25", "e2|<|0", "+ scan: 0")]
    [InlineData("scan", "2026-11-25", "e2|<|-|q", "")]
    [InlineData("scan", "2026-11-25", "/camp|4", "+ scan: 4")]
    [InlineData("scan", "2026-11-25", "/00104|5", "+ scan: 5")]
    [InlineData("marks", "2026-11-25", "/sor|yellow 14", "+ marks: [2026-08-14]")]
    [InlineData("marks", "2026-11-25", "/sor|o 5|q", "+ marks: [2026-09-05]")]
    [InlineData("marks", "2026-11-25", "/camp|29 aug|q", "- marks: [2026-08-12]|+ marks: [2026-08-12, 2026-08-29]")]
    [InlineData("marks", "2026-11-25", "/camp|-12 aug, 15 aug|q", "- marks: [2026-08-12]|+ marks: [2026-08-15]")]
    [InlineData("marks", "2026-08-20", "14|q", "+ marks: [2026-08-14]")]
    [InlineData("marks", "2026-08-20", "today|q", "+ marks: [2026-08-20]")]
    [InlineData("teeth-toes-teats", "2026-06-20", "a|q", "+ teeth: sound|+ toes: sound|+ teats: sound")]
    [InlineData("teeth-toes-teats", "2026-06-20", "wlh|q", "+ teeth: worn|+ toes: lame|+ teats: lost-half")]
    [InlineData("teeth-toes-teats", "2026-06-20", "2.5 x b.s|q", "+ condition: 2.5|+ teeth: broken|+ teats: sound|+ to-tup: no")]
    [InlineData("teeth-toes-teats", "2026-06-20", "3|q", "+ condition: 3.0")]
    [InlineData("lambed", "2027-01-20", "/sor|14|q", "+ lambed: 2027-01-14")]
    [InlineData("lambed", "2027-01-20", "/sor|14 jan 3:20 2 1 h|q", "+ lambed: 2027-01-14|+ lambed-time: 03:20|+ lambs-alive: 2|+ lambs-dead: 1|+ lambing-help: hand")]
    [InlineData("lambed", "2027-01-20", "/sor|yesterday 2|<|jan 18 0 2|q", "+ lambed: 2027-01-18|+ lambs-alive: 0|+ lambs-dead: 2")]
    [InlineData("lambed", "2027-01-20", "/sor|2027-01-14 2|/sor|-|q", "")]
    public void What_is_typed_goes_into_the_file_and_nothing_else_changes(string sheet, string day, string typed, string change)
    {
        using var bench = new Workbench { Answers = typed.Replace('|', '\n') };
        bench.Write(FourEwes.File, FourEwes.Text);
        var outcome = bench.Run("enter", sheet, FourEwes.File, "--as-of", day);
        Assert.Equal("", outcome.Error);
        Assert.Equal(0, outcome.Status);
        Assert.Equal(
            change.Split('|').Order(StringComparer.Ordinal),
            FourEwes.Difference(FourEwes.Text, FourEwes.After(bench)).Split('\n').Order(StringComparer.Ordinal));
        Assert.Equal([FourEwes.File], bench.Everything());
    }

    /// <summary>Sheet, day, what is typed, what is said against it.</summary>
    [Theory]
    [InlineData("scan", "2026-11-25", "7", "`7` is no count of lambs")]
    [InlineData("scan", "2026-11-25", "2e", "type `e2`")]
    [InlineData("scan", "2026-11-25", "e0", "neither early nor late")]
    [InlineData("marks", "2026-11-25", "14", "may be Fri 14 Aug 2026 or Mon 14 Sep 2026; type `14 aug` or `14 sep`")]
    [InlineData("marks", "2026-11-25", "14 mar", "cannot be: the tup of her group is in from Mon 10 Aug 2026 to Mon 21 Sep 2026; type a day such as `21 sep`")]
    [InlineData("marks", "2026-11-25", "yellow 5 sep", "the tup wears yellow from Mon 10 Aug 2026 to Wed 26 Aug 2026")]
    [InlineData("marks", "2026-08-12", "14", "yet to come: today is Wed 12 Aug 2026")]
    [InlineData("marks", "2026-11-25", "31 sep", "is no day of the calendar")]
    [InlineData("marks", "2026-11-25", "purple 14", "is none of the colours of her group: yellow, orange and blue")]
    [InlineData("marks", "2026-11-25", "-14 aug", "has no mark of Fri 14 Aug 2026")]
    [InlineData("teeth-toes-teats", "2026-06-20", "good", "not understood; type a for all sound")]
    [InlineData("teeth-toes-teats", "2026-06-20", "7 a", "no condition score; it lies between 1 and 5")]
    [InlineData("lambed", "2027-02-20", "14", "may be Thu 14 Jan 2027 or Sun 14 Feb 2027")]
    [InlineData("lambed", "2027-02-20", "14 jul", "cannot be: her group could lamb from")]
    [InlineData("lambed", "2027-02-20", "14 jan 7", "`7` is no number of lambs")]
    [InlineData("lambed", "2027-02-20", "14 jan 25:10 2", "no time of the day")]
    [InlineData("lambed", "2027-02-20", "14 jan 2 1 3", "one thing too many")]
    public void What_cannot_be_is_refused_with_what_would_be_taken_and_asked_again(string sheet, string day, string typed, string against)
    {
        using var bench = new Workbench { Answers = $"/sorrel\n{typed}\nq\n", AtAKeyboard = true };
        // With one ewe more in front, so that there is a way to go to the first.
        bench.Write(FourEwes.File, FourEwes.Text.Replace("ewes:\n", "ewes:\n  - {tag: ZZ 1, group: Paddock}\n", StringComparison.Ordinal));
        var before = FourEwes.After(bench);
        var outcome = bench.Run("enter", sheet, FourEwes.File, "--as-of", day);
        Assert.Contains(against, outcome.Out, StringComparison.Ordinal);
        Assert.Equal(0, outcome.Status);
        Assert.Equal(before, FourEwes.After(bench));
    }

    /// <summary>The line after a refused one may be about another ewe, and nobody is there to see it go wrong.</summary>
    [Fact]
    public void A_pipe_stops_at_the_first_answer_that_is_refused_and_keeps_what_came_before()
    {
        using var bench = new Workbench { Answers = "2\nnine\n1\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        var outcome = bench.Run("enter", "scan", FourEwes.File);
        Assert.Equal(2, outcome.Status);
        Assert.Contains("line 2 of what was typed, about Bracken", outcome.Error, StringComparison.Ordinal);
        Assert.Equal("+ scan: 2", FourEwes.Difference(FourEwes.Text, FourEwes.After(bench)));
    }

    [Fact]
    public void It_is_taken_up_again_at_the_first_ewe_without_an_answer()
    {
        using var bench = new Workbench { Answers = "2\n\n1\nq\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        var first = bench.Run("enter", "scan", FourEwes.File);
        Assert.Contains("2 entered, 0 changed, 1 left as they were.\nNext: paperflock check flock.yaml, and then paperflock pack flock.yaml\n", first.Out, StringComparison.Ordinal);
        bench.Answers = "";
        var second = bench.Run("enter", "scan", FourEwes.File);
        Assert.Contains("Going on at ewe 2 of 4", second.Out, StringComparison.Ordinal);
        Assert.Contains("2/4  Bracken  ZZ 0123456 00101  nothing written down", second.Out, StringComparison.Ordinal);
        Assert.Contains("Nothing was entered; the file is as it was.", second.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void An_answer_put_right_a_moment_later_counts_once_and_one_of_last_week_as_changed()
    {
        using var bench = new Workbench { Answers = "2\n<\n1\nq\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        Assert.Contains("1 entered, 0 changed", bench.Run("enter", "scan", FourEwes.File).Out, StringComparison.Ordinal);
        bench.Answers = "/sorrel\n3\nq\n";
        Assert.Contains("0 entered, 1 changed", bench.Run("enter", "scan", FourEwes.File).Out, StringComparison.Ordinal);
        bench.Answers = "/sorrel\n3\nq\n";
        Assert.Contains("= Sorrel: 3 lambs, as it was", bench.Run("enter", "scan", FourEwes.File).Out, StringComparison.Ordinal);
    }

    /// <summary>No Enter: two, early one, a slip rubbed out, back to her, three, and gone by Ctrl-C.</summary>
    [Fact]
    public void One_key_a_ewe_is_enough()
    {
        using var bench = new Workbench { Keys = "2e1l\b\n\b3", OnATerminal = false };
        bench.Write(FourEwes.File, FourEwes.Text);
        var outcome = bench.Run("enter", "scan", FourEwes.File);
        Assert.Equal(130, outcome.Status);
        Assert.Contains("What was read back to you is in the file", outcome.Error, StringComparison.Ordinal);
        Assert.Contains("= Bracken: 1 lamb, early", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("= Campion: 3 lambs", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("3 entered, 0 changed, 0 left", outcome.Out, StringComparison.Ordinal);
    }

    /// <summary>On the sheet of teeth, toes and teats three letters make one answer, and all sound is one key.</summary>
    [Fact]
    public void Three_letters_make_an_answer_and_one_key_says_all_sound()
    {
        using var bench = new Workbench { Keys = "a3.5wss" };
        bench.Write(FourEwes.File, FourEwes.Text);
        var outcome = bench.Run("enter", "teeth-toes-teats", FourEwes.File);
        Assert.Contains("= Sorrel: teeth sound, toes sound, teats sound", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("= Bracken: score 3.5, teeth worn, toes sound, teats sound", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_an_editor_saved_meanwhile_is_kept()
    {
        using var bench = new Workbench { Answers = "2\nq\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        // The question stands on the screen when the note is changed.
        using var said = new SaidFirst("> ", () => bench.Write(FourEwes.File, FourEwes.Text.Replace("Quiet", "Loud", StringComparison.Ordinal)));
        bench.RunInto(said, "enter", "scan", FourEwes.File);
        Assert.Equal("- note: Quiet\n+ scan: 2\n+ note: Loud", FourEwes.Difference(FourEwes.Text, FourEwes.After(bench)));
    }

    [Fact]
    public void A_file_broken_by_an_editor_meanwhile_is_shown_and_left_alone()
    {
        using var bench = new Workbench { Answers = "2\nq\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        var broken = FourEwes.Text.Replace("note:", "knote:", StringComparison.Ordinal);
        using var said = new SaidFirst("> ", () => bench.Write(FourEwes.File, broken));
        var outcome = bench.RunInto(said, "enter", "scan", FourEwes.File);
        Assert.Equal(2, outcome.Status);
        Assert.Contains("`knote` is not a key", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(broken, FourEwes.After(bench));
    }

    [Theory]
    [InlineData("scan", "  to-tup: no", "there is no scan sheet in this pack")]
    [InlineData("marks", "  note: x", "there is no raddle sheet in this pack")]
    [InlineData("lambed", "  scan: 0", "nobody is to lamb in this pack")]
    public void A_sheet_that_is_not_in_the_pack_is_not_asked_for(string sheet, string line, string why)
    {
        using var bench = new Workbench { Answers = "" };
        bench.Write(FourEwes.File, $"paperflock: 1\nholding: {{name: Hollin Bank, location: {{latitude: 54.46, longitude: -2.74}}, time-zone: Europe/London}}\nseason: {{tup-in: 2026-08-10}}\ngroups: [{{name: A, raddle: false}}]\newes:\n- tag: Z1\n{line}\n");
        var outcome = bench.Run("enter", sheet, FourEwes.File);
        Assert.Equal(2, outcome.Status);
        Assert.Contains(why, outcome.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_question_mark_shows_what_each_key_does()
    {
        using var bench = new Workbench { Answers = "?\nq\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        var outcome = bench.Run("enter", "scan", FourEwes.File);
        Assert.Contains("e2  l2       the same, and the scanner said early, or late", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("<            step back", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_flock_file_with_errors_is_shown_and_not_asked_about()
    {
        using var bench = new Workbench { Answers = "2\n" };
        bench.Write(FourEwes.File, Samples.BadDate);
        var outcome = bench.Run("enter", "scan", FourEwes.File);
        Assert.Equal(1, outcome.Status);
        Assert.Contains("flock.yaml:7:11: error FLK037", outcome.Error, StringComparison.Ordinal);
    }

    /// <summary>Who keeps the file elsewhere and links to it wants a link to be left.</summary>
    [Fact]
    public void A_link_stays_a_link_and_the_file_keeps_its_permissions()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var bench = new Workbench { Answers = "2\nq\n" };
        bench.Write("real.yaml", FourEwes.Text);
        System.IO.File.SetUnixFileMode(bench.PathOf("real.yaml"), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.GroupWrite);
        System.IO.File.CreateSymbolicLink(bench.PathOf(FourEwes.File), "real.yaml");
        Assert.Equal(0, bench.Run("enter", "scan", FourEwes.File).Status);
        Assert.Equal("real.yaml", new FileInfo(bench.PathOf(FourEwes.File)).LinkTarget);
        Assert.Equal("+ scan: 2", FourEwes.Difference(FourEwes.Text, FourEwes.After(bench)));
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.GroupWrite, System.IO.File.GetUnixFileMode(bench.PathOf("real.yaml")));
    }

    /// <summary>Does something once, just after the words are written.</summary>
    private sealed class SaidFirst(string words, Action then) : StringWriter
    {
        private Action? _then = then;

        public override void Write(string? value)
        {
            base.Write(value);
            if (value == words)
            {
                _then?.Invoke();
                _then = null;
            }
        }
    }
}
