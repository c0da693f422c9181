using System.Text;
using System.Text.Json.Nodes;
using PaperFlock.Packs.Screen;

namespace PaperFlock.Packs.Tests.Screen;

/// <summary>What a page is told of a flock file, and what it does to one.</summary>
public sealed class ScreenFlockTests
{
    private const string Today = "2026-11-25";

    private static readonly string HollinBank = File.ReadAllText(Samples.HollinBank);

    [Fact]
    public void Values_are_as_written_and_dates_have_their_weekday()
    {
        var read = Read(Samples.TwoEwes);
        Assert.Equal("2", read["values"]!["ewes"]![0]!["scan"]!.GetValue<string>());
        Assert.Equal("Mon 10 Aug 2026", read["days"]!["2026-08-10"]!.GetValue<string>());
        Assert.True(read["ok"]!.GetValue<bool>());
    }

    [Fact]
    public void A_mistake_leads_to_its_field()
    {
        var read = Read(Samples.TwoEwes.Replace("scan: 2", "scan: many", StringComparison.Ordinal));
        Assert.False(read["ok"]!.GetValue<bool>());
        Assert.Equal("""["ewes",0,"scan"]""", read["found"]![0]!["path"]!.ToJsonString());
    }

    [Fact]
    public void What_is_missing_leads_to_its_field()
    {
        var read = Read(Samples.TwoEwes.Replace("  tup-in: 2026-08-10\n", "  tup-in:\n", StringComparison.Ordinal));
        Assert.Equal("""["season","tup-in"]""", read["found"]![0]!["path"]!.ToJsonString());
    }

    [Fact]
    public void An_edit_touches_one_line_and_keeps_every_comment()
    {
        var changed = Lines(Apply(HollinBank, """[{"path":["ewes",0,"scan"],"set":"1"}]"""));
        var differing = HollinBank.Split('\n').Zip(changed).Where(pair => pair.First != pair.Second).ToList();
        Assert.Equal(HollinBank.Split('\n').Length, changed.Length);
        Assert.Single(differing);
        Assert.Contains("scan: 1", differing[0].Second, StringComparison.Ordinal);
    }

    [Fact]
    public void Sections_on_the_way_are_made()
    {
        var text = Apply(Samples.TwoEwes, """[{"path":["housing","days-in-lambing-pen","twin"],"set":"3"},{"path":["housing","lambing-pens"],"set":"4"},{"path":["holding","contacts"],"add":[{"role":"Vet","phone":"01632 960 202"}]}]""");
        var values = Read(text)["values"]!;
        Assert.Equal("""{"days-in-lambing-pen":{"twin":"3"},"lambing-pens":"4"}""", Sorted(values["housing"]!.AsObject()));
        Assert.Equal("Vet", values["holding"]!["contacts"]![0]!["role"]!.GetValue<string>());
    }

    [Fact]
    public void Ewes_come_and_go()
    {
        var text = Apply(Samples.TwoEwes, """[{"path":["ewes"],"add":[{"tag":"0103","name":"Yes","note":""}]},{"path":["ewes",0],"remove":true}]""");
        var ewes = Read(text)["values"]!["ewes"]!.AsArray();
        Assert.Equal(["ZZ 0123456 00102", "0103"], ewes.Select(e => e!["tag"]!.GetValue<string>()));
        Assert.False(ewes[1]!.AsObject().ContainsKey("note"));
    }

    /// <summary>A form is never right while somebody types; what is typed must be in the text all the same, or closing the page would lose it.</summary>
    [Fact]
    public void A_mistake_is_written_down_as_typed_and_can_be_put_right()
    {
        var (_, wrong) = ScreenFlock.Apply(Samples.TwoEwes, "two.yaml", Today, """[{"path":["season","tup-in"],"set":"31 September"}]""");
        Assert.Empty(wrong["refused"]!.AsArray());
        Assert.False(wrong["ok"]!.GetValue<bool>());
        Assert.Equal("31 September", wrong["values"]!["season"]!["tup-in"]!.GetValue<string>());
        Assert.Equal(Samples.TwoEwes, Apply(wrong["text"]!.GetValue<string>(), """[{"path":["season","tup-in"],"set":"2026-08-10"}]"""));
    }

    /// <summary>The plan takes as long as all else, and nobody waits for it between two keys.</summary>
    [Fact]
    public void An_edit_finds_mistakes_and_leaves_the_plan_for_later()
    {
        var (now, edited) = ScreenFlock.Apply(HollinBank, "flock.yaml", Today, """[{"path":["ewes",0,"name"],"set":"Yes"}]""");
        Assert.False(edited["planned"]!.GetValue<bool>());
        Assert.True(edited["ok"]!.GetValue<bool>());
        Assert.Equal("Hollin Bank", edited["holding"]!.GetValue<string>());
        Assert.True(ScreenFlock.Read(now)["planned"]!.GetValue<bool>());
    }

    [Fact]
    public void What_is_no_yaml_cannot_be_edited_and_stays_as_it_is()
    {
        const string Broken = "holding: {name: Hollin Bank\n";
        var (_, edited) = ScreenFlock.Apply(Broken, "broken.yaml", Today, """[{"path":["holding","name"],"set":"Cold Knap"}]""");
        Assert.Equal(Broken, edited["text"]!.GetValue<string>());
        Assert.NotEmpty(edited["refused"]!.AsArray());
        Assert.Null(edited["values"]);
    }

    [Theory]
    [InlineData("%PDF-1.7", "FLK019")]
    [InlineData("\u00ff\u00d8\u00ff\u00e0", "FLK003")]
    public void A_file_that_is_no_text_is_not_gone_on_with(string latin, string code)
    {
        var opened = ScreenFlock.Open(Encoding.Latin1.GetBytes(latin), "photo.yaml", Today);
        Assert.Null(opened["text"]);
        Assert.Equal(code, opened["found"]![0]!["code"]!.GetValue<string>());
    }

    [Fact]
    public void A_byte_order_mark_stays()
    {
        byte[] bytes = [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(Samples.TwoEwes)];
        var text = ScreenFlock.Open(bytes, "two.yaml", Today)["text"]!.GetValue<string>();
        Assert.Equal(bytes, Encoding.UTF8.GetBytes(text));
        Assert.StartsWith("\ufeff", Apply(text, """[{"path":["ewes",0,"scan"],"set":"1"}]"""), StringComparison.Ordinal);
    }

    private static JsonObject Read(string text) => ScreenFlock.Read(new OpenFlock(text, "two.yaml", Today));

    private static string Apply(string text, string edits)
    {
        var (now, edited) = ScreenFlock.Apply(text, "flock.yaml", Today, edits);
        Assert.Empty(edited["refused"]!.AsArray());
        Assert.True(now.Is(edited["text"]!.GetValue<string>(), "flock.yaml", Today));
        return now.Text;
    }

    private static string[] Lines(string text) => text.Split('\n');

    private static string Sorted(JsonObject section) => new JsonObject(section.OrderBy(e => e.Key, StringComparer.Ordinal).Select(e => KeyValuePair.Create(e.Key, e.Value?.DeepClone()))).ToJsonString();
}
