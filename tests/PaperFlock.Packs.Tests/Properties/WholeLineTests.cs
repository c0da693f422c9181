using System.Globalization;
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
        EveryWeekOfTheFeedChartsAddsUp(plan, printed);
    }

    /// <summary>
    /// What the page says each ewe gets a day, times the ewes, is what the page says all get in its feeds; within what rounding to two places of a
    /// kilogram and to a tenth of the group's can hide. Held for charts in kilograms; pounds and ounces are the same figures in other clothes.
    /// </summary>
    private static void EveryWeekOfTheFeedChartsAddsUp(SeasonPlan plan, PrintedPack printed)
    {
        if (plan.Flock.Print.Units != UnitSystem.Metric)
        {
            return;
        }

        foreach (var group in plan.TroughGroups)
        {
            var code = $"FEED-{group.Number.ToString(CultureInfo.InvariantCulture)}";
            var amounts = printed.Sides.Where(s => s.Side.Sheet.Code == code)
                .SelectMany((s, i) => s.Page.Ink.Words.Where(w => w.Style.Face == Face.TextBold && IsKilograms(w.Text)).Select(w => (Side: i, Words: w)))
                .ToArray();
            var fed = group.Weeks.Where(w => w.KgPerDayForGroup > 0).ToArray();
            if (fed.Length == 0)
            {
                continue;
            }

            // The amounts for the whole group are the largest on the chart, as near as sizes can be read back; with many feeds a day one stands for all.
            var largest = amounts.Max(a => a.Words.Style.Size);
            var weeks = amounts.Where(a => a.Words.Style.Size > largest - 0.1).GroupBy(a => (a.Side, Math.Round(a.Words.Baseline))).ToArray();
            Assert.InRange(weeks.Length, 1, fed.Length);
            foreach (var (shown, week) in weeks.Zip(fed.TakeLast(weeks.Length)))
            {
                var meant = shown.Count() < week.FeedsPerDay ? week.KgPerFeedForGroup : week.KgPerDayForGroup;
                Assert.InRange(shown.Sum(w => Kilograms(w.Words.Text)), meant - (0.06m * week.FeedsPerDay), meant + (0.06m * week.FeedsPerDay));
            }
        }
    }

    private static bool IsKilograms(string text) => text.Replace('\u00a0', ' ').EndsWith(" kg", StringComparison.Ordinal);

    private static decimal Kilograms(string text) => decimal.Parse(text.Replace('\u00a0', ' ')[..^3].Replace(",", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);
}
