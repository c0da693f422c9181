using System.Text.RegularExpressions;
using NodaTime;
using PaperFlock.Cli;
using PaperFlock.Layout;
using PaperFlock.Pdf;

namespace PaperFlock.Packs.Tests.Cli;

public sealed class CheckTests
{
    [Fact]
    public void A_good_file_is_counted_and_its_first_lambs_dated()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("check", Samples.HollinBank, "--as-of", "2026-11-25");
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        // Tup in on 10 August, and 147 days on is 4 January: by the calendar, a Monday.
        Assert.Contains("24 ewes, 2 groups, first lambs due Mon 4 Jan 2027", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void An_error_is_status_1_with_its_place_a_caret_and_advice()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("check", bench.Write("flock.yaml", Samples.BadDate));
        Assert.Equal(ExitStatus.FlockErrors, outcome.Status);
        Assert.StartsWith("flock.yaml:7:11: error FLK", outcome.Error, StringComparison.Ordinal);
        Assert.Contains("\n      tup-in: 2026-02-30\n              ^^^^^^^^^^\n", outcome.Error, StringComparison.Ordinal);
        Assert.EndsWith("1 error\n", outcome.Error, StringComparison.Ordinal);
        Assert.Empty(outcome.Out);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("dates")]
    [InlineData("figures")]
    [InlineData("pack")]
    public void Errors_stop_every_command_before_anything_is_written(string command)
    {
        using var bench = new Workbench();
        var flock = bench.Write("flock.yaml", Samples.BadDate);
        var outcome = bench.Run(command, flock);
        Assert.Equal(ExitStatus.FlockErrors, outcome.Status);
        Assert.Empty(outcome.Out);
        Assert.Equal(["flock.yaml"], bench.Everything());
    }

