using NodaTime;
using PaperFlock.Planning;
using PaperFlock.Sheets.Issues;
using PaperFlock.Sheets.Tests.Properties;
using PaperFlock.Sheets.Tests.WorstCases;

namespace PaperFlock.Sheets.Tests.Parts;

/// <summary>Whoever counts by the log counts every ewe, and writes down every feed.</summary>
public sealed class RoundLogTests
{
    [Fact]
    public void Every_place_of_a_day_is_named_on_its_leaf_and_every_feed_has_room() => AnyFlock.Each(few: 16, drawn =>
    {
        var composed = drawn.Flock.On(drawn.AsOf);
        var plan = composed.Plan;
        foreach (var sheet in composed.InHand.Sides.Where(s => s.Sheet.Kind == "log").GroupBy(s => s.Sheet.Code))
        {
            var words = sheet.SelectMany(s => s.Ink.Words).Select(w => w.Text.Replace('\u00a0', ' ')).ToList();
            var said = string.Concat(words).Replace(" ", "", StringComparison.Ordinal);
            var days = plan.Rounds.Where(r => words.Contains(DateText.Loose(r.Date))).ToList();
            Assert.NotEmpty(days);
            foreach (var place in days.SelectMany(d => plan.Whereabouts.On(d.Date)).Select(p => p.Place).Where(p => p.Kind != PlaceKind.Gone).Distinct())
            {
                Assert.Contains(Called(place).Replace(" ", "", StringComparison.Ordinal), said, StringComparison.Ordinal);
            }

            var feeds = days.Sum(d => plan.Feeding.On(d.Date).Where(t => t.Kind is not null).Sum(t => plan.Feeding.FedAt(t.Chart, d.Date).Count()));
            Assert.InRange(feeds, 0, words.Count(w => w is "kg" or "lb"));
        }
    });

    [Fact]
    public void Twelve_places_have_a_row_each_and_boxes_wide_enough_for_a_glove()
    {
        var composed = new FlockText
        {
            Groups = [.. Enumerable.Range(1, 12).Select(n => $"{{name: Meadow {n}}}")],
            Ewes = FlockText.Many(48, n => $"group: Meadow {1 + (n % 12)}, scan: 2"),
            Housing = "lambing: outdoors",
        }.On(new(2026, 12, 20));
        var log = composed.InHand.Sides.First(s => s.Sheet.Kind == "log");
        Assert.All(Enumerable.Range(1, 12), n => Assert.Contains(log.Ink.Words, w => w.Text.Replace('\u00a0', ' ') == $"Meadow {n}"));
        PaperRules.PaperCheck.Keeps(composed);
    }

    /// <summary>First light at 07:40 and late at 21:30 leave 10 h 10 min of the night.</summary>
    [Theory]
    [InlineData("checks-per-day: {heavy: 2, lambing: 2}", true)]
    [InlineData("", false)]
    public void A_lambing_night_on_which_nobody_looks_for_long_is_named(string practice, bool named)
    {
        var log = new FlockText { Practice = practice, Ewes = [FlockText.Ewe(1, "marks: [2026-08-14], scan: 2")] }.On(new(2027, 1, 4)).InHand.Sides.First(s => s.Sheet.Kind == "log");
        Assert.Equal(named, string.Concat(log.Ink.Words.Select(w => w.Text)).Contains("nobody looks from", StringComparison.Ordinal));
    }

    [Fact]
    public void A_lambing_changes_no_leaf_of_the_log()
    {
        const string file = "hollin-bank";
        var text = Composed.SampleText(file);
        var before = Composed.Of(text, new(2027, 1, 6));
        var after = Composed.Of(text.Replace("    note: Needs a quiet corner", "    lambed: 2027-01-05\n    note: Needs a quiet corner", StringComparison.Ordinal), new(2027, 1, 6));
        Assert.Contains(after.Plan.Ewes, e => e.Standing == Standing.Lambed);
        var day = new LocalDate(2027, 1, 6);
        Assert.All(Logs(before).Zip(Logs(after)), pair => Assert.True(pair.First.SaysOn(day, pair.Second), pair.First.Label));
        Assert.Equal(Logs(before).Count(), Logs(after).Count());

        static IEnumerable<Leaf> Logs(Composed composed) => composed.Pack.Sheets.Where(s => s.Kind == "log").SelectMany(s => Leaves.Of(s));
    }

    private static string Called(Place place) => place.Kind switch
    {
        PlaceKind.LambingPen => "pens",
        PlaceKind.WithLambs when place.Name is null => "with lambs",
        _ => FeedText.Place(place),
    };
}
