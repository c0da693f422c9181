using System.Text;
using System.Text.RegularExpressions;
using NodaTime;
using PaperFlock.Cli;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Flocks.Reading;
using PaperFlock.Packs.Tests.Cli;

namespace PaperFlock.Packs.Tests.Begin;

/// <summary>A first flock file, from nothing, as somebody who has never seen one makes it.</summary>
public sealed partial class BeginTests
{
    private const string All = "begin my.yaml --yes --name Rookhope --keeper Nell --place 54.46,-2.74 --time-zone Europe/London --tup-in 2026-11-05 --ewes 12 --paper A4";

    [Fact]
    public void Yes_alone_writes_a_file_that_check_and_pack_take_with_one_word_about_the_place()
    {
        using var bench = new Workbench();
        var begun = bench.Run("begin", "--yes");
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        Assert.Equal(["my-flock.yaml"], bench.Everything());
        Assert.Empty(begun.Error);
        Assert.Contains("wrote my-flock.yaml: 20 ewes, tup in Thu 5 Nov 2026, first lambs Thu 1 Apr 2027", begun.Out, StringComparison.Ordinal);
        Assert.EndsWith("Next: paperflock check my-flock.yaml, and then paperflock pack my-flock.yaml\n", begun.Out, StringComparison.Ordinal);

        var check = bench.Run("check", "my-flock.yaml");
        Assert.Equal(ExitStatus.Clean, check.Status);
        Assert.Contains("warning FLK164", check.Error, StringComparison.Ordinal);
        Assert.EndsWith("no errors, 1 warning\nNext: paperflock pack my-flock.yaml\n", check.Out, StringComparison.Ordinal);

        var pack = bench.Run("pack", "my-flock.yaml");
        Assert.True(pack.Status == ExitStatus.Clean, pack.Error);
        Assert.Contains("my-flock.pdf", bench.Everything());
    }

