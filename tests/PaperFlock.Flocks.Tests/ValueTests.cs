using NodaTime;

namespace PaperFlock.Flocks.Tests;

public class ValueTests
{
    // The pound is 0.45359237 kg exactly and the yard 0.9144 m exactly: Weights and Measures Act 1985, section 1;
    // for the United States, Federal Register 24, 5348 (1959). Sixteen ounces to the pound: the Act's Schedule 1.
    [Theory]
    [InlineData("74 kg", "74")]
    [InlineData("74.5kg", "74.5")]
    [InlineData("74 KG", "74")]
    [InlineData("163 lb", "73.93555631")]
    [InlineData("163 lbs", "73.93555631")]
    [InlineData("72000 g", "72")]
    [InlineData("1600 oz", "45.359237")]
    public void Masses_are_exact(string typed, string kilograms) =>
        Assert.Equal(decimal.Parse(kilograms, null), Samples.Flock(Samples.Ewe($"weight: {typed}")).Ewes[0].Weight!.Value.Kilograms);

    [Theory]
    [InlineData("3.6 m", "3.6")]
    [InlineData("12 ft", "3.6576")]
    [InlineData("12 feet", "3.6576")]
    [InlineData("60 in", "1.524")]
    [InlineData("360 cm", "3.6")]
    [InlineData("3600 mm", "3.6")]
    public void Lengths_are_exact(string typed, string metres)
    {
        var flock = Samples.Flock(Samples.Text($"housing:\n  pens:\n    - {{name: Bay, length: {typed}, width: 4 m}}\n"));
        Assert.Equal(decimal.Parse(metres, null), flock.Housing.Pens[0].Length.Metres);
    }

    [Theory]
    [InlineData("74", "FLK033")]
    [InlineData("74 stone", "FLK034")]
    [InlineData("about 74 kg", "FLK031")]
    [InlineData("74,5 kg", "FLK031")]
    [InlineData("1,074 kg", "FLK031")]
    [InlineData(".5 kg", "FLK031")]
    [InlineData("7e1 kg", "FLK031")]
    [InlineData("+74 kg", "FLK031")]
    [InlineData("7 4 kg", "FLK031")]
    [InlineData("99999999999999999999999999999999999999 kg", "FLK031")]
    [InlineData("999999999999999999999999 lb", "FLK035")]
    [InlineData("14.9 kg", "FLK035")]
    [InlineData("200.1 kg", "FLK035")]
    [InlineData("-74 kg", "FLK035")]
    public void A_mass_is_a_number_and_its_unit_within_reason(string typed, string code) =>
        Assert.Equal([code], Samples.Codes(Samples.Ewe($"weight: {typed}")));

    [Theory]
    [InlineData("15 kg")]
    [InlineData("200 kg")]
    [InlineData("440.9 lb")]
    public void Limits_are_allowed_values(string typed) => Samples.Flock(Samples.Ewe($"weight: {typed}"));

    /// <summary>YAML 1.1 would make these false, true, octal, sexagesimal and a float.</summary>
    [Theory]
    [InlineData("no")]
    [InlineData("on")]
    [InlineData("y")]
    [InlineData("0123")]
    [InlineData("12:30")]
    [InlineData("1e3")]
    [InlineData("0x1F")]
    [InlineData("1_000")]
    [InlineData(".inf")]
    [InlineData("2026-08-10")]
    [InlineData("ZZ  0123456  00101")]
    public void Tags_and_names_stay_as_typed(string typed)
    {
        var ewe = Samples.Flock(Samples.Text(ewes: $"ewes:\n  - tag: {typed}\n    name: {typed}\n")).Ewes[0];
        Assert.Equal(typed, ewe.Tag);
        Assert.Equal(typed, ewe.Name);
    }

    [Theory]
    [InlineData("~", "FLK040")]
    [InlineData("null", "FLK040")]
    [InlineData("NULL", "FLK040")]
    [InlineData("\"~\"", null)]
    [InlineData("'null'", null)]
    [InlineData("Nully", null)]
    public void What_stands_for_nothing_is_no_name(string typed, string? code) =>
        Assert.Equal(code is null ? [] : [code], Samples.Codes(Samples.Ewe($"name: {typed}")));

    [Fact]
    public void A_note_over_several_lines_is_one_line_on_paper()
    {
        var folded = Samples.Flock(Samples.Ewe("note: >", "  Needs a", "  quiet corner")).Ewes[0].Note;
        var literal = Samples.Flock(Samples.Ewe("note: |", "  Needs a", "  quiet corner")).Ewes[0].Note;
        Assert.Equal("Needs a quiet corner", folded);
        Assert.Equal("Needs a quiet corner", literal);
    }

    [Fact]
    public void A_name_over_several_lines_is_refused() =>
        Assert.Equal(["FLK040"], Samples.Codes(Samples.Ewe("name: |", "  Brack", "  en")));

    [Theory]
    [InlineData("name", 40)]
    [InlineData("note", 240)]
    public void Text_may_be_as_long_as_its_place_and_no_longer(string key, int longest)
    {
        Samples.Flock(Samples.Ewe($"{key}: {new string('x', longest)}"));
        Assert.Equal(["FLK039"], Samples.Codes(Samples.Ewe($"{key}: {new string('x', longest + 1)}")));
    }

