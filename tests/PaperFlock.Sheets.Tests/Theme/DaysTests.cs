using NodaTime;

namespace PaperFlock.Sheets.Tests.Theme;

/// <summary>Weekdays: 4 January 2027 is a Monday and 29 February 2028 a Tuesday, by the day-of-week rule of ISO 8601 and any printed calendar.</summary>
public sealed class DaysTests
{
    [Fact]
    public void A_date_carries_its_weekday_and_its_month_in_letters()
    {
        var day = new LocalDate(2027, 1, 4);
        Assert.Equal("4 Jan", Plain(DateText.DayMonth(day)));
        Assert.Equal("Mon 4 Jan", Plain(DateText.Short(day)));
        Assert.Equal("Mon 4", Plain(DateText.WeekdayNumber(day)));
        Assert.Equal("Mon 4 Jan 2027", Plain(DateText.Long(day)));
        Assert.Equal("04JAN", DateText.Code(day));
    }

    [Fact]
    public void A_leap_day_is_a_day_like_any_other()
    {
        var day = new LocalDate(2028, 2, 29);
        Assert.Equal("Tue 29 Feb 2028", Plain(DateText.Long(day)));
        Assert.Equal("29FEB", DateText.Code(day));
    }

    [Fact]
    public void Every_day_of_a_year_has_a_code_of_its_own()
    {
        var days = Enumerable.Range(0, 366).Select(new LocalDate(2028, 1, 1).PlusDays).Select(DateText.Code).ToArray();
        Assert.Equal(days.Length, days.Distinct().Count());
    }

    [Theory]
    [InlineData(IsoDayOfWeek.Monday, "Mon")]
    [InlineData(IsoDayOfWeek.Tuesday, "Tue")]
    [InlineData(IsoDayOfWeek.Thursday, "Thu")]
    [InlineData(IsoDayOfWeek.Saturday, "Sat")]
    [InlineData(IsoDayOfWeek.Sunday, "Sun")]
    public void A_weekday_has_three_letters(IsoDayOfWeek day, string expected) => Assert.Equal(expected, DateText.Weekday(day));

    [Theory]
    [InlineData(7, 5, "07:05")]
    [InlineData(0, 0, "00:00")]
    [InlineData(21, 30, "21:30")]
    public void The_clock_has_24_hours(int hour, int minute, string expected) => Assert.Equal(expected, DateText.Clock(new LocalTime(hour, minute)));

    [Fact]
    public void A_date_never_breaks_over_lines() => Assert.DoesNotContain(' ', DateText.Long(new LocalDate(2027, 1, 4)));

    private static string Plain(string words) => words.Replace('\u00a0', ' ');
}
