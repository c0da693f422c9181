using System.Text.RegularExpressions;
using CsCheck;
using NodaTime;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Flocks.Reading;
using PaperFlock.Packs.Tests.Cli;
using PaperFlock.Planning;

namespace PaperFlock.Packs.Tests.Entering;

/// <summary>The sheet in one hand and the questions on the screen go down the flock together.</summary>
public sealed partial class OrderTests
{
    /// <summary>The command, and the name of its sheet.</summary>
    [Theory]
    [InlineData("scan", "scan")]
    [InlineData("marks", "raddle")]
    [InlineData("teeth-toes-teats", "before-tup")]
    [InlineData("lambed", "due")]
    public void The_ewes_are_asked_for_in_the_order_they_are_printed_in(string command, string sheet) =>
        Gen.Int[0, int.MaxValue].Sample(
            seed =>
            {
                using var bench = new Workbench { Answers = string.Concat(Enumerable.Repeat("<\n", 30)) + string.Concat(Enumerable.Repeat("\n", 30)) };
                bench.Write(FourEwes.File, RandomFlock(seed));
                var asked = bench.Run("enter", command, FourEwes.File, "--as-of", "2027-01-31");
                var printed = bench.Run("pack", FourEwes.File, "--sheets", sheet, "--as-of", "2027-01-31");
                Assert.Equal("", asked.Error);
                Assert.Equal(0, printed.Status);
                using var pdf = new PackPdf(Assert.Single(Directory.GetFiles(bench.Folder, "*.pdf")));
                var tags = Tag().Matches(pdf.Text).Select(m => m.Value).ToList();
                Assert.NotEmpty(tags);
                // It begins at the first without an answer; from there to the top, and then down.
                var questions = Asked().Matches(asked.Out).Select(m => (At: int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture), Tag: m.Groups[2].Value));
                Assert.Equal(tags, questions.Distinct().OrderBy(q => q.At).Select(q => q.Tag));
            },
            iter: 4,
            threads: 1);

    /// <summary>A sheet printed before lambing is read from for weeks: who has lambed keeps her place on it.</summary>
    [Fact]
    public void Entering_results_does_not_change_the_order_of_their_sheet() =>
        Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[0, 500]).Sample(
            (seed, pick) =>
            {
                var flock = Read(RandomFlock(seed));
                var day = new LocalDate(2026, 12, 20);
                Assert.Equal(Tags(PencilLists.WhoLambsWhen(SeasonPlanner.Plan(flock, day)).Select(row => row.Ewe)), Tags(PencilLists.WhoLambsWhen(SeasonPlanner.Plan(With(e => e with { Lambed = new(2027, 1, 15) }), day)).Select(row => row.Ewe)));
                Assert.Equal(Tags(PencilLists.ScanDay(SeasonPlanner.Plan(flock, day))), Tags(PencilLists.ScanDay(SeasonPlanner.Plan(With(e => e with { Scan = pick % 5 }), day))));

                Flock With(Func<Ewe, Ewe> change)
                {
                    var carrying = SeasonPlanner.Plan(flock, day).Ewes.Select((e, i) => (e, i)).Where(e => e.e.IsCarrying).Select(e => e.i).ToList();
                    var at = carrying[pick % carrying.Count];
                    return flock with { Ewes = flock.Ewes.SetItem(at, change(flock.Ewes[at])) };
                }
            },
            iter: 40,
            threads: 2);

    private static string[] Tags(IEnumerable<EwePlan> ewes) => [.. ewes.Select(e => e.Ewe.Tag)];

    /// <summary>Two groups mixed in the file, tags out of order, some kept back, some empty, some that have lambed.</summary>
    private static string RandomFlock(int seed)
    {
        var random = new Random(seed);
        var numbers = Enumerable.Range(1, random.Next(3, 25)).ToArray();
        random.Shuffle(numbers);
        var ewes = numbers.Select((n, i) =>
        {
            var group = i == 0 ? "A" : Any("A", "B");
            var state = i == 0 ? "marks: [2026-08-20]" : Any(
                "", "scan: 0", "to-tup: no", "teats: lost-half", "scan: 2", "scan: 1, scan-stage: late", "marks: [2026-08-21], scan: 3", "marks: [2026-08-22, 2026-09-08]",
                "scan: 2, lambed: 2027-01-20", "marks: [2026-09-01], lambed: 2027-01-28");
            return string.Create(CultureInfo.InvariantCulture, $"  - {{tag: ZZ 0123456 {n:00000}, group: {group}{(random.Next(3) > 0 ? $", name: Ewe {n}" : "")}{(state.Length > 0 ? ", " + state : "")}}}\n");
        });
        return $"paperflock: 1\nholding: {{name: Hollin Bank, location: {{latitude: 54.46, longitude: -2.74}}, time-zone: Europe/London}}\nprint: {{units: {Any("metric", "both")}, gloves: {Any("true", "false")}}}\nseason: {{tup-in: 2026-08-10}}\ngroups:\n  - {{name: B, tup-in: 2026-08-17}}\n  - {{name: A}}\newes:\n{string.Concat(ewes)}";

        string Any(params string[] of) => of[random.Next(of.Length)];
    }

    private static Flock Read(string text)
    {
        var reading = FlockReader.Read(new SourceText("flock.yaml", text));
        Assert.Equal("", DiagnosticRenderer.Render(reading.Source, [.. reading.Diagnostics.Where(d => d.Severity == Severity.Error)]));
        return reading.Flock!;
    }

    [GeneratedRegex("ZZ 0123456 [0-9]{5}")]
    private static partial Regex Tag();

    [GeneratedRegex("^row ([0-9]+) of [0-9]+  .*?  (ZZ 0123456 [0-9]{5})  ", RegexOptions.Multiline)]
    private static partial Regex Asked();
}
