using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Rounds;

namespace PaperFlock.Planning.Tests.Rounds;

/// <summary>Rounds where nobody has said where the sheep are: by the clock, since nothing is known of the sun.</summary>
public class RoundsByClockTests
{
    private static readonly LocalDate Midsummer = new(2026, 6, 21);

    [Theory]
    [InlineData(4, "07:00 12:00 17:00 22:00")]
    [InlineData(2, "07:00 22:00")]
    public void They_keep_fixed_times_all_year(int checks, string times)
    {
        Assert.Equal(times, Times(Sample.Practice(), Midsummer, checks));
        Assert.Equal(times, Times(Sample.Practice(), Midsummer.PlusMonths(6), checks));
    }

    [Fact]
    public void The_keepers_own_times_come_first() =>
        Assert.Equal("07:30 12:00 17:00 20:30", Times(Sample.Practice() with { LastRound = new LocalTime(20, 30), FirstRoundNotBefore = new LocalTime(7, 30) }, Midsummer, 4));

    private static string Times(Practice practice, LocalDate date, int checks) =>
        string.Join(' ', new RoundTimes(practice).For(date, null, checks, [], 0).Select(r => r.At.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture)));
}
