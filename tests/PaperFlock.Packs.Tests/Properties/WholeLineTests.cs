using PaperFlock.Flocks;
using PaperFlock.Layout;
using PaperFlock.Packs.Tests.PaperRules;
using PaperFlock.Planning;
using PaperFlock.Planning.Tests;
using PaperFlock.Sheets.Tests.PaperRules;
using PaperFlock.Sheets.Tests.Properties;

namespace PaperFlock.Packs.Tests.Properties;

/// <summary>Any flock file, all the way to the finished PDF, read back by another library. Few of them here: a pack is a hundred pages.</summary>
public sealed class WholeLineTests
{
    [Fact]
    public void Any_flock_comes_to_paper_that_keeps_the_rules_and_adds_up() => AnyFlock.Each(few: 4, Keeps);

    /// <summary>Letters that touched lines: on a feed chart, on planners of one sheet and of tiles, at the foot of a page of the log, at the mark of a cut.</summary>
    [Theory]
    [InlineData(10)]
    [InlineData(24)]
    [InlineData(30)]
    [InlineData(314)]
    [InlineData(329)]
    [InlineData(379)]
    public void Flocks_on_whose_paper_something_touched_keep_the_rules(int number) => AnyFlock.One(number, Keeps);

    private static void Keeps(DrawnFlock drawn)
    {
        var (plan, pack) = drawn.Flock.On(drawn.AsOf);
        PlanParts.Agree(plan);
        var printed = PrintedPack.Of(plan, pack);
        var broken = PdfRules.Broken(printed);
        Assert.True(broken.IsEmpty, PaperCheck.Summary(broken));
        EveryCellOfTheFeedChartsIsThePlans(plan, printed);
    }

    /// <summary>Every cell of a feed chart, read back from the page row by row, is the plan's amount for so many heads. Held for charts in kilograms; pounds are
    /// the same amounts in other clothes.</summary>
    private static void EveryCellOfTheFeedChartsIsThePlans(SeasonPlan plan, PrintedPack printed)
    {
        if (plan.Flock.Print.Units != UnitSystem.Metric)
        {
            return;
        }

        foreach (var chart in plan.Feeding.Charts.Where(c => c is { IsForageOnly: false, MostHeads: <= 12 }))
        {
            var lines = printed.Sides.Where(s => s.Side.Sheet.Code == chart.Code)
                .SelectMany((s, i) => s.Page.Ink.Words.Where(w => w.Style.Face == Face.Text && decimal.TryParse(w.Text, CultureInfo.InvariantCulture, out _)).Select(w => (Side: i, Words: w)))
                .GroupBy(a => (a.Side, Math.Round(a.Words.Baseline)))
                .Select(line => line.OrderBy(a => a.Words.Core.Left).Select(a => decimal.Parse(a.Words.Text, CultureInfo.InvariantCulture)).ToArray())
                .ToArray();
            var rows = chart.Rows.Where((r, i) => !r.FedAt.IsEmpty && (i == 0 || chart.Rows[i - 1].KgPerEwePerDay != r.KgPerEwePerDay || chart.Rows[i - 1].FedAt.Length != r.FedAt.Length)).TakeLast(lines.Length).ToArray();
            Assert.Equal(rows.Length, lines.Length);
            Assert.All(rows.Zip(lines), r => Assert.Equal(r.First.KgPerFeedByHeads.Reverse(), r.Second));
        }
    }
}
