using NodaTime;

namespace PaperFlock.Languages.Tests;

/// <summary>Translations here are no language: they only have to be told from the English.</summary>
public sealed class LanguageTests
{
    private static readonly int Three = 3;

    [Fact]
    public void English_says_the_words_in_the_call()
    {
        var language = Language.English;
        Assert.Equal("Ewes", language.Say("Ewes"));
        Assert.Equal("Count all 3, 1.50 kg", language.Say($"Count all {Three}, {1.5m:0.00} kg"));
        Assert.Equal("late", language.SayAs("round", "late"));
        Assert.Equal("1\u00a0ewe, 3\u00a0ewes", $"{language.Count(1, "ewe", "ewes")}, {language.Count(Three, "ewe", "ewes")}");
        Assert.Equal("en-GB", language.Tag);
    }

    [Fact]
    public void Another_language_says_what_its_catalogue_has_and_english_for_the_rest()
    {
        var language = Po.Language("msgid \"Ewes\"\nmsgstr \"SEWE\"\n");
        Assert.Equal("SEWE", language.Say("Ewes"));
        Assert.Equal("Tups", language.Say("Tups"));
        Assert.Equal("Count all 3", language.Say($"Count all {Three}"));
    }

    [Fact]
    public void A_translator_may_put_the_holes_in_another_order_or_twice()
    {
        var language = Po.Language("msgid \"{0} of {1} ewes\"\nmsgstr \"EWES {1}: {0}, {0}\"\n");
        Assert.Equal("EWES 20: 3, 3", language.Say($"{Three} of {20} ewes"));
    }

    [Fact]
    public void What_comes_from_the_flock_is_put_in_as_it_is()
    {
        var name = "{0} Ewes }";
        var language = Po.Language("msgid \"Ewes\"\nmsgstr \"SEWE\"\n\nmsgid \"{0} is lame\"\nmsgstr \"LAME: {0}\"\n");
        Assert.Equal("LAME: {0} Ewes }", language.Say($"{name} is lame"));
    }

    [Fact]
    public void Alike_in_english_is_not_alike_with_a_context()
    {
        var language = Po.Language("msgctxt \"round\"\nmsgid \"late\"\nmsgstr \"NIGHT\"\n\nmsgctxt \"stage\"\nmsgid \"late\"\nmsgstr \"AFTER\"\n");
        Assert.Equal("NIGHT", language.SayAs("round", "late"));
        Assert.Equal("AFTER", language.SayAs("stage", "late"));
        Assert.Equal("late", language.Say("late"));
    }

    /// <summary>The rule of Polish as the GNU gettext manual gives it: one, a few, many.</summary>
    [Theory]
    [InlineData(1, "1\u00a0OWCA")]
    [InlineData(2, "2\u00a0OWCE")]
    [InlineData(4, "4\u00a0OWCE")]
    [InlineData(5, "5\u00a0OWIEC")]
    [InlineData(12, "12\u00a0OWIEC")]
    [InlineData(22, "22\u00a0OWCE")]
    [InlineData(0, "0\u00a0OWIEC")]
    public void A_number_chooses_among_the_forms_of_the_language(int number, string expected)
    {
        var header = Po.Header("pl", "nplurals=3; plural=(n==1 ? 0 : n%10>=2 && n%10<=4 && (n%100<10 || n%100>=20) ? 1 : 2);");
        var language = Po.Language(
            "msgid \"{0}\u00a0ewe\"\nmsgid_plural \"{0}\u00a0ewes\"\nmsgstr[0] \"{0}\u00a0OWCA\"\nmsgstr[1] \"{0}\u00a0OWCE\"\nmsgstr[2] \"{0}\u00a0OWIEC\"\n", header);
        Assert.Equal(expected, language.Count(number, "ewe", "ewes"));
        Assert.Equal(expected.Replace('\u00a0', ' '), language.CountLoose(number, "ewe", "ewes"));
        Assert.Equal(expected, language.Plural(number, $"{number}\u00a0ewe", $"{number}\u00a0ewes"));
    }

    [Fact]
    public void Dates_are_said_in_the_language_and_codes_are_not()
    {
        var language = Po.Language(
            "msgid \"Mon\"\nmsgstr \"Llun\"\n\nmsgctxt \"short\"\nmsgid \"Jan\"\nmsgstr \"Ion\"\n\nmsgctxt \"weekday day month\"\nmsgid \"{0}\u00a0{1}\u00a0{2}\"\nmsgstr \"{2}/{1}/{0}\"\n");
        var day = new LocalDate(2027, 1, 4);
        Assert.Equal("Ion/4/Llun", language.Days.Short(day));
        Assert.Equal("Llun\u00a04", language.Days.WeekdayNumber(day));
        Assert.Equal("04JAN", Days.Code(day));
    }
}
