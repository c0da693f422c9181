using System.Text.Json.Nodes;
using PaperFlock.Packs.Screen;

namespace PaperFlock.Packs.Tests.Screen;

/// <summary>Answers from paper, written down as a page writes them.</summary>
public sealed class ScreenSeasonTests
{
    private const string Today = "2027-01-20";

    private static readonly string HollinBank = File.ReadAllText(Samples.HollinBank);

    [Fact]
    public void Rows_stand_as_on_paper()
    {
        var flock = new OpenFlock(HollinBank, "hollin-bank.yaml", Today);
        var season = ScreenSeason.Of(flock.Plan);
        string[] Called(JsonNode rows) => [.. rows.AsArray().Select(e => flock.Plan.Ewes[e!.GetValue<int>()].Ewe.CallName)];
        // Burdock and Sedge are left out of the tup.
        Assert.Equal(flock.Plan.Ewes.Select(e => e.Ewe.CallName).Except(["Burdock", "Sedge"]), Called(season["scan"]!));
        Assert.Equal(24, Called(season["losses"]!).Length);
        var marks = season["marks"]!.AsArray();
        Assert.Equal(["Bramley", "Damson"], marks.Select(g => g!["tup"]!.GetValue<string>()));
        // Sorrel was marked on the day the tup went in: nobody comes before her.
        var first = season["lambed"]![0]!;
        Assert.Equal("Sorrel", flock.Plan.Ewes[first["ewe"]!.GetValue<int>()].Ewe.CallName);
        Assert.EndsWith("keep women who are or may be pregnant away", season["care"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_lambing_goes_in_answer_by_answer_and_comes_out_again()
    {
        string[] answers =
        [
            """[{"path":["ewes",0,"lambed"],"set":"2027-01-08"}]""",
            """[{"path":["ewes",0,"lambed-time"],"set":"03:20"}]""",
            """[{"path":["ewes",0,"lambs-alive"],"set":"2"}]""",
            """[{"path":["ewes",0,"lambs-dead"],"set":"0"}]""",
            """[{"path":["ewes",0,"lambing-help"],"set":"hand"}]""",
            """[{"path":["ewes",0,"lambs"],"add":[{"sex":"ewe"}]}]""",
            """[{"path":["ewes",0,"lambs",0,"weight"],"set":"4.5 kg"}]""",
            """[{"path":["ewes",0,"lambs"],"add":[{"sex":"ram"}]}]""",
            """[{"path":["ewes",0,"lambs",1,"sex"],"set":"wether"}]""",
        ];
        var text = answers.Aggregate(HollinBank, Apply);
        var shown = ScreenFlock.Read(new OpenFlock(text, "hollin-bank.yaml", Today));
        Assert.True(shown["ok"]!.GetValue<bool>());
        Assert.Equal("""[{"sex":"ewe","weight":"4.5 kg"},{"sex":"wether"}]""", shown["values"]!["ewes"]![0]!["lambs"]!.ToJsonString());
        var births = ScreenPlan.Births(new OpenFlock(text, "hollin-bank.yaml", Today).Plan, "hollin-bank.yaml");
        Assert.Equal("hollin-bank-births.csv", births["file"]!.GetValue<string>());
        Assert.Contains(",2027-01-08,03:20,2,alive,2,ewe,,4.5,hand,Hollin Bank\r\n", births["text"]!.GetValue<string>(), StringComparison.Ordinal);

        // Taken back one by one, the file is the one there was.
        Assert.Equal(HollinBank, new[] { "lambed-time", "lambs-alive", "lambs-dead", "lambing-help", "lambs", "lambed" }.Aggregate(text, (now, key) => Apply(now, $$"""[{"path":["ewes",0,"{{key}}"],"set":""}]""")));
    }

    [Fact]
    public void A_loss_and_a_mark_and_what_puts_them_back()
    {
        var gone = Apply(HollinBank, """[{"path":["ewes",1,"gone"],"set":{"on":"2026-12-03","why":"died"}}]""");
        Assert.Contains("died", gone, StringComparison.Ordinal);
        var later = Apply(gone, """[{"path":["ewes",1,"gone","on"],"set":"2026-12-04"}]""");
        Assert.Equal("2026-12-04", ScreenFlock.Read(new OpenFlock(later, "f.yaml", Today))["values"]!["ewes"]![1]!["gone"]!["on"]!.GetValue<string>());
        Assert.Equal(HollinBank, Apply(later, """[{"path":["ewes",1,"gone"],"set":""}]"""));

        var marked = Apply(HollinBank, """[{"path":["ewes",0,"marks"],"set":["2026-08-14","2026-08-31"]}]""");
        Assert.Equal(HollinBank, Apply(marked, """[{"path":["ewes",0,"marks"],"set":["2026-08-14"]}]"""));
    }

    /// <summary>The words are those of `check`, and lead to the ewe.</summary>
    [Fact]
    public void A_lambing_in_the_future_is_a_mistake_by_her_row()
    {
        var (_, shown) = ScreenFlock.Apply(HollinBank, "hollin-bank.yaml", Today, """[{"path":["ewes",0,"lambed"],"set":"2027-02-08"}]""");
        Assert.Empty(shown["refused"]!.AsArray());
        var error = shown["found"]!.AsArray().Single(f => f!["severity"]!.GetValue<string>() == "error")!;
        Assert.Equal("""["ewes",0,"lambed"]""", error["path"]!.ToJsonString());
    }

    private static string Apply(string text, string edits)
    {
        var (now, shown) = ScreenFlock.Apply(text, "hollin-bank.yaml", Today, edits);
        Assert.Empty(shown["refused"]!.AsArray());
        return now.Text;
    }
}
