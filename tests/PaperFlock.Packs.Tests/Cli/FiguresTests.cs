using System.Text.Json;
using PaperFlock.Cli;
using PaperFlock.Packs.Figures;

namespace PaperFlock.Packs.Tests.Cli;

public sealed class FiguresTests
{
    /// <summary>The least the JSON holds, as it has been promised to other programs; values are examples of their kind.</summary>
    private const string Promised =
        """
        {
          "holding": "Hollin Bank",
          "asOf": "2026-08-01",
          "season": {"tupIn": "2026-08-10", "tupOut": "2026-09-21", "firstDue": "2027-01-04", "lastDue": "2027-02-15"},
          "jobs": [{"id": "scan", "title": "…", "group": "Orchard", "earliest": "2026-10-24", "date": "2026-10-24", "latest": "2026-10-29", "handled": true, "why": "…"}],
          "ewes": [{"tag": "ZZ 0123456 00101", "name": "Bracken", "group": "Orchard", "litter": 2, "evidence": "mark",
                    "due": {"earliest": "2027-01-04", "likely": "2027-01-08", "latest": "2027-01-12"}, "advice": "…"}],
          "whereabouts": [{"tag": "ZZ 0123456 00101", "from": "2026-12-26", "to": "2027-01-08", "place": "North bay", "kind": "pen", "state": "in-lamb"}],
          "troughs": [{"name": "…", "place": "North bay", "chart": "FEED-TWINS-1", "from": "2026-12-26", "to": "2027-01-08", "tags": ["…"]}],
          "feeding": [{"chart": "FEED-TWINS-1", "class": "…", "state": "in-lamb", "litter": 2, "from": "2026-12-07", "to": "2026-12-13", "tags": ["…"],
                       "kgPerEwePerDay": 0.5, "fedAt": ["first light"], "kgPerFeedByHeads": [0.5, 1.0, 1.5], "energyNeedMJ": 15.3, "energySupplyMJ": 15.5,
                       "dryMatterShareOfWeight": 0.021, "concentrateShareOfDryMatter": 0.28, "perLambKg": 0.9, "energyBalanceKg": 0.5}],
          "stores": [{"item": "Ewe nuts", "kg": 412.0, "bags": 21, "orderBy": "2026-11-16", "neededFrom": "2026-11-23"}],
          "lambing": [{"date": "2027-01-08", "expectedEwes": 1.3, "p10": 0, "p90": 3, "pensNeededP90": 3}],
          "rounds": [{"date": "2026-12-27", "sunrise": "08:34", "sunset": "15:52", "times": ["07:50", "12:00", "16:20", "21:30"]}]
        }
        """;

    private static readonly string Produced = Run(Samples.HollinBank, "2026-11-25");

    [Fact]
    public void Everything_promised_is_there_by_name_and_kind()
    {
        using var promised = JsonDocument.Parse(Promised);
        using var produced = JsonDocument.Parse(Produced);
        Holds(promised.RootElement, produced.RootElement, "$");
    }

    [Theory]
    [InlineData("jobs", "date")]
    [InlineData("gatherings", "date")]
    [InlineData("feeding", "from")]
    [InlineData("troughs", "from")]
    [InlineData("stores", "neededFrom")]
    [InlineData("lambing", "date")]
    [InlineData("rounds", "date")]
    public void Arrays_are_in_date_order(string array, string key)
    {
        using var produced = JsonDocument.Parse(Produced);
        var dates = produced.RootElement.GetProperty(array).EnumerateArray().Select(e => e.GetProperty(key).GetString()).Where(d => d is not null).ToList();
        Assert.NotEmpty(dates);
        Assert.Equal(dates.Order(StringComparer.Ordinal), dates);
    }

    [Fact]
    public void Ewes_are_in_the_order_of_the_file()
    {
        using var produced = JsonDocument.Parse(Produced);
        var tags = produced.RootElement.GetProperty("ewes").EnumerateArray().Select(e => e.GetProperty("tag").GetString());
        Assert.Equal(Enumerable.Range(101, 24).Select(n => $"ZZ 0123456 00{n}"), tags);
    }

    [Fact]
    public void An_empty_ewe_has_no_due_dates()
    {
        using var produced = JsonDocument.Parse(Produced);
        var mallow = produced.RootElement.GetProperty("ewes").EnumerateArray().Single(e => e.GetProperty("name").GetString() == "Mallow");
        Assert.Equal("empty", mallow.GetProperty("standing").GetString());
        Assert.Equal(0, mallow.GetProperty("litter").GetInt32());
        Assert.Equal(JsonValueKind.Null, mallow.GetProperty("due").ValueKind);
        Assert.Equal(JsonValueKind.Null, mallow.GetProperty("evidence").ValueKind);
    }

    [Fact]
    public void The_demonstration_season_is_dated_by_the_calendar()
    {
        // 10 and 17 August with 147 days on, and 21 September with 147 days on: counted on a calendar.
        using var produced = JsonDocument.Parse(Produced);
        var season = produced.RootElement.GetProperty("season");
        Assert.Equal("2026-08-10", season.GetProperty("tupIn").GetString());
        Assert.Equal("2026-09-21", season.GetProperty("tupOut").GetString());
        Assert.Equal("2027-01-04", season.GetProperty("firstDue").GetString());
    }