    /// <summary>Nobody said where the sheep are: no place is made up, since somebody may read it out on the telephone.</summary>
    [Fact]
    public void A_place_nobody_gave_is_left_out_of_the_file_and_is_a_blank_on_paper()
    {
        using var bench = new Workbench();
        Assert.Contains("nothing says where the sheep are", bench.Run("begin", "--yes").Out, StringComparison.Ordinal);
        Assert.Null(Flock(bench, "my-flock.yaml").Holding.Location);
        bench.Run("pack", "my-flock.yaml", "--sheets", "calls,log");
        var made = Assert.Single(bench.Everything(), f => f.EndsWith(".pdf", StringComparison.Ordinal));
        using var pdf = new PackPdf(bench.PathOf(made));
        var text = string.Concat(pdf.Texts);
        Assert.Matches("Latitude, longitude\\s*_{10}", text);
        Assert.DoesNotContain("sunrise", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("54.46", text, StringComparison.Ordinal);

        var day = bench.Run("explain", "my-flock.yaml", "2027-03-20", "--as-of", "2026-11-25");
        Assert.Contains("07:00 morning, 12:00 midday, 17:00 dusk and 22:00 late", day.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_can_be_said_by_options_and_stands_in_the_file()
    {
        using var bench = new Workbench();
        var begun = bench.Run(All.Split(' '));
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        Assert.DoesNotContain("?", begun.Out, StringComparison.Ordinal);
        var flock = Flock(bench, "my.yaml");
        Assert.Equal(("Rookhope", "Nell", 54.46m, -2.74m, "Europe/London"), (flock.Holding.Name, flock.Holding.Keeper, flock.Holding.Location!.Latitude, flock.Holding.Location.Longitude, flock.Holding.TimeZone.Id));
        Assert.Equal((new LocalDate(2026, 11, 5), new LocalDate(2026, 12, 17)), (flock.Season.TupIn, flock.Season.TupOut));
        Assert.Equal((12, Paper.A4), (flock.Ewes.Length, flock.Print.Paper));
    }

    /// <summary>Eight answers, one a line, some of them only Enter.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Answers_come_from_a_keyboard_or_a_pipe(bool keyboard)
    {
        using var bench = new Workbench { AtAKeyboard = keyboard, Answers = "Hollin Bank\n\nNY 480 046\n\nlambs 4 January 2027\n24\n\n" };
        var begun = bench.Run("begin");
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        Assert.Equal(["hollin-bank.yaml"], bench.Everything());
        var flock = Flock(bench, "hollin-bank.yaml");
        Assert.Null(flock.Holding.Keeper);
        Assert.Equal("NY 480 046", flock.Holding.GridReference);
        Assert.Equal("Europe/London", flock.Holding.TimeZone.Id);
        // 147 days before 4 January 2027, counted on a calendar.
        Assert.Equal(new LocalDate(2026, 8, 10), flock.Season.TupIn);
        Assert.Equal(24, flock.Ewes.Length);
        Assert.Contains("[Europe/London] > ", begun.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_answer_at_a_keyboard_is_asked_again_with_the_reason()
    {
        using var bench = new Workbench { AtAKeyboard = true, Answers = "\n\nsomewhere\nNY 480 046\n\n5/11/2026\n31/12/2026\n0\nnone\n7\nA5\nletter\n" };
        var begun = bench.Run("begin");
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        Assert.Contains("'somewhere' is no place", begun.Out, StringComparison.Ordinal);
        Assert.Contains("`5/11/2026` may be Thu 5 Nov 2026 or Mon 11 May 2026; write `2026-11-05` or `2026-05-11`", begun.Out, StringComparison.Ordinal);
        Assert.Contains("'none' is neither a number of ewes", begun.Out, StringComparison.Ordinal);
        Assert.Contains("no paper 'A5'", begun.Out, StringComparison.Ordinal);
        var flock = Flock(bench, "my-flock.yaml");
        Assert.Equal((7, Paper.Letter, new LocalDate(2026, 12, 31)), (flock.Ewes.Length, flock.Print.Paper, flock.Season.TupIn));
    }

    /// <summary>Asked again, a pipe would give the answer to another question.</summary>
    [Fact]
    public void A_wrong_answer_in_a_pipe_ends_it_with_nothing_written()
    {
        using var bench = new Workbench { Answers = "\n\nsomewhere\nNY 480 046\n" };
        var begun = bench.Run("begin");
        Assert.Equal(ExitStatus.WrongUse, begun.Status);
        Assert.Contains("--place: 'somewhere' is no place", begun.Error, StringComparison.Ordinal);
        Assert.Empty(bench.Everything());
    }

    [Fact]
    public void Answers_that_end_too_soon_write_nothing_and_name_the_way_out()
    {
        using var bench = new Workbench { Answers = "Hollin Bank\n" };
        var begun = bench.Run("begin");
        Assert.Equal(ExitStatus.WrongUse, begun.Status);
        Assert.Contains("the answers end before the question of --keeper: nothing was written; --yes", begun.Error, StringComparison.Ordinal);
        Assert.Empty(bench.Everything());
    }

    [Fact]
    public void What_an_option_answers_is_not_asked()
    {
        using var bench = new Workbench { Answers = "\n\n\n" };
        var begun = bench.Run("begin", "--name", "Rookhope", "--place", "-43.86,171.72", "--ewes", "5", "--tup-in", "2027-03-31");
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        Assert.DoesNotContain("Where are the sheep", begun.Out, StringComparison.Ordinal);
        Assert.Equal("Pacific/Auckland", Flock(bench, "rookhope.yaml").Holding.TimeZone.Id);
    }

    [Fact]
    public void Every_wrong_option_is_named_at_once_and_nothing_is_asked()
    {
        using var bench = new Workbench { Answers = "\n\n\n\n\n\n\n\n" };
        var begun = bench.Run("begin", "--place", "foo", "--time-zone", "Moon", "--ewes", "many", "--tup-in", "5/6/26", "--lambing-from", "2027-02-30", "--paper", "A5", "--name", new string('x', 41));
        Assert.Equal(ExitStatus.WrongUse, begun.Status);
        Assert.Equal("", begun.Out);
        string[] complaints =
        [
            "--name: `name` has 41 characters, and its place on the paper holds 40", "--place: 'foo'", "--time-zone: 'Moon'", "--ewes: 'many'", "--paper: there is no paper 'A5'",
            "--lambing-from: '2027-02-30' is no date", "two ways of stating the same date",
        ];
        Assert.All(complaints, c => Assert.Contains(c, begun.Error, StringComparison.Ordinal));
        Assert.All(begun.Error.TrimEnd('\n').Split('\n'), l => Assert.StartsWith("paperflock: ", l, StringComparison.Ordinal));
        Assert.Empty(bench.Everything());
    }

    [Theory]
    [InlineData("", "--name", "H", "the name of the file is empty")]
    [InlineData("  ", "--name", "H", "the name of the file is empty")]
    [InlineData("x", "--name", "", "--name: `name` is empty")]
    [InlineData("x", "--keeper", " ", "--keeper: `keeper` is empty")]
    [InlineData("x", "--place", "0,0", "--place: at latitude 0, longitude 0 there is only sea")]
    [InlineData("x", "--name", "丘 Bank", "--name: `丘` (U+4E18) is in none of the typefaces")]
    public void What_the_reader_would_refuse_is_refused_before_a_file_is_written(string file, string option, string value, string complaint)
    {
        using var bench = new Workbench();
        var begun = bench.Run("begin", file, "--yes", "--tup-in", "2026-08-10", option, value);
        Assert.Equal(ExitStatus.WrongUse, begun.Status);
        Assert.Contains(complaint, begun.Error, StringComparison.Ordinal);
        Assert.Empty(bench.Everything());
    }

    [Fact]
    public void A_file_that_is_there_stays_as_it_is_until_told_otherwise()
    {
        using var bench = new Workbench();
        bench.Write("my.yaml", "mine");
        var refused = bench.Run(All.Split(' '));
        Assert.Equal(ExitStatus.WrongUse, refused.Status);
        Assert.Contains("my.yaml is there already, and nothing was written: give another name, or --overwrite", refused.Error, StringComparison.Ordinal);
        Assert.Equal("mine", Text(bench, "my.yaml"));

        Assert.Equal(ExitStatus.Clean, bench.Run([.. All.Split(' '), "--overwrite"]).Status);
        Assert.StartsWith("# The flock file of Rookhope", Text(bench, "my.yaml"), StringComparison.Ordinal);
        Assert.Equal(["my.yaml"], bench.Everything());
    }

    [Theory]
    [InlineData("no\n", ExitStatus.WrongUse)]
    [InlineData("\n", ExitStatus.WrongUse)]
    [InlineData("yes\n", ExitStatus.Clean)]
    public void At_a_keyboard_one_is_asked_before_a_file_is_written_over(string answer, int status)
    {
        using var bench = new Workbench { AtAKeyboard = true, Answers = answer + "\n\n\n\n\n\n\n\n" };
        bench.Write("my.yaml", "mine");
        Assert.Equal(status, bench.Run("begin", "my.yaml").Status);
        Assert.Equal(status != ExitStatus.Clean, Text(bench, "my.yaml") == "mine");
    }

    [Theory]
    [InlineData("flock", "flock.yaml")]
    [InlineData("flock.yml", "flock.yml")]
    [InlineData("new/place/flock.yaml", "new/place/flock.yaml")]
    public void A_name_without_an_ending_gets_one(string typed, string file)
    {
        using var bench = new Workbench();
        bench.Run("begin", typed, "--yes");
        Assert.Contains(file, bench.Everything());
    }

    [Fact]
    public void A_list_is_not_taken_for_the_file_to_write()
    {
        using var bench = new Workbench();
        bench.Write("ewes.csv", "tag\n");
        var begun = bench.Run("begin", "ewes.csv", "--yes", "--overwrite");
        Assert.Contains("begin --ewes ewes.csv", begun.Error, StringComparison.Ordinal);
        Assert.Equal("tag\n", Text(bench, "ewes.csv"));
    }

    /// <summary>In the south the year is turned round; the tup of a past autumn whose ewes are already fed for lambing is not planned any more.</summary>
    [Theory]
    [InlineData("2026-06-01", "54.46,-2.74", "2026-11-05")]
    [InlineData("2026-11-25", "54.46,-2.74", "2026-11-05")]
    [InlineData("2027-02-11", "54.46,-2.74", "2026-11-05")]
    [InlineData("2027-02-12", "54.46,-2.74", "2027-11-05")]
    [InlineData("2026-11-25", "-43.86,171.72", "2027-04-05")]
    [InlineData("2027-07-12", "-43.86,171.72", "2027-04-05")]
    [InlineData("2027-07-13", "-43.86,171.72", "2028-04-05")]
    public void The_usual_day_goes_by_the_hemisphere_and_by_what_can_still_be_planned(string today, string place, string tupIn)
    {
        using var bench = new Workbench();
        bench.Run("begin", "f", "--yes", "--place", place, "--as-of", today);
        var check = bench.Run("check", "f.yaml", "--as-of", today);
        Assert.Equal((ExitStatus.Clean, ""), (check.Status, check.Error));
        Assert.Equal(tupIn, NodaTime.Text.LocalDatePattern.Iso.Format(Flock(bench, "f.yaml").Season.TupIn));
    }

    [Theory]
    [InlineData("54.46,-2.74", Paper.A4, PlannerPaper.A4, Binding.TwoHole)]
    [InlineData("44.26,-72.58", Paper.Letter, PlannerPaper.Letter, Binding.ThreeHole)]
    public void The_paper_is_the_usual_one_of_the_country(string place, Paper paper, PlannerPaper planner, Binding binding)
    {
        using var bench = new Workbench();
        bench.Run("begin", "f", "--yes", "--place", place);
        var print = Flock(bench, "f.yaml").Print;
        Assert.Equal((paper, planner, binding), (print.Paper, print.Planner, print.Binding));
    }

    /// <summary>The tag of a ewe nobody has named must not be taken for one on an ear, must fit, and must tell her from the others.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(99)]
    [InlineData(250)]
    public void Ewes_without_tags_have_a_line_to_write_on_and_a_number(int count)
    {
        using var bench = new Workbench();
        bench.Run("begin", "f", "--yes", "--ewes", $"{count}");
        var tags = Flock(bench, "f.yaml").Ewes.Select(e => e.Tag).ToArray();
        Assert.Equal(count, tags.Distinct(StringComparer.Ordinal).Count());
        Assert.All(tags, t => Assert.Matches("^_{8,} [0-9]{2,3}$", t));
    }

    /// <summary>Each line behind a hash that is one of the format, freed: alone with what it stands under, and all together.</summary>
    [Theory]
    [InlineData("--tup-in 2026-11-05 --place 54.46,-2.74")]
    [InlineData("--lambing-from 2027-08-25 --place -43.86,171.72 --keeper Moana --paper Letter")]
    public void Every_hint_is_right_when_its_hash_is_taken_away(string options)
    {
        using var bench = new Workbench();
        bench.Run(["begin", "f", "--yes", .. options.Split(' ')]);
        var lines = Text(bench, "f.yaml").Split('\n');
        var hints = Enumerable.Range(0, lines.Length).Where(i => Hint().IsMatch(lines[i])).ToArray();
        Assert.InRange(hints.Length, 30, 60);
        foreach (var i in hints)
        {
            lines[i] = Hint().Replace(lines[i], "$1$2");
        }

        var freed = FlockReader.Read("f.yaml", Encoding.UTF8.GetBytes(string.Join('\n', lines)));
        Assert.Equal("", DiagnosticRenderer.Render(freed.Source, freed.Diagnostics));
        var flock = freed.Flock!;
        Assert.Equal(3, flock.Holding.Contacts.Length);
        Assert.Equal(2, flock.OwnJobs.Length);
        Assert.Equal(2, flock.Ewes[0].Scan);
        Assert.Single(flock.Housing.Pens);
        Assert.Single(flock.KeeperDays.Away);
    }

    [Theory]
    [InlineData("Moss: The Wet End")]
    [InlineData("'Tween Becks")]
    [InlineData("# 7")]
    [InlineData("- dash")]
    [InlineData("Tŷ Newydd & Sons")]
    [InlineData("no")]
    [InlineData("12")]
    [InlineData("[x]")]
    [InlineData("\"quoted\"")]
    public void A_name_stays_as_it_was_typed(string name)
    {
        using var bench = new Workbench();
        var begun = bench.Run("begin", "f", "--yes", "--name", name);
        Assert.True(begun.Status == ExitStatus.Clean, begun.Error);
        Assert.Equal(name, Flock(bench, "f.yaml").Holding.Name);
    }

    [Fact]
    public void The_schema_is_printed_as_the_samples_have_it_beside_them()
    {
        using var bench = new Workbench();
        var printed = bench.Run("schema");
        Assert.Equal((ExitStatus.Clean, ""), (printed.Status, printed.Error));
        Assert.Equal(File.ReadAllText(Path.Combine(Samples.Root, "flocks", "flock.schema.json")), printed.Out);
        Assert.Contains("schema wants no file", bench.Run("schema", "flock.yaml").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Stopping_at_a_question_writes_nothing()
    {
        using var bench = new Workbench { Answers = "\n\n" };
        bench.Stop();
        var begun = bench.Run("begin");
        Assert.Equal(ExitStatus.Stopped, begun.Status);
        Assert.Empty(bench.Everything());
    }

    private static string Text(Workbench bench, string file = "my-flock.yaml") => File.ReadAllText(bench.PathOf(file));

    private static Flock Flock(Workbench bench, string file)
    {
        var reading = FlockReader.Read(file, File.ReadAllBytes(bench.PathOf(file)));
        // That nobody gave a place is warned of, and right.
        Assert.Equal("", DiagnosticRenderer.Render(reading.Source, [.. reading.Diagnostics.Where(d => d.Code != "FLK164")]));
        return reading.Flock!;
    }

    [GeneratedRegex("^( *)# ( *(?:- )?(?:[a-z-]+:(?: .*)?|\\{.*)|  *- \\{.*)$")]
    private static partial Regex Hint();
}
