using PaperFlock.Planning;
using PaperFlock.Planning.Tests;

namespace PaperFlock.Sheets.Tests.Text;

public sealed class RoundTextTests
{
    [Theory]
    [InlineData(PartOfDay.FirstLight, 1, "first light")]
    [InlineData(PartOfDay.Midday, 2, "midday 2")]
    [InlineData(PartOfDay.Late, 1, "late")]
    public void A_round_has_a_name_of_its_own(PartOfDay part, int number, string name) => Assert.Equal(name, RoundText.Name(new Round(new(12, 0), part, number)));

    [Theory]
    [InlineData(RoundReason.NoneInLamb, "no ewe is in lamb")]
    [InlineData(RoundReason.OutsideHeavyWeeks, "outside the heavy weeks")]
    [InlineData(RoundReason.HeavyWeeks, "the heavy weeks, from 6 weeks before the first is due until the last has most likely lambed")]
    public void A_day_says_why_there_are_so_many(RoundReason reason, string words) => Assert.Equal(words, RoundText.Why(reason, Sample.Practice()));
}
