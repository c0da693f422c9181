using System.Text;
using NodaTime;
using PaperFlock.Cli;
using PaperFlock.Flocks;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Packs.Tests.Begin;

/// <summary>The next season's file from this one's: what stays true of the flock stays, and what has been is left behind.</summary>
public sealed class CarryOverTests
{
    private const string Last = """
        # My own words about the flock
        paperflock: 1
        holding:
          name: Hollin Bank   # our place
          location: {latitude: 54.46, longitude: -2.74}
          time-zone: Europe/London
        season:
          tup-in: 2026-08-10
          tup-out: 2026-09-21
        groups:
          - name: Orchard
            tups:
              - {name: Bramley, in: 2026-08-10, out: 2026-08-24}
              - {name: Damson, in: 2026-08-24, out: 2026-09-21}
          - {name: Paddock, mating: artificial, date: 2026-08-17}
        keeper-days:
          free: [saturday]
          away:
            - {from: 2026-12-27, to: 2027-01-02, sitter: Tom Birkett}
        jobs:
          - {title: Feed merchant closed, on: 2026-12-25}
          - {title: Lime the pens, before: first-due, days: [14, 7]}
        ewes:
          - tag: ZZ 0123456 00101
            name: Bracken
            group: Orchard
            born: 2021
            weight: 72 kg
            condition: 3.0
            teeth: sound
            toes: treated
            teats: lumpy      # the left one
            history: [mastitis]
            marks: [2026-08-14]
            scan: 2
            lambed: 2027-01-08
            lambs-alive: 1
            lambs-dead: 1
            lambs: [{sex: ewe}]
            note: Needs a quiet corner
          - tag: ZZ 0123456 00102
            name: Campion
            group: Orchard
            gone: {on: 2026-12-03, why: died}
          - {tag: ZZ 0123456 00103, name: Sorrel, group: Paddock, teats: sound, teeth: broken, scan: 0}
          - tag: ZZ 0123456 00104
            group: Paddock
            lost-lambs: 2026-11-30
            to-tup: yes
        """;

