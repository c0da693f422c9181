using System.Text.RegularExpressions;
using PaperFlock.Diagnostics;
using PaperFlock.Planning;

namespace PaperFlock.Sheets.Tests.Text;

/// <summary>Advice of the plan never leads in a circle: where it says in so many letters what to type, or to leave out, doing just that makes the warning go away.</summary>
public sealed partial class PlanAdviceTests
{
    /// <summary>What causes each, in the file: keys of the first ewe, and of `feeds`.</summary>
    public static TheoryData<string, string, string> Causes => new()
    {
        { "FLK101", "teats: lumpy", "" },
        { "FLK101", "teats: lumpy\n    marks: [2026-08-14]", "" },
        { "FLK101", "teats: lumpy\n    marks: [2026-08-14]\n    scan: 2", "" },
        { "FLK122", "", "per-lamb: 0.05 kg\n  forage: {energy: 7 MJ/kg}" },
        { "FLK124", "", "method: per-lamb\n  per-lamb: 0.9 kg" },
        { "FLK122", "", "method: per-lamb\n  per-lamb: 0.05 kg\n  forage: {energy: 7 MJ/kg}" },
        { "FLK125", "", "method: per-lamb\n  per-lamb: 0.05 kg\n  forage: {energy: 7 MJ/kg}" },
        { "FLK127", "", "per-lamb: 1 kg" },
        { "FLK131", "", "largest-feed: 1 kg" },
        { "FLK135", "", "parted: no" },
        { "FLK136", "", "scales: no\n  concentrate: {scoop: 3 kg}" },
        { "FLK137", "", "scales: no\n  concentrate: {scoop: 0.8 kg}" },
        { "FLK139", "", "method: per-lamb\n  per-lamb: 0.6 kg" },
    };

    [Theory]
    [MemberData(nameof(Causes))]
    public void What_the_advice_says_to_type_makes_the_warning_go_away(string code, string ewe, string feeds)
    {
        var text = Flock(ewe, feeds);
        var found = Of(text).Where(w => w.Code == code).ToList();
        Assert.NotEmpty(found);
        var ways = Ways(found[0].Advice).ToList();
        Assert.NotEmpty(ways);
        Assert.All(ways, way => Assert.DoesNotContain(Of(way.Aggregate(text, Done)), w => w.Code == code));
    }

    /// <summary>Where no figure of the keeper's holds her ration down, none is to be raised.</summary>
    [Fact]
    public void What_is_not_in_the_file_is_not_to_blame() => Assert.DoesNotContain(Of(Flock("", "largest-feed: 0.1 kg")), w => w.Code is "FLK122" or "FLK125");

    /// <summary>A warning that comes to have such advice is tried too.</summary>
    [Fact]
    public void All_with_such_advice_are_tried()
    {
        var flock = Composed.HollinBank.Plan.Flock;
        var rations = Enum.GetValues<FeedWarningKind>().Select(kind => WarningText.Of(new FeedWarning(kind, default, "FEED-1", [], 1, 1), flock)).Where(w => Ways(w.Advice).Any()).Select(w => w.Code);
        Assert.Equal(Causes.Select(row => row.Data.Item1).Distinct().Where(code => string.CompareOrdinal(code, "FLK120") > 0), rations.Order(StringComparer.Ordinal));
    }

    /// <summary>Each way that the advice shows: the keys to type, or those to leave out, with nothing behind them.</summary>
    private static IEnumerable<(string Key, string Value)[]> Ways(string advice) =>
        ToLeaveOut().Match(advice) is { Success: true } keys
            ? [keys.Groups.Values.Skip(1).Select(key => (key.Value, "")).ToArray()]
            : ToType().Matches(advice).Select(m => new[] { (m.Groups[1].Value, m.Groups[2].Value) });

    private static string Done(string text, (string Key, string Value) way)
    {
        var lines = text.Split('\n').ToList();
        var at = lines.FindIndex(l => l.TrimStart().StartsWith(way.Key + ":", StringComparison.Ordinal));
        // Where the key is not there yet it goes to the ewe, if it is one of hers.
        var (place, indent) = at >= 0 ? (at, lines[at][..^lines[at].TrimStart().Length]) : way.Key == "to-tup" ? (lines.FindIndex(l => l.Contains("name: Bracken", StringComparison.Ordinal)) + 1, "    ") : (lines.IndexOf("feeds:") + 1, "  ");
        if (at >= 0)
        {
            lines.RemoveAt(at);
        }

        if (way.Value.Length > 0)
        {
            lines.Insert(place, $"{indent}{way.Key}: {way.Value}");
        }

        return string.Join('\n', lines);
    }

    private static IEnumerable<Diagnostic> Of(string text) => WarningText.Of(Composed.PlanOf(text, new(2026, 11, 25)));

    private static string Flock(string ewe, string feeds) =>
        $$"""
        paperflock: 1
        holding:
          name: Hollin Bank
          location: {latitude: 54.46, longitude: -2.74}
          time-zone: Europe/London
        season:
          tup-in: 2026-08-10
        ewes:
          - tag: ZZ 0123456 00101
            name: Bracken
            {{(ewe.Length > 0 ? ewe : "marks: [2026-08-14]\n    scan: 2")}}
            weight: 72 kg
          - {tag: ZZ 0123456 00102, weight: 72 kg, marks: [2026-08-15], scan: 2}
          - {tag: ZZ 0123456 00103, weight: 72 kg, marks: [2026-08-15], scan: 1}
          - {tag: ZZ 0123456 00104, weight: 72 kg, marks: [2026-08-15], scan: 1}
          - {tag: ZZ 0123456 00105, weight: 72 kg, marks: [2026-08-15], scan: 1}
        feeds:
          {{(feeds.Length > 0 ? feeds : "scales: yes")}}

        """;

    [GeneratedRegex("`([a-z-]+): ([^`]+)`")]
    private static partial Regex ToType();

    [GeneratedRegex("leave out `([a-z-]+)` and `([a-z-]+)`")]
    private static partial Regex ToLeaveOut();
}
