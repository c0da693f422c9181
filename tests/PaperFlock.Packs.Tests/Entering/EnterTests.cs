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
    [InlineData("teeth-toes-teats", "2026-08-20", "a|q", "+ teeth: sound|+ toes: sound|+ teats: sound")]
    [InlineData("teeth-toes-teats", "2026-08-20", "wlh|q", "+ teeth: worn|+ toes: lame|+ teats: lost-half")]
    [InlineData("teeth-toes-teats", "2026-08-20", "2.5 x b.s|q", "+ condition: 2.5|+ teeth: broken|+ teats: sound|+ to-tup: no")]
    [InlineData("teeth-toes-teats", "2026-08-20", "3|q", "+ condition: 3.0")]
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
    [InlineData("marks", "2026-11-25", "14/8", "`14/8` cannot be read as a day; type it as")]
    [InlineData("marks", "2026-11-25", "purple 14", "is none of the colours of her group: yellow, orange and blue")]
    [InlineData("marks", "2026-11-25", "-14 aug", "has no mark of Fri 14 Aug 2026")]
    [InlineData("teeth-toes-teats", "2026-08-20", "good", "not understood; type a for all sound")]
    [InlineData("teeth-toes-teats", "2026-08-20", "7 a", "no condition score; it lies between 1 and 5")]
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

    /// <summary>As a shell wants it.</summary>
    [Fact]
    public void A_name_with_a_space_is_quoted_in_what_comes_next()
    {
        using var bench = new Workbench { Answers = "2\nq\n" };
        bench.Write("my flock.yaml", FourEwes.Text);
        Assert.EndsWith("Next: paperflock check \"my flock.yaml\", and then paperflock pack \"my flock.yaml\"\n", bench.Run("enter", "scan", "my flock.yaml").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_taken_up_again_at_the_first_ewe_without_an_answer()
    {
        using var bench = new Workbench { Answers = "2\n\n1\nq\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        var first = bench.Run("enter", "scan", FourEwes.File);
        Assert.Contains("  nothing typed, nothing changed: Bracken is left as she is\n", first.Out, StringComparison.Ordinal);
        Assert.Contains("2 entered, 0 changed.\nNext: paperflock check flock.yaml, and then paperflock pack flock.yaml\n", first.Out, StringComparison.Ordinal);
        bench.Answers = "";
        var second = bench.Run("enter", "scan", FourEwes.File);
        Assert.Contains("Going on at row 2 of 4", second.Out, StringComparison.Ordinal);
        Assert.Contains("row 2 of 4  Bracken  ZZ 0123456 00101  nothing written down", second.Out, StringComparison.Ordinal);
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

    /// <summary>What is typed, each key a key, and each ewe's count after it. The last key is Ctrl-C.</summary>
    [Theory]
    [InlineData("2\n0\n1\n3\n\n", "2 0 1 3")]
    [InlineData("2\n\n\n1\n", "2 1 - -")]
    [InlineData("2", "- - - -")]
    [InlineData("2\n1", "2 - - -")]
    [InlineData("2\u21931\u2193", "2 1 - -")]
    [InlineData("\u2193\u21931\u2193", "- - 1 -")]
    [InlineData("2\u21931\u2193\u2191\u21910\n", "0 1 - -")]
    [InlineData("\u21931\u21912\n", "2 1 - -")]
    [InlineData("2\n<\n3\n", "3 - - -")]
    [InlineData("2\n\b\b1\n", "2 1 - -")]
    [InlineData("23\b\n", "2 - - -")]
    [InlineData("23\u001b1\n", "1 - - -")]
    [InlineData("\u2191\u2191\u21912\n", "2 - - -")]
    [InlineData("e2\n9\n1\n", "2 1 - -")]
    [InlineData(">\n>\n1\n", "- - 1 -")]
    public void An_answer_is_a_key_and_Enter_or_an_arrow_and_goes_to_the_ewe_on_the_screen(string keys, string counts)
    {
        using var bench = new Workbench { Keys = keys };
        bench.Write(FourEwes.File, FourEwes.Text);
        bench.Run("enter", "scan", FourEwes.File);
        Assert.Equal(counts, string.Join(' ', FourEwes.Read(bench).Ewes.Select(e => e.Scan?.ToString(CultureInfo.InvariantCulture) ?? "-")));
    }

    [Fact]
    public void Enter_alone_changes_nothing_and_says_so_and_asks_for_the_same_ewe_again()
    {
        using var bench = new Workbench { Keys = "2\n\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        var outcome = bench.Run("enter", "scan", FourEwes.File);
        Assert.Equal(130, outcome.Status);
        Assert.Contains("  nothing typed, nothing changed; the arrow down, or >, goes on to the next ewe\nrow 2 of 4  Bracken", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("What was read back to you is in the file", outcome.Error, StringComparison.Ordinal);
        Assert.Equal("+ scan: 2", FourEwes.Difference(FourEwes.Text, FourEwes.After(bench)));
    }

    [Fact]
    public void Three_letters_make_an_answer_and_one_says_all_sound()
    {
        using var bench = new Workbench { Keys = "a\n3.5wss\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        var outcome = bench.Run("enter", "teeth-toes-teats", FourEwes.File);
        Assert.Contains("= Sorrel: teeth sound, toes sound, teats sound", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("= Bracken: score 3.5, teeth worn, toes sound, teats sound", outcome.Out, StringComparison.Ordinal);
    }

    /// <summary>The box of the paper is read again: yellow is worn from 10 to 26 August, orange from 27 August to 12 September.</summary>
    [Theory]
    [InlineData("15 aug", "2026-08-15", "in place of Wed 12 Aug 2026")]
    [InlineData("yellow 15", "2026-08-15", "in place of Wed 12 Aug 2026")]
    [InlineData("+15 aug", "2026-08-12 2026-08-15", "marked Sat 15 Aug 2026 (yellow)\n")]
    [InlineData("29 aug", "2026-08-12 2026-08-29", "marked Sat 29 Aug 2026 (orange)\n")]
    [InlineData("12 aug, 15 aug", "2026-08-12 2026-08-15", "(yellow)")]
    [InlineData("15 aug, 29 aug", "2026-08-15 2026-08-29", "in place of Wed 12 Aug 2026")]
    [InlineData("-", "", "no mark")]
    public void Correcting_a_mark_replaces_it(string typed, string marks, string said)
    {
        using var bench = new Workbench { Answers = $"/campion\n{typed}\nq\n" };
        bench.Write(FourEwes.File, FourEwes.Text);
        Assert.Contains(said, bench.Run("enter", "marks", FourEwes.File).Out, StringComparison.Ordinal);
        Assert.Equal(marks, string.Join(' ', FourEwes.Read(bench).Ewes[2].Marks.Select(NodaTime.Text.LocalDatePattern.Iso.Format)));
    }

    /// <summary>What the flock file's reader refuses by the calendar is refused here in its words: six weeks after the tup nobody can count lambs.</summary>
    [Fact]
    public void A_count_that_is_too_soon_is_not_taken()
    {
        using var bench = new Workbench { Answers = "2\nq\n", AtAKeyboard = true };
        bench.Write(FourEwes.File, FourEwes.Text);
        var outcome = bench.Run("enter", "scan", FourEwes.File, "--as-of", "2026-09-01");
        Assert.Contains("  not taken: lambs cannot be counted yet on Tue 1 Sep 2026", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(FourEwes.Text, FourEwes.After(bench));
    }

    [Fact]
    public void What_is_unlikely_is_taken_and_remarked_on()
    {
        using var bench = new Workbench { Answers = "0\nq\n" };
        bench.Write(FourEwes.File, FourEwes.Text.Replace("name: Sorrel ", "lambed: 2027-01-14\n    name: Sorrel ", StringComparison.Ordinal));
        bench.Answers = "/sorrel\n0\nq\n";
        var outcome = bench.Run("enter", "scan", FourEwes.File, "--as-of", "2027-01-20");
        Assert.Contains("  = Sorrel: empty\n    mind: ", outcome.Out, StringComparison.Ordinal);
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
        Assert.Contains("<            back to the ewe before", outcome.Out, StringComparison.Ordinal);
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
}
