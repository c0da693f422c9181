using NodaTime;
using PaperFlock.Sheets.Tests.WorstCases;

namespace PaperFlock.Sheets.Tests.Parts;

/// <summary>Who the printed log says is due on a day, and who is to be watched on it.</summary>
public sealed class WatchedEwesTests
{
    private static readonly LocalDate First = new(2027, 1, 1);

    /// <summary>
    /// Marked on 14 August and carrying for 147 days Bracken is due on 8 January, and nine in ten such ewes lamb from the 4th to the 12th: 1.64 times a spread of 2.5 days is
    /// four days either way. Sorrel, marked ten days later, is ten days later all through. Nobody may lamb on the 13th.
    /// </summary>
    [Fact]
    public void A_ewe_is_watched_from_the_first_day_of_her_nine_in_ten_to_the_last_and_due_on_one()
    {
        var log = Log(new FlockText
        {
            Ewes = [FlockText.Ewe(1, "marks: [2026-08-14], scan: 2", "Bracken"), FlockText.Ewe(2, "marks: [2026-08-24], scan: 2", "Sorrel")],
        });
        Assert.Equal(Days(8), log.DueDays("Bracken"));
        Assert.Equal(Days(18), log.DueDays("Sorrel"));
        Assert.Equal(Days([.. Enumerable.Range(4, 9).Where(d => d != 8)]), log.WatchedDays("Bracken"));
        Assert.Equal(Days([.. Enumerable.Range(14, 9).Where(d => d != 18)]), log.WatchedDays("Sorrel"));
    }

    private static string[] Days(params int[] january) => [.. january.Select(d => First.PlusDays(d - 1).ToString("ddd d MMM", null))];

    /// <summary>The head of each day on the log: the day, the sun, and on their line whoever is due and to be watched.</summary>
    private static PrintedLog Log(FlockText flock) => new(
    [
        .. from side in flock.On(new(2026, 12, 20)).InHand.Sides
           where side.Sheet.Kind == "log"
           let words = side.Ink.Words
           from at in Enumerable.Range(1, words.Length - 1)
           where Plain(words[at].Text).StartsWith("sun ", StringComparison.Ordinal)
           select (Plain(words[at - 1].Text), string.Concat(words.Skip(at + 1).TakeWhile(w => w.Baseline == words[at].Baseline).Select(w => Plain(w.Text)))),
    ]);

    private static string Plain(string words) => words.Replace('\u00a0', ' ');

    private sealed record PrintedLog((string Day, string Said)[] Heads)
    {
        public string[] DueDays(string name) => [.. Heads.Where(h => Due(h.Said).Contains(name, StringComparison.Ordinal)).Select(h => h.Day)];

        public string[] WatchedDays(string name) =>
            [.. Heads.Where(h => h.Said[Due(h.Said).Length..].Contains(name, StringComparison.Ordinal)).Select(h => h.Day)];

        private static string Due(string said) => said.Split("; ")[0];
    }
}
