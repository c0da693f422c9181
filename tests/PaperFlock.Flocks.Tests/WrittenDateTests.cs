using NodaTime;
using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Tests;

/// <summary>Dates as people write them.</summary>
public sealed class WrittenDateTests
{
    [Theory]
    [InlineData("14", 14, 0)]
    [InlineData("14th", 14, 0)]
    [InlineData("14 feb", 14, 2)]
    [InlineData("14feb", 14, 2)]
    [InlineData("3rd of", 0, 0)]
    [InlineData("14 February", 14, 2)]
    [InlineData("feb 14", 14, 2)]
    [InlineData("Sept. 1st", 1, 9)]
    [InlineData("14-feb", 14, 2)]
    [InlineData("feb 14 mar", 0, 0)]
    [InlineData("14 fe", 0, 0)]
    [InlineData("14 febr-15", 0, 0)]
    [InlineData("14 octopus", 0, 0)]
    [InlineData("140", 0, 0)]
    [InlineData("", 0, 0)]
    public void A_day_without_its_year_may_have_its_month_either_side(string text, int day, int month) =>
        Assert.Equal(day == 0 ? null : (day, month == 0 ? null : (int?)month), WrittenDate.ReadWithoutYear(text));

    [Theory]
    [InlineData("2026-08-10", "2026-08-10", "2026-08-10")]
    [InlineData("10/8/26", "2026-08-10", "2026-10-08")]
    [InlineData("25.12.2026", "2026-12-25", "")]
    [InlineData("August 10, 2026", "2026-08-10", "2026-08-10")]
    [InlineData("10th Aug 2026", "2026-08-10", "2026-08-10")]
    [InlineData("20260810", "2026-08-10", "2026-08-10")]
    [InlineData("31/31/2026", "", "")]
    [InlineData("10 Aug", "", "")]
    public void A_whole_date_is_read_both_ways_about(string text, string dayFirst, string monthFirst) =>
        Assert.Equal((Day(dayFirst), Day(monthFirst)), WrittenDate.Read(text));

    /// <summary>The likeliest first; weekdays by a calendar.</summary>
    [Theory]
    [InlineData("2026-11-25", "2026-11-25")]
    [InlineData("5/11/2026", "2026-11-05 2026-05-11")]
    [InlineData("25/11/2026", "2026-11-25")]
    [InlineData("26-10-20", "2026-10-20 2020-10-26")]
    [InlineData("Wed 25 Nov 2026", "2026-11-25")]
    [InlineData("wednesday, 25 November 2026", "2026-11-25")]
    [InlineData("Thu 25 Nov 2026", "")]
    [InlineData("Thu 5/11/2026", "2026-11-05")]
    [InlineData("25/11/2026 00:00:00", "2026-11-25")]
    [InlineData("2026\u201311\u201325", "2026-11-25")]
    [InlineData("25\u00a0Nov\u00a02026", "2026-11-25")]
    [InlineData("soon", "")]
    public void Every_day_that_a_text_may_mean_is_given(string text, string days) =>
        Assert.Equal(days, string.Join(' ', WrittenDate.Days(text).Select(NodaTime.Text.LocalDatePattern.Iso.Format)));

    private static LocalDate? Day(string iso) => iso.Length == 0 ? null : NodaTime.Text.LocalDatePattern.Iso.Parse(iso).Value;
}
