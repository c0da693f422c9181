namespace PaperFlock.Sheets.Tests.Text;

public sealed class EnglishTests
{
    [Theory]
    [InlineData(0, "0 days")]
    [InlineData(1, "1 day")]
    [InlineData(7, "1 week")]
    [InlineData(10, "10 days")]
    [InlineData(17, "17 days")]
    [InlineData(56, "8 weeks")]
    public void Only_whole_weeks_are_said_in_weeks(int days, string words) => Assert.Equal(words, DateText.Length(days));

    [Theory]
    [InlineData("", "")]
    [InlineData("a", "a")]
    [InlineData("a b", "a and b")]
    [InlineData("a b c", "a, b and c")]
    public void A_list_ends_with_and(string items, string words)
    {
        var list = items.Split(' ', StringSplitOptions.RemoveEmptyEntries);

        Assert.Equal(words, English.List(list));
        Assert.Equal(words, Phrase.List([.. list.Select(i => (Phrase)i)]).ToString());
    }
}
