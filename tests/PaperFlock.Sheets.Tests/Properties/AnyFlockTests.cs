using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Reading;
using PaperFlock.Sheets.Tests.PaperRules;

namespace PaperFlock.Sheets.Tests.Properties;

public sealed class AnyFlockTests
{
    [Fact]
    public void A_drawn_flock_may_exist_on_its_day() =>
        AnyFlock.Each(few: 400, drawn =>
        {
            var reading = FlockReader.Read(new SourceText("flock.yaml", drawn.Flock.ToString()), _ => drawn.AsOf);
            Assert.DoesNotContain(reading.Diagnostics, d => d.Severity == Severity.Error);
        });

    [Fact]
    public void Any_flock_that_reads_makes_a_pack_with_a_card_for_every_ewe() =>
        AnyFlock.Each(few: 24, drawn =>
        {
            Composed composed = drawn.Flock.On(drawn.AsOf);
            Assert.Empty(Cards.NotOneEach(composed));
            PaperCheck.Keeps(composed);
        });
}