    /// <summary>From today to the end of the plan, without gap or overlap.</summary>
    [Fact]
    public void Every_ewe_is_somewhere_from_today_to_the_end()
    {
        using var produced = JsonDocument.Parse(Produced);
        var stays = produced.RootElement.GetProperty("whereabouts").EnumerateArray()
            .Select(s => (Tag: s.GetProperty("tag").GetString()!, From: DateOnly.Parse(s.GetProperty("from").GetString()!, null), To: DateOnly.Parse(s.GetProperty("to").GetString()!, null)))
            .GroupBy(s => s.Tag).ToList();
        Assert.Equal(24, stays.Count);
        Assert.All(stays, ewe =>
        {
            Assert.Equal(new DateOnly(2026, 11, 25), ewe.First().From);
            Assert.All(ewe.Zip(ewe.Skip(1)), s => Assert.Equal(s.First.To.AddDays(1), s.Second.From));
        });
        Assert.Single(stays.Select(s => s.Last().To).Distinct());
    }

    [Fact]
    public void Each_chart_has_one_job_that_starts_it()
    {
        using var produced = JsonDocument.Parse(Produced);
        var charts = produced.RootElement.GetProperty("feeding").EnumerateArray().Where(f => f.GetProperty("state").GetString() == "in-lamb").Select(f => f.GetProperty("chart").GetString()).Distinct();
        var jobs = produced.RootElement.GetProperty("jobs").EnumerateArray().Where(j => j.GetProperty("id").GetString() == "feed-from").Select(j => j.GetProperty("title").GetString()!.Split(' ')[^1]);
        Assert.Equal(charts.Order(StringComparer.Ordinal), jobs.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Names_stay_readable_and_tags_stay_as_written()
    {
        using var bench = new Workbench();
        var flock = Samples.TwoEwes.Replace("name: Bracken", "name: Siân & <Moll>", StringComparison.Ordinal);
        var outcome = bench.Run("figures", bench.Write("flock.yaml", flock));
        Assert.Contains("\"name\": \"Siân & <Moll>\"", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("\"tag\": \"ZZ 0123456 00101\"", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_flock_gives_the_same_bytes()
    {
        Assert.Equal(Produced, Run(Samples.HollinBank, "2026-11-25"));
    }

    [Fact]
    public void Lines_end_in_a_line_feed_alone_the_last_one_too()
    {
        Assert.DoesNotContain('\r', Produced);
        Assert.EndsWith("\n}\n", Produced, StringComparison.Ordinal);
    }

    /// <summary>Halves go away from zero, and the decimals promised are always written.</summary>
    [Theory]
    [InlineData("412", 1, "412.0")]
    [InlineData("0.90718474", 3, "0.907")]
    [InlineData("2.72155422", 2, "2.72")]
    [InlineData("0.125", 2, "0.13")]
    [InlineData("0.0005", 3, "0.001")]
    [InlineData("-0.125", 2, "-0.13")]
    [InlineData("0", 1, "0.0")]
    public void Decimals_are_rounded_as_on_paper(string value, int decimals, string shown)
    {
        var invariant = System.Globalization.CultureInfo.InvariantCulture;
        Assert.Equal(shown, Shown.Decimals(decimal.Parse(value, invariant), decimals).ToString(invariant));
    }

    private static string Run(string flock, string asOf)
    {
        using var bench = new Workbench();
        var outcome = bench.Run("figures", flock, "--as-of", asOf);
        Assert.Equal(ExitStatus.Clean, outcome.Status);
        return outcome.Out;
    }

    /// <summary>What is promised of an array is held to the first of its elements that is not a special case.</summary>
    private static void Holds(JsonElement promised, JsonElement produced, string path)
    {
        Assert.True(promised.ValueKind == produced.ValueKind || BothBooleans(promised, produced), $"{path}: {produced.ValueKind} where {promised.ValueKind} was promised");
        switch (promised.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (var key in promised.EnumerateObject())
                {
                    Assert.True(produced.TryGetProperty(key.Name, out var value), $"{path}.{key.Name} is missing");
                    Holds(key.Value, value, $"{path}.{key.Name}");
                }

                break;
            case JsonValueKind.Array:
                Assert.True(produced.GetArrayLength() > 0, $"{path} is empty");
                Holds(promised[0], produced[0], $"{path}[0]");
                break;
            case JsonValueKind.String when IsDate(promised):
                Assert.True(IsDate(produced), $"{path}: {produced} is no date");
                break;
            case JsonValueKind.String when IsTime(promised):
                Assert.True(IsTime(produced), $"{path}: {produced} is no time of day");
                break;
            default:
                break;
        }
    }

    private static bool BothBooleans(JsonElement a, JsonElement b) =>
        a.ValueKind is JsonValueKind.True or JsonValueKind.False && b.ValueKind is JsonValueKind.True or JsonValueKind.False;

    private static bool IsDate(JsonElement text) => NodaTime.Text.LocalDatePattern.Iso.Parse(text.GetString()!).Success;

    private static bool IsTime(JsonElement text) =>
        NodaTime.Text.LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(text.GetString()!).Success;
}
