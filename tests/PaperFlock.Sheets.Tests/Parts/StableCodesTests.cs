using PaperFlock.Sheets.Tests.WorstCases;

namespace PaperFlock.Sheets.Tests.Parts;

/// <summary>One leaf can be replaced without renumbering the rest only while codes stay put.</summary>
public sealed class StableCodesTests
{
    private static readonly string[] Ewes = [.. FlockText.Many(9, n => $"scan: {n % 3}, weight: 70 kg")];

    [Fact]
    public void A_ewe_at_the_end_adds_no_code_but_her_card() => Same(Of(Ewes), Of([.. Ewes, FlockText.Ewe(10, "scan: 1, weight: 70 kg", "Ewe 10")]));

    [Fact]
    public void A_ewe_taken_out_leaves_the_others_their_codes() => Same(Of([.. Ewes.Where((_, i) => i != 3)]), Of(Ewes));

    private static Composed Of(string[] ewes) => new FlockText { Ewes = ewes }.On(new(2026, 11, 25));

    /// <summary>Every sheet and every card of the smaller pack has the same code in the larger.</summary>
    private static void Same(Composed fewer, Composed more)
    {
        Assert.Equal(Codes(fewer), Codes(more));
        var (few, many) = (EweCards.CardCodes.Of(fewer.Plan.Ewes), EweCards.CardCodes.Of(more.Plan.Ewes));
        Assert.All(few, pair => Assert.Equal(pair.Value, many[pair.Key]));
    }

    /// <summary>A class that grows may no longer share a side with another: what counts is the code that stands over its rows.</summary>
    private static IEnumerable<string> Codes(Composed pack) => pack.Pack.Sheets.Where(s => s.Kind != "feed").Select(s => $"{s.Code} {s.Title.Split(',')[0]}")
        .Concat(pack.Plan.Feeding.Charts.Select(c => c.Code));
}
