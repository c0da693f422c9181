using PaperFlock.Sheets.Tests.PaperRules;

namespace PaperFlock.Sheets.Tests.Properties;

public sealed class AnyFlockTests
{
    [Fact]
    public void Any_flock_that_reads_makes_a_pack_with_a_card_for_every_ewe() =>
        AnyFlock.Each(few: 24, drawn =>
        {
            Composed composed = drawn.Flock.On(drawn.AsOf);
            Assert.Empty(Cards.NotOneEach(composed));
            PaperCheck.Keeps(composed);
        });
}
