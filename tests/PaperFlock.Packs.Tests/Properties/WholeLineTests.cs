using System.Globalization;
using CsCheck;
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
    public void Any_flock_comes_to_paper_that_keeps_the_rules_and_adds_up() => AnyFlock.Drawn.Sample(
        drawn =>
        {
            var (plan, pack) = drawn.Flock.On(drawn.AsOf);
            PlanParts.Agree(plan);
            var printed = PrintedPack.Of(plan, pack);
            var broken = PdfRules.Broken(printed).RemoveAll(IsATailInALowRow);
            Assert.True(broken.IsEmpty, PaperCheck.Summary(broken));
            EveryWeekOfTheFeedChartsAddsUp(plan, printed);
        },
        iter: AnyFlock.Cases(4), threads: 2);

    /// <summary>
    /// The rows of a long season on a small planner are as low as their capitals allow, and the tail of a g may touch the line below. It is read all the
    /// same; that no row is so low on the planners of the sample packs is held there.
    /// </summary>
    private static bool IsATailInALowRow(BrokenRule broken) => broken is { Sheet: "planner", Rule: "No outline of a letter touches a line" };

    /// <summary>
    /// What the page says each ewe gets a day, times the ewes, is what the page says all get in its feeds; within what rounding to two places of a
    /// kilogram and to a tenth of the group's can hide. Held for charts in kilograms; pounds and ounces are the same figures in other clothes.
    /// </summary>
    private static void EveryWeekOfTheFeedChartsAddsUp(SeasonPlan plan, PrintedPack printed)
    {
        if (plan.Flock.Print.Units != Flocks.Units.Metric)
        {
            return;
        }

        foreach (var (group, side) in plan.TroughGroups.Select(g => (g, printed.Sides.First(s => s.Side.Sheet.Code == $"FEED-{g.Number.ToString(CultureInfo.InvariantCulture)}"))))
        {
            var large = side.Page.Ink.Words.Where(w => w.Style.Face == Face.TextBold && w.Style.Size > 18 && IsKilograms(w.Text)).ToArray();
            foreach (var week in large.GroupBy(w => Math.Round(w.Baseline)))
            {
                var all = week.Sum(w => Kilograms(w.Text));
                Assert.Contains(group.Weeks, w => Math.Abs(w.KgPerDayForGroup - all) <= 0.06m * w.FeedsPerDay);
            }

            Assert.True(large.Length > 0 || group.Weeks.All(w => w.KgPerEwePerDay == 0), $"{side.Label} names no amounts");
        }
    }

    private static bool IsKilograms(string text) => text.Replace('\u00a0', ' ').EndsWith(" kg", StringComparison.Ordinal);

    private static decimal Kilograms(string text) => decimal.Parse(text.Replace('\u00a0', ' ')[..^3].Replace(",", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);
}
