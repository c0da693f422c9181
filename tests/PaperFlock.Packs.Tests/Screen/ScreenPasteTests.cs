using System.Text;
using System.Text.Json.Nodes;
using PaperFlock.Packs.Screen;

namespace PaperFlock.Packs.Tests.Screen;

/// <summary>Ewes pasted from a spreadsheet: which columns are taken, what is left out and said, and what the flock file is after it.</summary>
public sealed class ScreenPasteTests
{
    private const string Rows = "ZZ 0123456 00201\tBracken\t72 kg\nZZ 0123456 00202\tCampion\t70 kg\n";

    [Fact]
    public void Known_headings_need_no_pointing()
    {
        var pasted = Paste("Ear tag\tCalled\tWeight\n" + Rows);
        Assert.False(pasted["ask"]!.GetValue<bool>());
        Assert.Equal("""["tag","name","weight"]""", pasted["keys"]!.ToJsonString());
        Assert.Equal(["ZZ 0123456 00101", "ZZ 0123456 00102", "ZZ 0123456 00201", "ZZ 0123456 00202"], Ewes(pasted).Select(e => e!["tag"]!.GetValue<string>()));
        Assert.Equal("72 kg", Ewes(pasted)[2]!["weight"]!.GetValue<string>());
    }

    [Fact]
    public void Without_headings_it_asks_and_takes_the_columns_somebody_points_at()
    {
        var asked = Paste(Rows);
        Assert.True(asked["ask"]!.GetValue<bool>());
        Assert.Null(asked["text"]);
        Assert.Equal(3, asked["columns"]!.GetValue<int>());

        var pointed = Paste(Rows, tag: 0, name: 1);
        Assert.Equal("""["tag","name",null]""", pointed["keys"]!.ToJsonString());
        Assert.Equal(2, pointed["taken"]!.GetValue<int>());
        Assert.Equal("Campion", Ewes(pointed)[3]!["name"]!.GetValue<string>());
    }

    [Fact]
    public void A_heading_in_words_of_their_own_stays_out_of_the_flock()
    {
        var pointed = Paste("Official no\tAnimal\tWeight\n" + Rows, tag: 0, name: 1);
        Assert.True(pointed["hasHeading"]!.GetValue<bool>());
        Assert.Equal(2, pointed["taken"]!.GetValue<int>());
        Assert.Equal("Bracken", Ewes(pointed)[2]!["name"]!.GetValue<string>());
    }

    [Fact]
    public void A_bad_cell_is_left_out_and_listed_by_its_row_and_the_rest_of_the_ewe_is_taken()
    {
        var pasted = Paste("Tag\tName\tWeight\tTeeth\n\nZZ 0123456 00201\tBracken\theavy\tgone\nZZ 0123456 00202\tCampion\t70 kg\tsound\n");
        Assert.Equal(2, pasted["taken"]!.GetValue<int>());
        Assert.Equal(0, pasted["refused"]!.GetValue<int>());
        Assert.Equal([3, 3], pasted["found"]!.AsArray().Select(f => f!["line"]!.GetValue<int>()));
        Assert.Contains(pasted["found"]!.AsArray(), f => f!["message"]!.GetValue<string>().Contains("`heavy` is no weight", StringComparison.Ordinal));
        Assert.Equal("""{"tag":"ZZ 0123456 00201","name":"Bracken"}""", Ewes(pasted)[2]!.ToJsonString());
    }

    [Theory]
    [InlineData("ZZ 0123456 00201")]
    [InlineData("ZZ 0123456 00101")]
    [InlineData("")]
    public void A_ewe_whose_tag_is_wrong_is_left_out(string tag)
    {
        var pasted = Paste($"Tag,Name\nZZ 0123456 00201,Bracken\n{tag},Campion\nZZ 0123456 00203,Sorrel\n");
        Assert.Equal(2, pasted["taken"]!.GetValue<int>());
        Assert.Equal(1, pasted["refused"]!.GetValue<int>());
        Assert.Equal(3, Assert.Single(pasted["found"]!.AsArray())!["line"]!.GetValue<int>());
        Assert.Equal(["Bracken", "Sorrel"], Ewes(pasted).Skip(2).Select(e => e!["name"]!.GetValue<string>()));
    }

    [Fact]
    public void Every_bad_row_among_many_is_found()
    {
        var rows = Enumerable.Range(1, 60).Select(i => i % 7 == 0 ? "ZZ 0123456 00101" : $"ZZ 0123456 {1000 + i}");
        var pasted = Paste("Tag\n" + string.Join('\n', rows));
        Assert.Equal((52, 8), (pasted["taken"]!.GetValue<int>(), pasted["refused"]!.GetValue<int>()));
        Assert.Equal(Enumerable.Range(1, 8).Select(i => 7 * i + 1), pasted["found"]!.AsArray().Select(f => f!["line"]!.GetValue<int>()));
    }

    [Fact]
    public void They_take_the_place_of_ewes_with_a_line_for_the_tag()
    {
        var begun = ScreenStart.Begin("""{"name":"Cold Knap","place":"NY 480 046","ewes":"3"}""", "2026-11-25")["text"]!.GetValue<string>();
        var pasted = ScreenPaste.Read(begun, "flock.yaml", "Tag\n" + Rows, -1, -1);
        Assert.Equal(2, Ewes(pasted).Count);
    }

    [Fact]
    public void A_list_of_six_thousand_rows_is_refused_in_a_sentence()
    {
        var trouble = Assert.Throws<PackRequestException>(() => Paste(string.Concat(Enumerable.Range(1, 6000).Select(i => $"ZZ 0123456 {i}\n"))));
        Assert.Contains("6000 rows", trouble.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n\n \n")]
    public void Nothing_is_nothing(string pasted) => Assert.Equal(0, Paste(pasted)["columns"]!.GetValue<int>());

    [Fact]
    public void A_saved_list_is_read_whatever_its_encoding()
    {
        const string List = "tag;name\nZZ 0123456 00201;Hélène\n";
        foreach (var bytes in new[] { Encoding.UTF8.GetBytes(List), [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(List)], Encoding.Latin1.GetBytes(List) })
        {
            Assert.Equal("Hélène", Ewes(Paste(ScreenPaste.Open(bytes, "list.csv")["text"]!.GetValue<string>()))[2]!["name"]!.GetValue<string>());
        }
    }

    [Theory]
    [InlineData("PK\u0003\u0004 xl/", "this is a spreadsheet’s own file (.xlsx)")]
    [InlineData("%PDF-1.7\n", "this is a PDF")]
    [InlineData("\u00ff\u00d8\u00ff\u00e0\0\u0010JFIF", "this is a picture")]
    [InlineData("GIF89a\u0001\u0000", "is no list")]
    public void What_is_no_list_is_refused_in_a_sentence(string latin, string says) =>
        Assert.Contains(says, Assert.Throws<PackRequestException>(() => ScreenPaste.Open(Encoding.Latin1.GetBytes(latin), "photo.csv")).Message, StringComparison.Ordinal);

    private static JsonObject Paste(string pasted, int tag = -1, int name = -1) => ScreenPaste.Read(Samples.TwoEwes, "two.yaml", pasted, tag, name);

    private static JsonArray Ewes(JsonObject pasted) =>
        ScreenFlock.Read(new OpenFlock(pasted["text"]!.GetValue<string>(), "two.yaml", "2026-11-25"))["values"]!["ewes"]!.AsArray();
}