    [Fact]
    public void What_stays_true_is_kept_and_what_has_been_is_left_behind()
    {
        using var bench = Bench();
        var begun = bench.Run("begin", "next.yaml", "--from", "this.yaml", "--tup-in", "2027-08-09", "--yes");
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        var flock = Flock(bench, "next.yaml");

        // 364 days: the same weekday.
        Assert.Equal((new LocalDate(2027, 8, 9), new LocalDate(2027, 9, 20), "this.yaml"), (flock.Season.TupIn, flock.Season.TupOut, flock.Season.Last));
        Assert.Equal([("Bramley", new(2027, 8, 9), new(2027, 8, 23)), ("Damson", new(2027, 8, 23), new(2027, 9, 20))], flock.Groups[0].Tups.Select(t => (t.Name, t.In, t.Out)));
        Assert.Equal(new LocalDate(2027, 8, 16), flock.Groups[1].TupIn);
        Assert.Empty(flock.KeeperDays.Away);
        Assert.Equal([IsoDayOfWeek.Saturday], flock.KeeperDays.Free);
        Assert.Equal(["Lime the pens"], flock.OwnJobs.Select(j => j.Title));

        Assert.Equal(["ZZ 0123456 00101", "ZZ 0123456 00103", "ZZ 0123456 00104"], flock.Ewes.Select(e => e.Tag));
        var (bracken, sorrel, last) = (flock.Ewes[0], flock.Ewes[1], flock.Ewes[2]);
        Assert.Equal(((decimal?)null, Teeth.Unchecked, Toes.Unchecked, Teats.Lumpy), (bracken.Condition, bracken.Teeth, bracken.Toes, bracken.Teats));
        Assert.Equal((2021, "Needs a quiet corner"), (bracken.Born, bracken.Note));
        Assert.Equal([PastTrouble.Mastitis], bracken.History);
        Assert.Equal((new LastSeason(2, 1), (int?)null, (LocalDate?)null), (bracken.Was, bracken.Scan, bracken.Lambed));
        Assert.Empty(bracken.Marks);
        Assert.Empty(bracken.Lambs);
        Assert.Equal((new LastSeason(0, null), Teeth.Unchecked, Teats.Unchecked), (sorrel.Was, sorrel.Teeth, sorrel.Teats));
        Assert.Equal((new LastSeason(null, 0), (bool?)null, (LocalDate?)null), (last.Was, last.ToTup, last.LostLambs));

        var text = Text(bench, "next.yaml");
        Assert.Contains("# My own words about the flock", text, StringComparison.Ordinal);
        Assert.Contains("name: Hollin Bank   # our place", text, StringComparison.Ordinal);
        Assert.Contains("# the left one", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_left_behind_and_who_should_not_go_again_is_said()
    {
        using var bench = Bench();
        var said = bench.Run("begin", "next.yaml", "--from", "this.yaml", "--tup-in", "2027-08-09").Out;
        foreach (var line in new[]
        {
            "wrote next.yaml: 3 ewes, tup in Mon 9 Aug 2027; the dates of all tups have moved by 364 days",
            "ZZ 0123456 00102 Campion: died, Thu 3 Dec 2026",
            "the job of Fri 25 Dec 2026: Feed merchant closed",
            "days away, Sun 27 Dec 2026 to Sat 2 Jan 2027, Tom Birkett",
            "ZZ 0123456 00101 Bracken: lumpy udder: leave her out and ask the vet; had mastitis",
            "ZZ 0123456 00103 Sorrel: broken mouth",
            "ZZ 0123456 00103 Sorrel: scanned empty",
            "ZZ 0123456 00104: lost her lambs on Mon 30 Nov 2026",
            "write `to-tup: yes` again",
            "Next: paperflock add ewes next.yaml LIST.csv for ewes you have bought or kept, and then paperflock check next.yaml",
        })
        {
            Assert.Contains(line, said, StringComparison.Ordinal);
        }
    }

    /// <summary>Remarks inside a list that goes cannot stay, and nothing else may be lost for it.</summary>
    [Fact]
    public void Where_remarks_cannot_be_kept_the_file_is_written_plain()
    {
        using var bench = Bench(Last.Replace("    lambs: [{sex: ewe}]", "    lambs:\n      - {sex: ewe}   # hers", StringComparison.Ordinal).Replace("    marks: [2026-08-14]", "    marks: [2026-08-14, # a mark\n      2026-08-30]", StringComparison.Ordinal));
        var begun = bench.Run("begin", "next.yaml", "--from", "this.yaml", "--tup-in", "2027-08-09");
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        Assert.Empty(Flock(bench, "next.yaml").Ewes[0].Lambs);
        Assert.Equal(begun.Out.Contains("could not be kept", StringComparison.Ordinal), !Text(bench, "next.yaml").Contains("# My own words", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("next.yaml --from this.yaml --tup-in 2026-08-10", "the tup went in on Mon 10 Aug 2026 last season")]
    [InlineData("next.yaml --from this.yaml --tup-in 2026-12-10", "on Thu 10 Dec 2026 ewes may still be in lamb")]
    [InlineData("next.yaml --from this.yaml --tup-in 2030-08-09", "check the year")]
    [InlineData("this.yaml --from this.yaml --tup-in 2027-08-09 --overwrite", "this.yaml is last season's own file")]
    [InlineData("next.yaml --from this.yaml --tup-in 2027-08-09 --ewes 3", "leave out --ewes")]
    [InlineData("next.yaml --from gone.yaml --tup-in 2027-08-09", "cannot read gone.yaml")]
    public void What_cannot_be_is_said_and_nothing_is_written(string typed, string complaint)
    {
        using var bench = Bench();
        var begun = bench.Run(["begin", .. typed.Split(' ')]);
        Assert.Equal(ExitStatus.WrongUse, begun.Status);
        Assert.Contains(complaint, begun.Error, StringComparison.Ordinal);
        Assert.Equal(["this.yaml"], bench.Everything());
        Assert.Equal(Last, Text(bench, "this.yaml"));
    }

    /// <summary>Last season's file with this season's day: each mark is an error, and the way out is named.</summary>
    [Fact]
    public void Last_seasons_marks_under_this_seasons_tup_are_errors_that_name_the_way_out()
    {
        using var bench = Bench();
        bench.Write("old.yaml", Samples.TwoEwes.Replace("tup-in: 2026-08-10", "tup-in: 2027-08-09", StringComparison.Ordinal).Replace("    name: Sorrel", "    name: Sorrel\n    marks: [2026-08-14]", StringComparison.Ordinal));
        var check = bench.Run("check", "old.yaml", "--as-of", "2027-08-20");
        Assert.Equal(ExitStatus.FlockErrors, check.Status);
        Assert.Contains("error FLK057", check.Error, StringComparison.Ordinal);
        Assert.Contains("begin NEXT.yaml --from THIS.yaml", check.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_name_or_a_day_both_follow_from_last_season()
    {
        using var bench = Bench();
        Assert.Equal(ExitStatus.Clean, bench.Run("begin", "--from", "this.yaml", "--yes").Status);
        Assert.Equal(["this-2027.yaml", "this.yaml"], bench.Everything());
        Assert.Equal(new LocalDate(2027, 8, 9), Flock(bench, "this-2027.yaml").Season.TupIn);
    }

    [Fact]
    public void Last_season_stands_on_her_card_and_in_the_explanation()
    {
        using var bench = Bench();
        bench.Run("begin", "next.yaml", "--from", "this.yaml", "--tup-in", "2027-08-09");
        Assert.Contains("scanned 2, 1 born alive", bench.Run("explain", "next.yaml", "Bracken", "--as-of", "2027-08-01").Out, StringComparison.Ordinal);
    }

    private static Workbench Bench(string text = Last)
    {
        var bench = new Workbench { Now = Instant.FromUtc(2027, 6, 1, 9, 0) };
        bench.Write("this.yaml", text);
        return bench;
    }

    private static string Text(Workbench bench, string file) => File.ReadAllText(bench.PathOf(file));

    private static Flock Flock(Workbench bench, string file)
    {
        var reading = FlockReader.Read(file, Encoding.UTF8.GetBytes(Text(bench, file)));
        Assert.True(reading.Flock is not null, string.Join('\n', reading.Diagnostics));
        return reading.Flock;
    }
}
