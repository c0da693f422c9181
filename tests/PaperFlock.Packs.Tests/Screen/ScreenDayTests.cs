using PaperFlock.Packs.Screen;

namespace PaperFlock.Packs.Tests.Screen;

/// <summary>Days as people type them. Weekdays are those of a printed calendar of 2026 and 2027.</summary>
public sealed class ScreenDayTests
{
    [Theory]
    [InlineData("2027-01-08", "2026-11-25", "2027-01-08", "Fri 8 Jan 2027")]
    [InlineData("Fri 8 Jan 2027", "2026-11-25", "2027-01-08", "Fri 8 Jan 2027")]
    [InlineData("friday, 8 january 2027", "2026-11-25", "2027-01-08", "Fri 8 Jan 2027")]
    [InlineData("today", "2026-11-25", "2026-11-25", "Wed 25 Nov 2026")]
    [InlineData("Yesterday", "2027-01-01", "2026-12-31", "Thu 31 Dec 2026")]
    [InlineData("28 Dec", "2027-01-05", "2026-12-28", "Mon 28 Dec 2026")]
    [InlineData("8 Jan", "2026-11-25", "2027-01-08", "Fri 8 Jan 2027")]
    [InlineData("14 Aug", "2026-11-25", "2026-08-14", "Fri 14 Aug 2026")]
    [InlineData("29 Feb", "2027-03-01", "2028-02-29", "Tue 29 Feb 2028")]
    public void A_day_is_read_as_it_is_meant(string typed, string today, string iso, string words)
    {
        var day = ScreenDay.Read(typed, today)["day"]!;
        Assert.Equal((iso, words), (day["iso"]!.GetValue<string>(), day["words"]!.GetValue<string>()));
    }

    [Fact]
    public void What_could_be_two_days_is_asked_about() =>
        Assert.Equal(["Thu 3 Sep 2026", "Mon 9 Mar 2026"], ScreenDay.Read("3/9/26", "2026-11-25")["either"]!.AsArray().Select(d => d!["words"]!.GetValue<string>()));

    [Theory]
    [InlineData("31 September")]
    [InlineData("30 Feb")]
    [InlineData("Thu 8 Jan 2027")]
    [InlineData("soon")]
    [InlineData("")]
    public void What_is_no_day_is_none(string typed) => Assert.Empty(ScreenDay.Read(typed, "2026-11-25"));
}
