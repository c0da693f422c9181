namespace PaperFlock.Sheets.Tests.Parts;

public sealed class CardRationTests
{
    /// <summary>Fed for ten weeks she has more steps than the card has room for: the last are printed, and with them the largest.</summary>
    [Fact]
    public void The_last_steps_of_a_long_ration_are_printed_and_not_the_first()
    {
        var composed = Composed.Of(
            """
            paperflock: 1
            holding: {name: Hollin Bank, location: {latitude: 54.46, longitude: -2.74}, time-zone: Europe/London}
            season: {tup-in: 2026-08-10}
            practice: {feed-weeks-before-lambing: 10}
            ewes:
              - {tag: ZZ 0123456 00101, name: Bracken, weight: 72 kg, marks: [2026-08-14], scan: 2}
              - {tag: ZZ 0123456 00102, name: Tansy, weight: 72 kg, marks: [2026-08-15], scan: 2}
            """, new(2026, 10, 25));
        var rows = composed.Plan.Feeding.Charts.Single().Rows;
        var steps = rows.Where((r, i) => i == 0 || rows[i - 1].KgPerEwePerDay != r.KgPerEwePerDay).ToList();
        Assert.True(steps.Count > 8, $"{steps.Count} steps fit the card");

        var words = composed.InHand.Sides.Where(s => s.IsCards).SelectMany(s => s.Ink.Words).Select(w => w.Text).ToList();
        Assert.Contains(DateText.Short(steps[^1].From), words);
        Assert.Contains(steps[^1].KgPerEwePerDay.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture), words);
        Assert.DoesNotContain(DateText.Short(steps[0].From), words);
    }
}
