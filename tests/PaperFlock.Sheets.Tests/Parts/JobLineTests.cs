using PaperFlock.Planning;
using PaperFlock.Sheets.Jobs;

namespace PaperFlock.Sheets.Tests.Parts;

public sealed class JobLineTests
{
    /// <summary>Two ewes due a month after the others have a booster of their own; a line that named hundreds would not fit a page.</summary>
    [Theory]
    [InlineData(3, "Ewe 0 · Ewe 1 · Ewe 2")]
    [InlineData(61, "61 ewes")]
    public void A_batch_is_named_and_a_large_one_counted(int early, string names)
    {
        var ewes = Enumerable.Range(0, early + 2).Select(i => $"  - {{tag: ZZ 0123456 {i:00000}, name: Ewe {i}, marks: [{(i < early ? "2026-08-14" : "2026-09-14")}]}}");
        var plan = Composed.PlanOf(
            $"paperflock: 1\nholding: {{name: Hollin Bank, location: {{latitude: 54.46, longitude: -2.74}}, time-zone: Europe/London}}\nseason: {{tup-in: 2026-08-10, tup-out: 2026-09-21}}\newes:\n{string.Join('\n', ewes)}\n",
            new(2026, 11, 1));
        Assert.Equal([names, $"Ewe {early} · Ewe {early + 1}"], JobLine.Of(plan, plan.Jobs).Where(l => l.Job.Kind == JobKind.Booster).Select(l => l.Names));
    }
}
