using PaperFlock.Flocks;
using PaperFlock.Sheets.Theme;

namespace PaperFlock.Sheets.Tests.Theme;

/// <summary>1 lb is 0.45359237 kg and 1 ft 0.3048 m exactly (international yard and pound agreement, 1959).</summary>
public sealed class AmountsTests
{
    /// <summary>Feed is never rounded up and has no trailing zero; a ewe's weight is to the whole unit.</summary>
    [Theory]
    [InlineData(UnitSystem.Metric, "0.907", "0.9 kg", "1 kg")]
    [InlineData(UnitSystem.Metric, "3", "3 kg", "3 kg")]
    [InlineData(UnitSystem.Metric, "0.65", "0.65 kg", "1 kg")]
    [InlineData(UnitSystem.Imperial, "0.90718474", "2 lb", "2 lb")]
    [InlineData(UnitSystem.Both, "0.90718474", "0.9 kg (2 lb)", "1 kg (2 lb)")]
    [InlineData(UnitSystem.Metric, "0", "0 kg", "0 kg")]
    [InlineData(UnitSystem.Imperial, "1000", "2204.6 lb", "2,205 lb")]
    [InlineData(UnitSystem.Metric, "1234.5", "1234.5 kg", "1,235 kg")]
    public void A_weight_is_rounded_and_has_its_unit(UnitSystem units, string kilograms, string feed, string weight)
    {
        var amounts = new Amounts(units);
        var kg = decimal.Parse(kilograms, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(feed, Plain(amounts.Plain(kg)));
        Assert.Equal(weight, Plain(amounts.Weight(kg)));
    }

    [Theory]
    [InlineData(UnitSystem.Metric, "9.0 m")]
    [InlineData(UnitSystem.Imperial, "30 ft")]
    [InlineData(UnitSystem.Both, "9.0 m (30 ft)")]
    public void A_length_has_its_unit(UnitSystem units, string expected) => Assert.Equal(expected, Plain(new Amounts(units).Metres(9)));

    [Theory]
    [InlineData(UnitSystem.Metric, "0.9", "kg", "kilograms")]
    [InlineData(UnitSystem.Imperial, "2", "lb", "pounds")]
    [InlineData(UnitSystem.Both, "0.9", "kg", "kilograms")]
    public void The_first_unit_leads(UnitSystem units, string figure, string unit, string inFull)
    {
        var amounts = new Amounts(units);
        Assert.Equal((figure, unit, inFull), (amounts.PlainFigure(2 * Mass.KilogramsPerPound), amounts.FeedUnit, amounts.AtFeedUnit));
    }

    [Theory]
    [InlineData(0, "0 ewes")]
    [InlineData(1, "1 ewe")]
    [InlineData(2, "2 ewes")]
    public void One_is_one_and_none_is_many(int count, string expected) => Assert.Equal(expected, Plain(English.Count(count, "ewe", "ewes")));

    [Fact]
    public void A_figure_never_parts_from_its_unit()
    {
        Assert.DoesNotContain(' ', new Amounts(UnitSystem.Metric).Plain(1));
        Assert.DoesNotContain(' ', English.Count(3, "ewe", "ewes"));
    }

    private static string Plain(string words) => words.Replace('\u00a0', ' ');
}
