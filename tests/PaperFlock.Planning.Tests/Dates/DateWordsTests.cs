using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Tests.Dates;

public class DateWordsTests
{
    [Theory]
    [InlineData(0, "0 days")]
    [InlineData(1, "1 day")]
    [InlineData(7, "1 week")]
    [InlineData(10, "10 days")]
    [InlineData(17, "17 days")]
    [InlineData(56, "8 weeks")]
    public void Only_whole_weeks_are_said_in_weeks(int days, string words) => Assert.Equal(words, DateWords.Span(days));
}
