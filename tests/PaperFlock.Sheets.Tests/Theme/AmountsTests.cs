using PaperFlock.Flocks;
using PaperFlock.Sheets.Theme;

namespace PaperFlock.Sheets.Tests.Theme;

/// <summary>1 lb is 0.45359237 kg and 1 ft 0.3048 m exactly (international yard and pound agreement, 1959).</summary>
public sealed class AmountsTests
{
    [Theory]
    [InlineData(Units.Metric, "0.907", "0.91 kg", "0.91 kg", "1 kg")]
    [InlineData(Units.Imperial, "0.907", "2.00 lb", "2.00 lb", "2 lb")]
    [InlineData(Units.Both, "0.907", "0.91 kg (2.00 lb)", "0.91 kg (2.00 lb)", "1 kg (2 lb)")]
    [InlineData(Units.Metric, "0", "0.00 kg", "0.00 kg", "0 kg")]
    [InlineData(Units.Metric, "0.05", "0.05 kg", "0.05 kg", "0 kg")]
    [InlineData(Units.Imperial, "1000", "2204.6 lb", "2204.62 lb", "2,205 lb")]
    [InlineData(Units.Metric, "1234.5", "1234.5 kg", "1234.50 kg", "1,235 kg")]
    public void A_weight_is_rounded_and_has_its_unit(Units units, string kilograms, string feed, string ration, string weight)
    {
        var amounts = new Amounts(units);
        var kg = decimal.Parse(kilograms, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(feed, Plain(amounts.Feed(kg)));
        Assert.Equal(ration, Plain(amounts.Ration(kg)));
        Assert.Equal(weight, Plain(amounts.Weight(kg)));
    }

    [Theory]
    [InlineData(Units.Metric, "9.0 m")]
    [InlineData(Units.Imperial, "30 ft")]
    [InlineData(Units.Both, "9.0 m (30 ft)")]
    public void A_length_has_its_unit(Units units, string expected) => Assert.Equal(expected, Plain(new Amounts(units).Metres(9)));

    [Theory]
    [InlineData(Units.Metric, "5.4 kg", null, "0.91", "kg")]
    [InlineData(Units.Imperial, "12.0 lb", null, "2.00", "lb")]
    [InlineData(Units.Both, "5.4 kg", "12.0 lb", "0.91", "kg")]
    public void The_first_unit_leads(Units units, string first, string? second, string figure, string unit)
    {
        var amounts = new Amounts(units);
        var (one, other) = amounts.FeedParts(12 * Mass.KilogramsPerPound);
        Assert.Equal((first, second), (Plain(one), other is null ? null : Plain(other)));
        Assert.Equal(figure, amounts.RationFigure(0.907m));
        Assert.Equal(unit, amounts.RationUnit);
    }

    [Theory]
    [InlineData("0.25", "¼ scoop")]
    [InlineData("0.5", "½ scoop")]
    [InlineData("0.75", "¾ scoop")]
    [InlineData("1", "1 scoop")]
    [InlineData("1.25", "1¼ scoops")]
    [InlineData("2", "2 scoops")]
    [InlineData("12.75", "12¾ scoops")]
    public void Scoops_are_in_quarters(string scoops, string expected) =>
        Assert.Equal(expected.Replace(' ', '\u00a0'), Amounts.Scoops(decimal.Parse(scoops, System.Globalization.CultureInfo.InvariantCulture)));

    [Theory]
    [InlineData(0, "0 ewes")]
    [InlineData(1, "1 ewe")]
    [InlineData(2, "2 ewes")]
    public void One_is_one_and_none_is_many(int count, string expected) => Assert.Equal(expected, Plain(English.Count(count, "ewe", "ewes")));

    [Fact]
    public void A_figure_never_parts_from_its_unit()
    {
        Assert.DoesNotContain(' ', new Amounts(Units.Metric).Feed(1));
        Assert.DoesNotContain(' ', Amounts.Scoops(1.5m));
        Assert.DoesNotContain(' ', English.Count(3, "ewe", "ewes"));
    }

    private static string Plain(string words) => words.Replace('\u00a0', ' ');
}
