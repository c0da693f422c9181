using PaperFlock.Layout.Pages;
using PaperFlock.Sheets.Tests.WorstCases;
using PaperFlock.Sheets.Theme;

namespace PaperFlock.Sheets.Tests.Theme;

public sealed class PackMarkTests
{
    [Theory]
    [InlineData("Hollin Bank", "HB-2027")]
    [InlineData("Hollin", "HO-2027")]
    [InlineData("H", "H-2027")]
    [InlineData("Tŷ Gŵyr", "TG-2027")]
    [InlineData("þórs mörk", "ÞM-2027")]
    [InlineData("A Farm by the Old Mill", "AFBT-2027")]
    [InlineData("Low-Moor", "LM-2027")]
    [InlineData("& Sons", "SO-2027")]
    [InlineData("!", "PF-2027")]
    public void A_pack_is_named_by_the_initials_of_the_holding_and_the_year_of_lambing(string holding, string expected)
    {
        var plan = Composed.PlanOf(new FlockText { Holding = $"name: \"{holding}\"" }.ToString(), new(2026, 8, 1));
        Assert.Equal(expected, PackMark.Of(plan).Id);
    }

    [Fact]
    public void The_year_is_that_of_the_lambs_even_with_none_due()
    {
        var plan = Composed.PlanOf(new FlockText { Ewes = [FlockText.Ewe(1, "scan: 0")] }.ToString(), new(2026, 11, 25));
        Assert.Equal("HB-2027", PackMark.Of(plan).Id);
    }

    [Fact]
    public void The_control_line_says_which_page_which_issue_and_until_when()
    {
        var line = PackMark.Of(Composed.HollinBank.Plan).ControlLine("FEED-2", new PageNumber(3, 12, PageSide.Front)).Replace('\u00a0', ' ');
        Assert.Equal($"HB-2027 FEED-2 3/12 · issue 1 Wed 25 Nov 2026 · replaces none · not after {DateText.Long(Composed.HollinBank.Plan.To).Replace('\u00a0', ' ')}", line);
    }
}
