using PaperFlock.Sheets.EweCards;
using PaperFlock.Sheets.Tests.WorstCases;

namespace PaperFlock.Sheets.Tests.Parts;

public sealed class CardCodesTests
{
    [Fact]
    public void A_card_is_called_by_the_end_of_the_tag() =>
        Assert.Equal(["CARD-00101", "CARD-00102"], Codes("ZZ 0123456 00101", "ZZ 0123456 00102"));

    [Fact]
    public void Tags_that_end_alike_are_said_whole() =>
        Assert.Equal(["CARD-ZZ-1-00101", "CARD-ZZ-2-00101", "CARD-00102"], Codes("ZZ 1 00101", "ZZ 2 00101", "ZZ 1 00102"));

    [Fact]
    public void A_tag_without_spaces_is_its_own_end() => Assert.Equal(["CARD-ZZ123"], Codes("ZZ123"));

    [Fact]
    public void Codes_do_not_hang_on_the_order_of_the_ewes()
    {
        string[] tags = ["ZZ 1 00101", "ZZ 2 00101", "ZZ 1 00102", "7"];
        Assert.Equal(Codes(tags).Order(), Codes([.. tags.Reverse()]).Order());
    }

    private static string[] Codes(params string[] tags)
    {
        var plan = Composed.PlanOf(new FlockText { Ewes = tags.Select((t, i) => FlockText.Ewe(i, tag: t)) }.ToString(), new(2026, 8, 1));
        var codes = CardCodes.Of(plan.Ewes);
        return [.. tags.Select(t => codes[t])];
    }
}
