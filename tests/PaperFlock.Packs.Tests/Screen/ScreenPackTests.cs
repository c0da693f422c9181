using System.Text.Json.Nodes;
using PaperFlock.Packs.Screen;
using PaperFlock.Planning;

namespace PaperFlock.Packs.Tests.Screen;

/// <summary>Packs as a page asks for them, and what it is told.</summary>
public sealed class ScreenPackTests
{
    private static readonly EarlierFile First = Issue(Samples.TwoEwes, "2026-11-25", "{}", null);

    [Fact]
    public void A_pdf_knows_its_issues_and_the_next_one_follows()
    {
        var second = Issue(Samples.TwoEwes.Replace("scan: 2", "scan: 1", StringComparison.Ordinal), "2026-12-01", """{"changed":true,"since":1}""", First);
        var issues = ScreenPack.Issues(Plan(Samples.TwoEwes, "2026-12-01"), second)["issues"]!.AsArray();
        Assert.Equal([2, 1], issues.Select(i => i!["number"]!.GetValue<int>()));
        Assert.Equal(["Tue 1 Dec 2026", "Wed 25 Nov 2026"], issues.Select(i => i!["day"]!.GetValue<string>()));
        // Somebody has said that issue 1 is in the binder.
        Assert.Equal([false, true], issues.Select(i => i!["filed"]!.GetValue<bool>()));
    }

    [Fact]
    public void A_pdf_of_another_holding_is_refused_in_a_sentence()
    {
        var other = Plan(Samples.TwoEwes.Replace("Hollin Bank", "Cold Knap", StringComparison.Ordinal), "2026-12-01");
        Assert.StartsWith("two.pdf is of another holding, Hollin Bank", Assert.Throws<PackRequestException>(() => ScreenPack.Issues(other, First)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_leaf_by_its_code_and_a_draft()
    {
        var (card, said) = Make("""{"sheets":"card-00101"}""", null);
        Assert.Equal("two-CARD-00101.pdf", said["documents"]![0]!["file"]!.GetValue<string>());
        Assert.All(card.SelectMany(d => d.Print.Pages), p => Assert.StartsWith("CARD", p.Label, StringComparison.Ordinal));
        var (_, draft) = Make("""{"draft":true}""", null);
        Assert.Equal("two-draft.pdf", draft["documents"]![0]!["file"]!.GetValue<string>());
    }

    [Fact]
    public void Whoever_waits_is_told_of_each_kind_of_sheet()
    {
        var steps = new List<(int Done, int Of, string Sheet)>();
        var (documents, _) = ScreenPack.Make(Plan(Samples.TwoEwes, "2026-11-25"), "two.yaml", "{}", null, (done, of, sheet) => steps.Add((done, of, sheet)));
        Assert.Equal(Enumerable.Range(0, steps[0].Of), steps.Select(s => s.Done));
        Assert.Contains("CARD", steps.Select(s => s.Sheet));
        var pages = new List<int>();
        documents[0].ToPdf(pages.Add);
        Assert.Equal(Enumerable.Range(1, documents[0].Print.Pages.Length), pages);
    }

    /// <summary>Each message that has other words at the command line, as the page says it.</summary>
    [Fact]
    public void No_message_speaks_of_the_command_line()
    {
        var muchChanged = Samples.TwoEwes.Replace("tup-in: 2026-08-10", "tup-in: 2026-08-20", StringComparison.Ordinal).Replace("2026-08-14", "2026-08-29", StringComparison.Ordinal).Replace("scan: 2", "scan: 3", StringComparison.Ordinal).Replace("Bracken", "Brindle", StringComparison.Ordinal).Replace("Sorrel", "Sage", StringComparison.Ordinal);
        string[] said =
        [
            .. Lines(Make("""{"changed":true}""", First, muchChanged).Said),
            .. Lines(Make("""{"changed":true}""", First).Said),
            Trouble(() => Make("""{"sheets":"CHG"}""", null)),
            Trouble(() => Make("""{"sheets":"year"}""", null)),
            Trouble(() => Make("""{"sheets":"CARD-99999"}""", null)),
            Trouble(() => Make("""{"changed":true}""", null)),
            Trouble(() => Make("""{"changed":true,"since":7}""", First)),
            Trouble(() => Make("""{"from":"2026-01-01","to":"2026-01-02"}""", null)),
        ];
        Assert.Contains(said, s => s.EndsWith("make the whole pack instead, as the next issue", StringComparison.Ordinal));
        Assert.Contains(said, s => s.EndsWith("are good", StringComparison.Ordinal));
        Assert.All(said, s => Assert.DoesNotMatch("--|`|written|\\btype\\b", s));
    }

    private static SeasonPlan Plan(string text, string today) => new OpenFlock(text, "two.yaml", today).Plan;

    private static (ImmutableArray<PackDocument> Documents, JsonObject Said) Make(string options, EarlierFile? earlier, string text = Samples.TwoEwes) =>
        ScreenPack.Make(Plan(text, "2026-12-01"), "two.yaml", options, earlier, (_, _, _) => { });

    private static EarlierFile Issue(string text, string today, string options, EarlierFile? earlier) =>
        new("two.pdf", ScreenPack.Make(Plan(text, today), "two.yaml", options, earlier, (_, _, _) => { }).Documents[0].ToPdf());

    private static IEnumerable<string> Lines(JsonObject said) => said["said"]!.AsArray().Select(l => l!.GetValue<string>());

    private static string Trouble(Action asked) => ScreenWords.Of(Assert.Throws<PackRequestException>(asked).Message);
}
