using CsCheck;
using NodaTime;
using PaperFlock.Planning;
using PaperFlock.Sheets.Tests.WorstCases;

namespace PaperFlock.Sheets.Tests.Parts;

/// <summary>A colour a cycle of 17 days, light to dark: common practice, no source; 17 days is the ewe's cycle.</summary>
public sealed class RaddlePeriodTests
{
    [Fact]
    public void A_stay_of_two_cycles_and_a_half_takes_three_colours()
    {
        var group = Composed.PlanOf(new FlockText { Groups = ["{name: A, raddle: [yellow, orange, red]}"] }.ToString(), new(2026, 8, 1)).Groups[0].Group;
        RaddlePeriod[] expected =
        [
            new("yellow", new(2026, 8, 10), new(2026, 8, 26)),
            new("orange", new(2026, 8, 27), new(2026, 9, 12)),
            new("red", new(2026, 9, 13), new(2026, 9, 21)),
        ];
        Assert.Equal(expected, RaddlePeriod.Of(group, 17));
    }

    [Fact]
    public void Periods_cover_the_stay_without_a_gap_and_colours_come_round_again() =>
        Gen.Select(Gen.Int[1, 180], Gen.Int[10, 21], Gen.Int[1, 5]).Sample((stay, changeover, colours) =>
        {
            var tupIn = new LocalDate(2026, 8, 10);
            var names = Enumerable.Range(1, colours).Select(i => $"colour {i}").ToArray();
            var text = new FlockText
            {
                Season = $"tup-in: 2026-08-10\ntup-out: {tupIn.PlusDays(stay):uuuu-MM-dd}",
                Groups = [$"{{name: A, raddle: [{string.Join(", ", names)}]}}"],
            };
            var group = Composed.PlanOf(text.ToString(), new(2026, 8, 1)).Groups[0].Group;
            var periods = RaddlePeriod.Of(group, changeover);

            Assert.Equal(tupIn, periods[0].From);
            Assert.Equal(group.TupOut, periods[^1].To);
            for (var i = 0; i < periods.Length; i++)
            {
                Assert.True(periods[i].From <= periods[i].To);
                Assert.Equal(names[i % colours], periods[i].Colour);
                Assert.True(i == 0 || periods[i].From == periods[i - 1].To.PlusDays(1));
                Assert.True(i + 1 == periods.Length || Period.DaysBetween(periods[i].From, periods[i].To) == changeover - 1);
            }
        }, iter: 100);
}