    [Fact]
    public void Warnings_go_to_the_error_stream_and_the_work_goes_on()
    {
        using var bench = new Workbench();
        var lame = Samples.TwoEwes.Replace("name: Sorrel", "name: Sorrel\n    toes: lame", StringComparison.Ordinal);
        var outcome = bench.Run("figures", bench.Write("flock.yaml", lame));
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        Assert.Contains(": warning FLK", outcome.Error, StringComparison.Ordinal);
        Assert.StartsWith("{", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clock_that_was_never_set_is_said_and_a_day_given_stands_in_for_it()
    {
        using var bench = new Workbench { Now = Instant.FromUtc(1970, 1, 1, 0, 5) };
        var flock = bench.Write("flock.yaml", Samples.TwoEwes);
        var outcome = bench.Run("check", flock);
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains("this computer's clock says 1970-01-01: set it, or say what day it is, such as --as-of", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Clean, bench.Run("check", flock, "--as-of", "2026-11-25").Status);
    }

    [Fact]
    public void What_has_not_been_seen_yet_is_refused()
    {
        using var bench = new Workbench();
        var outcome = bench.Run("check", bench.Write("flock.yaml", Samples.TwoEwes), "--as-of", "2026-08-12");
        Assert.Equal(ExitStatus.FlockErrors, outcome.Status);
        Assert.Contains("a mark on Fri 14 Aug 2026 has not happened yet: today is Wed 12 Aug 2026", outcome.Error, StringComparison.Ordinal);
    }

    /// <summary>The check asks the plain faces only, so the bold ones must not have fewer characters.</summary>
    [Theory]
    [InlineData(Face.Text, Face.TextBold)]
    [InlineData(Face.Mono, Face.MonoBold)]
    public void A_bold_face_has_every_character_of_its_plain_one(Face plain, Face bold)
    {
        var characters = Enumerable.Range(0x20, 0x10000 - 0x20).Where(c => !char.IsSurrogate((char)c)).Select(c => ((char)c).ToString());
        Assert.DoesNotContain(characters, c => FontLibrary.FirstMissing(c, plain) is null && FontLibrary.FirstMissing(c, bold) is not null);
    }

    /// <summary>None of the faces has Han characters or pictures; the place is where the character itself stands.</summary>
    [Theory]
    [InlineData("name: Bracken", "name: Fern 羊", "flock.yaml:10:16: error FLK120: `羊` (U+7F8A) is in none of the typefaces")]
    [InlineData("name: Hollin Bank", "name: 丘 Bank", "flock.yaml:3:9: error FLK120: `丘`")]
    [InlineData("name: Sorrel", "name: Sorrel\n    note: loves oats 🐑", "flock.yaml:15:22: error FLK120: `🐑` (U+1F411)")]
    [InlineData("name: Sorrel", "name: Sorrel\n    note: Left → right", "flock.yaml:15:16: error FLK120: `→` (U+2192)")]
    public void A_character_no_face_has_is_refused_at_its_place_and_nothing_is_printed(string was, string now, string error)
    {
        using var bench = new Workbench();
        var flock = bench.Write("flock.yaml", Samples.TwoEwes.Replace(was, now, StringComparison.Ordinal));
        foreach (var command in new[] { "check", "pack" })
        {
            var outcome = bench.Run(command, flock);
            Assert.Equal(ExitStatus.FlockErrors, outcome.Status);
            Assert.Contains(error, outcome.Error, StringComparison.Ordinal);
        }

        Assert.Equal(["flock.yaml"], bench.Everything());
    }

    [Fact]
    public void A_character_no_face_has_is_named_beside_the_other_faults_of_the_file_and_once()
    {
        using var bench = new Workbench();
        var wrong = Samples.TwoEwes.Replace("name: Bracken", "name: Fern 羊\n    weight: 700 kg", StringComparison.Ordinal).Replace("name: Sorrel", "name: \uE000", StringComparison.Ordinal);
        var outcome = bench.Run("check", bench.Write("flock.yaml", wrong));
        Assert.Equal(["FLK035", "FLK040", "FLK120"], Regex.Matches(outcome.Error, "error (FLK[0-9]+)").Select(m => m.Groups[1].Value).Order(StringComparer.Ordinal));
    }

    /// <summary>The letters of a Maori farm that no face has as they are: made of letter and mark, and read back as written.</summary>
    [Fact]
    public void A_name_with_a_long_o_is_printed_and_reads_back()
    {
        using var bench = new Workbench();
        var flock = bench.Write("flock.yaml", Samples.TwoEwes.Replace("name: Hollin Bank", "name: Tōtara", StringComparison.Ordinal).Replace("name: Bracken", "name: Pōhutukawa\n    note: \"Ĝĥẽạọḥ\"", StringComparison.Ordinal));
        var outcome = bench.Run("pack", flock);
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        using var pdf = new PackPdf(bench.PathOf("flock.pdf"));
        var text = string.Concat(pdf.Texts);
        Assert.All(["Tōtara", "Pōhutukawa", "Ĝĥẽạọḥ"], word => Assert.Contains(word, text, StringComparison.Ordinal));
    }

    [Fact]
    public void A_flock_of_which_every_ewe_is_gone_has_a_pack_and_nothing_to_hand_over()
    {
        using var bench = new Workbench();
        var text = $"{Samples.TwoEwes.Replace("name: Bracken", "gone: {on: 2026-11-20, why: sold}", StringComparison.Ordinal).Replace("name: Sorrel", "gone: {on: 2026-11-20, why: died}", StringComparison.Ordinal)}\nkeeper-days: {{away: [{{from: 2026-12-27, to: 2027-01-02, sitter: Tom Birkett}}]}}\n";
        var outcome = bench.Run("pack", bench.Write("flock.yaml", text), "--as-of", "2026-11-25");
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        using var pdf = new PackPdf(bench.PathOf("flock.pdf"));
        Assert.DoesNotContain("HAND-", string.Concat(pdf.Texts), StringComparison.Ordinal);
        var check = bench.Run("check", "flock.yaml", "--as-of", "2026-11-25");
        Assert.Contains("2 ewes, all gone, 1 group\n", check.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("FLK13", check.Error, StringComparison.Ordinal);
    }
}