    [Theory]
    [InlineData("2024-02-29", 2024, 2, 29)]
    [InlineData("2000-02-29", 2000, 2, 29)]
    [InlineData("\"2026-08-10\"", 2026, 8, 10)]
    public void Days_of_the_calendar_are_read(string typed, int year, int month, int day) =>
        Assert.Equal(
            new LocalDate(year, month, day),
            Samples.Flock(Samples.Text(season: $"season:\n  tup-in: {typed}\n")).Season.TupIn);

    // Leap years: every fourth, but of the centuries only every fourth. Inter gravissimas, 1582.
    [Theory]
    [InlineData("2026-02-29", "2026 is not a leap year")]
    [InlineData("2100-02-29", "2100 is not a leap year")]
    [InlineData("2024-02-30", "February has 29 days")]
    [InlineData("2026-04-31", "April has 30 days")]
    [InlineData("2026-01-32", "January has 31 days")]
    [InlineData("2026-00-10", "months 01 to 12")]
    [InlineData("0000-01-01", "years begin at 1")]
    public void A_day_no_calendar_has_says_why(string typed, string why)
    {
        var found = Assert.Single(Samples.ReadText(Samples.Text(season: $"season:\n  tup-in: {typed}\n")).Diagnostics);
        Assert.Equal("FLK037", found.Code);
        Assert.Contains(why, found.Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("10/08/2026", "`2026-08-10` if you mean Monday 10 August 2026, or `2026-10-08` if you mean Thursday 8 October 2026")]
    [InlineData("10/10/2026", "write `2026-10-10`, which is a Saturday")]
    [InlineData("25.12.26", "write `2026-12-25`")]
    [InlineData("12-25-2026", "write `2026-12-25`")]
    [InlineData("10 Aug 2026", "write `2026-08-10`")]
    [InlineData("10th August 2026", "write `2026-08-10`")]
    [InlineData("August 10, 2026", "write `2026-08-10`")]
    [InlineData("2026/8/1", "write `2026-08-01`")]
    [InlineData("20260810", "write `2026-08-10`")]
    [InlineData("2026-08-10T00:00:00", "write `2026-08-10`")]
    [InlineData("31/31/2026", "such as `2026-08-10`")]
    [InlineData("next Tuesday", "such as `2026-08-10`")]
    public void A_date_in_another_form_is_refused_with_the_day_it_may_mean(string typed, string advice)
    {
        var found = Assert.Single(Samples.ReadText(Samples.Text(season: $"season:\n  tup-in: {typed}\n")).Diagnostics);
        Assert.Equal("FLK036", found.Code);
        Assert.Contains(advice, found.Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\u201c2026-08-10\u201d")]
    [InlineData("\u20182026-08-10\u2019")]
    [InlineData("2026\u201308\u201310")]
    [InlineData("2026\u201408\u201410")]
    [InlineData("2026\u201108\u201110")]
    [InlineData("2026\u221208\u221210")]
    [InlineData("2026-08-10\u00a0")]
    [InlineData("10\u00a0Aug\u00a02026")]
    [InlineData("2026-08-\u200b10")]
    public void A_date_pasted_from_a_document_is_refused_with_the_day_and_the_reason(string typed)
    {
        var found = Assert.Single(Samples.ReadText(Samples.Text(season: $"season:\n  tup-in: {typed}\n")).Diagnostics);
        Assert.Equal("FLK036", found.Code);
        Assert.StartsWith("write `2026-08-10`, which is a Monday, typed by hand: this one has curly quotes", found.Advice, StringComparison.Ordinal);
    }

    // YAML 1.1 would make another thing of most of these.
    [Theory]
    [InlineData("no")]
    [InlineData("on")]
    [InlineData("0123")]
    [InlineData("12:30")]
    [InlineData("1e3")]
    [InlineData("0x1F")]
    [InlineData("1_000")]
    [InlineData("2026-08-10")]
    [InlineData(".5")]
    public void Tags_and_names_are_as_typed_whatever_else_they_could_be(string typed)
    {
        var ewe = Assert.Single(Samples.Flock(Samples.Text(ewes: $"ewes:\n  - tag: {typed}\n    name: {typed}\n")).Ewes);
        Assert.Equal((typed, typed), (ewe.Tag, ewe.Name));
    }

    [Theory]
    [InlineData("[1]")]
    [InlineData("{a: b}")]
    public void A_tag_that_is_no_single_value_is_reported_once(string typed) =>
        Assert.Equal(["FLK025"], Samples.Codes(Samples.Text(ewes: $"ewes:\n  - tag: {typed}\n")));

    [Theory]
    [InlineData("24:00")]
    [InlineData("21:60")]
    [InlineData("21.30")]
    [InlineData("2130")]
    [InlineData("9:30")]
    [InlineData("ab:cd")]
    public void A_time_has_one_form(string typed) =>
        Assert.Equal(["FLK038"], Samples.Codes(Samples.Text($"practice:\n  last-round: {typed}\n")));

    [Theory]
    [InlineData("true", true)]
    [InlineData("No", false)]
    [InlineData("YES", true)]
    [InlineData("false", false)]
    public void Flags_may_be_said_in_either_pair_of_words(string typed, bool value) =>
        Assert.Equal(value, Samples.Flock(Samples.Text($"print:\n  gloves: {typed}\n")).Print.Gloves);

    [Theory]
    [InlineData("UTC+05")]
    [InlineData("BST")]
    [InlineData("europe/london")]
    public void A_time_zone_is_one_of_the_list(string typed) =>
        Assert.Equal(
            ["FLK041"],
            Samples.Codes(Samples.Text(holding: Samples.Holding.Replace("Europe/London", typed, StringComparison.Ordinal))));
}
