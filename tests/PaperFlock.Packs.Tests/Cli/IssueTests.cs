using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>Which issue is in the binder, what is compared with which, and what is never replaced.</summary>
public sealed class IssueTests
{
    [Theory]
    [InlineData("2026-11-25")]
    [InlineData("2026-11-26")]
    public void A_run_that_changes_no_leaf_makes_the_same_issue_and_the_same_bytes(string day)
    {
        using var bench = Printed();
        var pack = Bytes(bench, "flock.pdf");
        var outcome = Must(bench, "pack", "flock.yaml", "--as-of", day);
        Assert.Contains("this is the same issue again", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(pack, Bytes(bench, "flock.pdf"));
    }

    [Fact]
    public void A_changed_leaf_makes_the_next_issue_of_a_whole_pack()
    {
        using var bench = Printed();
        Edit(bench, "Lame behind");
        Assert.Contains("issue 2, whole: it takes the place of issue 1 of Wed 25 Nov 2026, in flock.pdf", Must(bench, "pack", "flock.yaml").Out, StringComparison.Ordinal);
    }

    /// <summary>It is a file, and no more: nobody knows whether it was printed.</summary>
    [Fact]
    public void Without_a_terminal_the_newest_issue_counts_and_is_named()
    {
        using var bench = Printed();
        Edit(bench, "Lame behind");
        Assert.Contains("issue 1, in flock.pdf, is taken to be in your binder", Must(bench, "pack", "flock.yaml", "--changed").Out, StringComparison.Ordinal);
        var again = Must(bench, "pack", "flock.yaml", "--changed").Out;
        Assert.Contains("issue 2, in flock-issue-2.pdf, is taken to be in your binder", again, StringComparison.Ordinal);
        Assert.Contains("--since 1 goes by the one before", again, StringComparison.Ordinal);
        Assert.Contains("nothing has changed since issue 2", again, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_keeper_says_is_in_the_binder_is_written_into_the_newest_issue_and_nothing_else_of_it_changes()
    {
        using var bench = Printed();
        var before = Bytes(bench, "flock.pdf");
        Assert.Contains("wrote flock.pdf: issue 1 of Wed 25 Nov 2026 is in your binder now", Must(bench, "pack", "flock.yaml", "--printed").Out, StringComparison.Ordinal);
        var after = Bytes(bench, "flock.pdf");
        Assert.NotEqual(before, after);
        using (var one = new PackPdf(bench.PathOf("flock.pdf")))
        {
            Assert.NotEmpty(one.Outline);
        }

        // All before the attachment are pages, fonts and structure.
        var same = before.Zip(after).TakeWhile(pair => pair.First == pair.Second).Count();
        Assert.InRange(same, before.AsSpan().IndexOf("/EmbeddedFile"u8) - 40, before.Length);
        Assert.Contains("says already", Must(bench, "pack", "flock.yaml", "--printed").Out, StringComparison.Ordinal);
        Assert.DoesNotContain("is taken to be", Must(bench, "pack", "flock.yaml", "--changed").Out, StringComparison.Ordinal);
        Assert.Equal(after, Bytes(bench, "flock.pdf"));
    }

    [Fact]
    public void At_a_keyboard_the_keeper_says_which_issue_it_is()
    {
        using var bench = Printed(atAKeyboard: true);
        Edit(bench, "Lame behind");
        bench.Answers = "1\n";
        Assert.Contains("since issue 1", Must(bench, "pack", "flock.yaml", "--changed").Out, StringComparison.Ordinal);

        // Issue 2 was made and never filed; no leaf has changed since, so it is made again.
        bench.Answers = "7\nyes\n1\n";
        var two = Must(bench, "pack", "flock.yaml", "--changed").Out;
        Assert.Contains("'7' is none of them", two, StringComparison.Ordinal);
        Assert.Contains("issue 2: ", two, StringComparison.Ordinal);

        // A correction: the next is number 3, and still goes by issue 1.
        Edit(bench, "Lame in front");
        bench.Answers = "1\n";
        Assert.Contains("issue 3: ", Must(bench, "pack", "flock.yaml", "--changed").Out, StringComparison.Ordinal);
        using var pdf = new PackPdf(bench.PathOf("flock-issue-3.pdf"));
        Assert.Contains("Never filed.", pdf.Text, StringComparison.Ordinal);

        bench.Answers = "3\n";
        Assert.Contains("nothing has changed since issue 3", Must(bench, "pack", "flock.yaml", "--changed").Out, StringComparison.Ordinal);
        bench.Answers = null;
        Assert.DoesNotContain("Which issue", Must(bench, "pack", "flock.yaml", "--changed").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("none\n", "then every leaf is to be printed; nothing was written. Type: paperflock pack flock.yaml")]
    [InlineData("", "the answers end before you have said which issue is in your binder")]
    public void With_none_in_the_binder_nothing_is_written(string answers, string said)
    {
        using var bench = Printed(atAKeyboard: true);
        Edit(bench, "Lame behind");
        bench.Answers = answers;
        var outcome = bench.Run("pack", "flock.yaml", "--changed");
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains(said, outcome.Error, StringComparison.Ordinal);
        Assert.Equal(["flock.pdf", "flock.yaml"], bench.Everything());
    }

    /// <summary>The newest PDF alone knows what each issue said; numbers go on.</summary>
    [Fact]
    public void Any_issue_can_be_compared_with_from_the_newest_alone()
    {
        using var bench = Printed();
        Edit(bench, "Lame behind");
        Must(bench, "pack", "flock.yaml", "--changed");
        File.Delete(bench.PathOf("flock.pdf"));
        bench.Write("flock.yaml", Samples.TwoEwes);
        Assert.Contains("nothing has changed since issue 1 of Wed 25 Nov 2026, in flock-issue-2.pdf", Must(bench, "pack", "flock.yaml", "--since", "1").Out, StringComparison.Ordinal);
        Edit(bench, "Lame in front");
        Assert.Contains("issue 3: ", Must(bench, "pack", "flock.yaml", "--since", "1").Out, StringComparison.Ordinal);
        var none = bench.Run("pack", "flock.yaml", "--since", "9");
        Assert.Equal(ExitStatus.WrongUse, none.Status);
        Assert.Contains("there is no issue 9: flock-issue-3.pdf knows of 1 of Wed 25 Nov 2026, 2 of", none.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void On_another_computer_the_newest_issue_is_named()
    {
        using var bench = Printed();
        Directory.CreateDirectory(bench.PathOf("far"));
        bench.Write("far/flock.yaml", Samples.TwoEwes + "\n    note: Lame behind\n");
        Assert.Equal(ExitStatus.WrongUse, bench.Run("pack", "far/flock.yaml", "--changed").Status);
        Assert.Contains("since issue 1 of Wed 25 Nov 2026, in flock.pdf", Must(bench, "pack", "far/flock.yaml", "--since", "flock.pdf").Out, StringComparison.Ordinal);
        Assert.Contains("far/flock-issue-2.pdf", bench.Everything());
        Assert.Contains("flock.yaml is no pack", bench.Run("pack", "far/flock.yaml", "--since", "flock.yaml").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void One_leaf_is_printed_again_into_a_file_of_its_own_and_bears_its_own_issue()
    {
        using var bench = Printed();
        var pack = Bytes(bench, "flock.pdf");
        Must(bench, "pack", "flock.yaml", "--sheets", "card-00101,CALL", "--as-of", "2026-11-26");
        Assert.Equal(["flock-CALL-CARD-00101.pdf", "flock.pdf", "flock.yaml"], bench.Everything());
        Assert.Equal(pack, Bytes(bench, "flock.pdf"));
        using var pdf = new PackPdf(bench.PathOf("flock-CALL-CARD-00101.pdf"));
        Assert.Contains("CARD-00101 front · issue 1, Wed 25 Nov 2026", pdf.Text.Replace('\u00a0', ' '), StringComparison.Ordinal);
        Assert.DoesNotContain("CARD-00102", pdf.Text, StringComparison.Ordinal);

        foreach (var typed in new[] { "card-101", "CARD-ZZ 0123456 00101", "card-zz0123456-00101", "CARD-00101,CARD-101" })
        {
            File.Delete(bench.PathOf("flock-CARD-00101.pdf"));
            Must(bench, "pack", "flock.yaml", "--sheets", typed);
            Assert.True(File.Exists(bench.PathOf("flock-CARD-00101.pdf")), typed);
        }

        var unsure = bench.Run("pack", "flock.yaml", "--sheets", "CARD-00101,CARD-10");
        Assert.Contains("there is no leaf 'CARD-10' in this pack", unsure.Error, StringComparison.Ordinal);
        var unknown = bench.Run("pack", "flock.yaml", "--sheets", "CARD-00109");
        Assert.Equal(ExitStatus.WrongUse, unknown.Status);
        Assert.Contains("there is no leaf 'CARD-00109' in this pack: did you mean 'CARD-0010", unknown.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_leaf_that_says_something_else_by_now_is_named()
    {
        using var bench = Printed();
        Edit(bench, "Lame behind");
        Assert.Contains("CARD-00102 does not say what issue 1 said", Must(bench, "pack", "flock.yaml", "--sheets", "CARD-00102").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_draft_says_so_on_every_page_and_touches_no_record()
    {
        using var bench = Printed();
        var pack = Bytes(bench, "flock.pdf");
        Edit(bench, "Lame behind");
        Must(bench, "pack", "flock.yaml", "--look");
        Assert.Equal(["flock-draft.pdf", "flock.pdf", "flock.yaml"], bench.Everything());
        Assert.Equal(pack, Bytes(bench, "flock.pdf"));
        using var pdf = new PackPdf(bench.PathOf("flock-draft.pdf"));
        Assert.All(pdf.AllPages, page => Assert.Contains("DRAFT", page.Text, StringComparison.Ordinal));
        Assert.DoesNotContain(" · issue ", pdf.Text, StringComparison.Ordinal);
        Assert.Equal(-1, Bytes(bench, "flock-draft.pdf").AsSpan().IndexOf("/EmbeddedFile"u8));
    }

    /// <summary>Their initials are the same, and so are the names of their files.</summary>
    [Theory]
    [InlineData]
    [InlineData("--split")]
    [InlineData("--sheets", "jobs")]
    [InlineData("--look")]
    public void A_pack_of_another_holding_is_replaced_only_when_that_is_said(params string[] options)
    {
        using var bench = new Workbench();
        Directory.CreateDirectory(bench.PathOf("far"));
        bench.Write("flock.yaml", Samples.TwoEwes);
        bench.Write("far/flock.yaml", Samples.TwoEwes.Replace("Hollin Bank", "Holly Brow", StringComparison.Ordinal));
        Must(bench, ["pack", "flock.yaml", "--out", "out", .. options]);
        var before = bench.Everything().Where(f => f.EndsWith(".pdf", StringComparison.Ordinal)).ToDictionary(f => f, f => Bytes(bench, f));
        var outcome = bench.Run(["pack", "far/flock.yaml", "--out", "out", .. options]);
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains("is of another holding: Hollin Bank HB-2027", outcome.Error, StringComparison.Ordinal);
        Assert.All(before, file => Assert.Equal(file.Value, Bytes(bench, file.Key)));
        Must(bench, ["pack", "far/flock.yaml", "--out", "out", "--overwrite", .. options]);
        Assert.All(before, file => Assert.NotEqual(file.Value, Bytes(bench, file.Key)));
    }

    /// <summary>What XML writes in another way is read back as it was.</summary>
    [Theory]
    [InlineData("Nell's Bank")]
    [InlineData("Ashworth & Daughter")]
    [InlineData("Bank <top>")]
    [InlineData("\"The\" Bank")]
    [InlineData("Bank &amp; Brow")]
    [InlineData("H\u014De Bank")]
    public void A_holding_may_have_any_mark_in_its_name_and_its_pack_is_known_again(string name)
    {
        using var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes.Replace("name: Hollin Bank", $"name: {System.Text.Json.JsonSerializer.Serialize(name)}", StringComparison.Ordinal));
        Must(bench, "pack", "flock.yaml");
        Must(bench, "pack", "flock.yaml", "--sheets", "jobs");
        Must(bench, "pack", "flock.yaml", "--changed");
    }

    [Theory]
    [InlineData("flock.pdf", "my own", "pack flock.yaml", "flock.pdf is no pack that this program has made")]
    [InlineData("flock.ics", "my own", "calendar flock.yaml", "flock.ics is no calendar of this holding")]
    [InlineData("flock.ics", "", "calendar flock.yaml", "flock.ics is no calendar of this holding")]
    [InlineData("flock-births.csv", "my own", "births flock.yaml", "flock-births.csv is no list of births that this program has made")]
    [InlineData("flock-births.csv", "", "births flock.yaml", "flock-births.csv is no list of births that this program has made")]
    public void What_is_not_ours_is_left_alone(string file, string text, string command, string said)
    {
        using var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes);
        bench.Write(file, text);
        var outcome = bench.Run(command.Split(' '));
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains(said, outcome.Error, StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(bench.PathOf(file)));
        Must(bench, [.. command.Split(' '), "--overwrite"]);
    }

    /// <summary>What stands on a card is that card's, though another tag ends so too.</summary>
    [Fact]
    public void A_tag_that_two_ewes_may_have_names_both()
    {
        using var bench = new Workbench();
        bench.Write("flock.yaml", Samples.TwoEwes.Replace("ZZ 0123456 00102", "ZZ 0123456 900101", StringComparison.Ordinal));
        var outcome = bench.Run("pack", "flock.yaml", "--sheets", "CARD-0101", "--as-of", "2026-11-25");
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains("'CARD-0101' could be any of 2: ZZ 0123456 00101 Bracken and ZZ 0123456 900101 Sorrel; type more of the tag", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(["flock.yaml"], bench.Everything());

        Must(bench, "pack", "flock.yaml", "--sheets", "CARD-00101", "--as-of", "2026-11-25");
        Assert.Equal(["flock-CARD-00101.pdf", "flock.yaml"], bench.Everything());
    }

    /// <summary>A record that cannot be read may be of any issue: nobody begins to count anew without saying so.</summary>
    [Fact]
    public void Counts_never_go_back_by_chance()
    {
        using var bench = Printed();
        var pdf = Bytes(bench, "flock.pdf");
        var forged = PaperFlock.Pdf.PdfAttachments.Replace(pdf, "issue.json", "{\"format\":\"PaperFlock issues\",\"version\":3}"u8)!;
        File.WriteAllBytes(bench.PathOf("flock.pdf"), forged);
        var outcome = bench.Run("pack", "flock.yaml");
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains("flock.pdf has a record in it that is damaged: it is not as it was written", outcome.Error, StringComparison.Ordinal);
        Assert.Contains("begin again at issue 1 with --overwrite", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(forged, Bytes(bench, "flock.pdf"));
    }

    [Theory]
    [InlineData("pack|")]
    [InlineData("pack|flock.yaml|--out|")]
    [InlineData("pack|flock.yaml|--since|")]
    [InlineData("pack|flock.yaml|--since|far")]
    [InlineData("check|")]
    public void An_empty_name_or_a_folder_is_a_clear_no(string args)
    {
        using var bench = Printed();
        Directory.CreateDirectory(bench.PathOf("far"));
        var outcome = bench.Run(args.Split('|'));
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Matches("is empty: type its name|that is a folder|wants something after it", outcome.Error);
    }

    private static Workbench Printed(bool atAKeyboard = false)
    {
        var bench = new Workbench { AtAKeyboard = atAKeyboard };
        bench.Write("flock.yaml", Samples.TwoEwes);
        Must(bench, "pack", "flock.yaml");
        return bench;
    }

    private static void Edit(Workbench bench, string note) => bench.Write("flock.yaml", Samples.TwoEwes + $"\n    note: {note}\n");

    private static Outcome Must(Workbench bench, params string[] args)
    {
        var outcome = bench.Run(args);
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        return outcome;
    }

    private static byte[] Bytes(Workbench bench, string name) => File.ReadAllBytes(bench.PathOf(name));
}
