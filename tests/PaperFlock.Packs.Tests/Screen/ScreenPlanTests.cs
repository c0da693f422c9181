using System.Text.Json.Nodes;
using PaperFlock.Packs.Screen;
using PaperFlock.Planning;

namespace PaperFlock.Packs.Tests.Screen;

/// <summary>What a screen shows of a plan. Hollin Bank's days are counted by hand from its file.</summary>
public sealed class ScreenPlanTests
{
    private static readonly SeasonPlan Plan = new OpenFlock(File.ReadAllText(Samples.HollinBank), "hollin-bank.yaml", "2026-11-25").Plan;

    private static readonly JsonObject Shown = ScreenPlan.Of(Plan);

    /// <summary>Marked on 14 August, and a Ryeland carries for 147 days.</summary>
    [Fact]
    public void A_ewe_is_due_147_days_after_her_mark()
    {
        var bracken = Shown["due"]!.AsArray().Single(d => d!["called"]!.GetValue<string>() == "Bracken")!;
        Assert.Equal("Fri 8 Jan 2027", bracken["likely"]!.GetValue<string>());
        Assert.Equal(2, bracken["lambs"]!.GetValue<int>());
        Assert.Equal(0, bracken["ewe"]!.GetValue<int>());
    }

    [Fact]
    public void Weeks_begin_with_this_one_and_hold_each_job_to_come_once()
    {
        var weeks = Shown["weeks"]!.AsArray();
        Assert.Equal("Mon 23 Nov 2026", weeks[0]!["from"]!.GetValue<string>());
        var listed = weeks.SelectMany(w => w!["jobs"]!.AsArray()).Select(j => j!.GetValue<int>()).ToList();
        Assert.Equal(listed.Count, listed.Distinct().Count());
        Assert.All(Enumerable.Range(0, Plan.Jobs.Length).Except(listed), i => Assert.True(Shown["jobs"]![i]!["past"]!.GetValue<bool>()));
    }

    [Fact]
    public void Every_job_says_why()
    {
        foreach (var (job, i) in Plan.Jobs.Select((job, i) => (job, i)))
        {
            var why = ScreenPlan.WhyJob(Plan, i);
            Assert.StartsWith(Shown["jobs"]![i]!["title"]!.GetValue<string>(), why["title"]!.GetValue<string>(), StringComparison.Ordinal);
            Assert.NotEmpty(why["lines"]!.AsArray());
        }
    }

    [Fact]
    public void A_ewe_says_on_what_evidence_she_is_due()
    {
        var why = ScreenPlan.WhyEwe(Plan, 0);
        Assert.Contains("Bracken", why["title"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Contains(why["lines"]!.AsArray(), l => l!["text"]!.GetValue<string>().Contains("Fri 14 Aug 2026", StringComparison.Ordinal));
    }

    /// <summary>`explain` says the same ration another way.</summary>
    [Fact]
    public void Feed_is_what_each_ewe_is_told_to_get()
    {
        var feed = Shown["feed"]!.AsArray();
        Assert.Equal(Plan.Feeding.Charts.Select(c => c.Code), feed.Select(f => f!["code"]!.GetValue<string>()));
        foreach (var (chart, i) in feed.Select((chart, i) => (chart!, i)))
        {
            var ewe = Enumerable.Range(0, Plan.Ewes.Length).First(e => Plan.Ewes[e].Ewe.Tag == Plan.Feeding.Charts[i].Ewes[0].Ewe.Tag);
            var explained = string.Join('\n', ScreenPlan.WhyEwe(Plan, ewe)["lines"]!.AsArray().Select(l => l!["text"]!.GetValue<string>()));
            Assert.All(chart["steps"]!.AsArray(), s => Assert.Matches($"{s!["from"]}, [^\n]*: {s["each"]} a day", explained));
        }
    }

    [Fact]
    public void Stores_say_what_to_buy_and_why()
    {
        var nuts = Shown["stores"]!.AsArray().Single(s => s!["item"]!.GetValue<string>() == "Ewe nuts")!;
        Assert.EndsWith(" bags", nuts["buy"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.True(nuts["overdue"]!.GetValue<bool>());
        Assert.NotEqual("", nuts["basis"]!.GetValue<string>());
    }

    [Fact]
    public void A_flock_with_mistakes_has_no_plan()
    {
        var trouble = Assert.Throws<PackRequestException>(() => new OpenFlock(Samples.BadDate, "bad.yaml", "2026-11-25").Plan);
        Assert.StartsWith("there are mistakes", trouble.Message, StringComparison.Ordinal);
    }
}
