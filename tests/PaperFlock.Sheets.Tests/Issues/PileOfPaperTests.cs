using CsCheck;
using NodaTime;
using PaperFlock.Sheets.Issues;
using PaperFlock.Sheets.Tests.WorstCases;

namespace PaperFlock.Sheets.Tests.Issues;

/// <summary>However a flock changes, a binder kept up with changed leaves holds what a whole pack would.</summary>
public sealed class PileOfPaperTests
{
    private static readonly Gen<Edit> Edits = Gen.Select(Gen.Int[0, 8], Gen.Int[0, 99], Gen.Int[0, 40], (what, which, days) => new Edit(what, which, days));

    [Fact]
    public void Any_edits_in_any_order_keep_the_pile_equal_to_a_whole_pack() =>
        Gen.Select(Gen.Int[1, 9], Gen.Int[0, 240], Edits.Array[2, 4], Gen.Int[0, 3]).Sample((ewes, start, edits, print) =>
        {
            var flock = SmallFlock.Of(ewes, print);
            var day = new LocalDate(2026, 7, 1).PlusDays(start);
            var pile = new Pile();
            pile.Keep(flock.Text, day);
            foreach (var edit in edits)
            {
                day = day.PlusDays(edit.Days);
                flock = flock.Edited(edit, day);
                pile.Keep(flock.Text, day);
                Assert.True(pile.Keep(flock.Text, day).IsNothing, "what has been printed is printed again");
            }
        }, iter: 10, threads: 2);

    [Fact]
    public void A_ewe_more_changes_no_other_card_and_a_ewe_less_takes_hers_out()
    {
        var day = new LocalDate(2026, 9, 1);
        var flock = SmallFlock.Of(6, 0);
        var pile = new Pile();
        pile.Keep(flock.Text, day);
        var more = pile.Keep(flock.Edited(new Edit(3, 0, 0), day).Text, day);
        Assert.Equal(["CARD-00007"], more.PutIn.Where(l => l.Leaf.Id.StartsWith("CARD", StringComparison.Ordinal)).Select(l => l.Leaf.Id));
        // A class that grows may no longer share a side with another.
        Assert.DoesNotContain(more.TakenOut, l => !l.Leaf.Id.StartsWith("FEED-", StringComparison.Ordinal));
        var less = pile.Keep(flock.Text, day);
        Assert.Equal(["CARD-00007"], less.TakenOut.Select(l => l.Leaf.Id).Where(id => !id.StartsWith("FEED-", StringComparison.Ordinal)));
        Assert.DoesNotContain(less.PutIn, l => l.Leaf.Id.StartsWith("CARD", StringComparison.Ordinal));
    }

    [Fact]
    public void Days_that_pass_change_nothing_and_bring_sheets_whose_time_has_come()
    {
        var flock = SmallFlock.Of(5, 1);
        var pile = new Pile();
        var first = new LocalDate(2026, 8, 20);
        pile.Keep(flock.Text, first);
        foreach (var days in new[] { 1, 6, 17, 60, 100, 140, 180 })
        {
            var day = first.PlusDays(days);
            var issue = pile.Keep(flock.Text, day);
            Assert.True(issue.TakenOut.IsEmpty && issue.PutIn.All(l => l.Fate == LeafFate.Added && l.Leaf.Id.Split(' ', '-')[0] is "SCAN" or "DUE" or "WALL"), $"after {days} days: {string.Join("; ", issue.PutIn.Select(l => $"{l.Leaf.Id}: {string.Join(", ", l.Changes.Select(c => c.Words(day)))}"))}");
        }
    }

    /// <param name="What">Which of the things that happen to a flock.</param>
    /// <param name="Which">Ewe.</param>
    /// <param name="Days">Until it is printed.</param>
    internal sealed record Edit(int What, int Which, int Days);

    private sealed record SmallFlock(ImmutableSortedDictionary<int, ImmutableSortedDictionary<string, string>> Ewes, string[] Away, string Feeds, string Print)
    {
        private static readonly LocalDate[] TupIn = [new(2026, 8, 10), new(2026, 8, 24)];

        public string Text => new FlockText
        {
            Groups = [.. TupIn.Select((day, n) => $"{{name: G{n}, tup-in: {day:R}, tup-out: {day.PlusDays(42):R}}}")],
            Ewes = Ewes.Select(e => FlockText.Ewe(e.Key, string.Join(", ", e.Value.Select(k => $"{k.Key}: {k.Value}")), e.Key % 4 == 3 ? null : $"Ewe {(char)('A' + e.Key)}")),
            Away = Away,
            Feeds = Feeds,
            Pens = ["{name: Bay 1, length: 6 m, width: 4 m}"],
            Print = Print,
        }.ToString();

        public static SmallFlock Of(int ewes, int print) => new(
            Enumerable.Range(1, ewes).ToImmutableSortedDictionary(n => n, n => Newcomer(n % 2)),
            ["{from: 2026-12-20, to: 2026-12-27, sitter: Tom Birkett}"],
            "",
            "log-weeks: 52" + print switch { 0 => "", 1 => "\npaper: Letter\nplanner: Letter\ngloves: false", 2 => "\nduplex: short-edge", _ => "\nduplex: single-sided\nunits: both" });

        /// <summary>What happens to a ewe happens to her on days her group could have had, and not before it has come to that; otherwise she is weighed.</summary>
        public SmallFlock Edited(Edit edit, LocalDate day)
        {
            var tag = Ewes.Keys.ElementAt(edit.Which % Ewes.Count);
            var marked = TupIn[Ewes[tag]["group"] == "G0" ? 0 : 1].PlusDays(10);
            var lambs = marked.PlusDays(145 + (edit.Which % 5));
            return edit.What switch
            {
                0 when day >= marked.PlusDays(70) && !Has(tag, "lambed") => With(tag, "scan", (edit.Which % 4).ToString(CultureInfo.InvariantCulture)),
                1 when day >= marked => With(tag, "marks", $"[{marked:R}]"),
                2 when Ewes.Count > 1 => this with { Ewes = Ewes.Remove(tag) },
                3 => this with { Ewes = Ewes.Add(Ewes.Keys.Max() + 1, Newcomer(edit.Which % 2)) },
                4 => With(tag, "note", $"\"look at her, {edit.Which}\""),
                5 when Away.Length < 2 => this with { Away = [.. Away, "{from: 2027-01-20, to: 2027-01-22}"] },
                6 => this with { Feeds = Feeds.Length == 0 ? "method: energy-balance" : "" },
                7 when day >= lambs && !IsEmpty(tag) => With(tag, "lambed", $"{lambs:R}"),
                _ => With(tag, "weight", $"{60 + (edit.Which % 30)} kg"),
            };
        }

        private static ImmutableSortedDictionary<string, string> Newcomer(int group) =>
            ImmutableSortedDictionary<string, string>.Empty.Add("group", $"G{group}");

        private bool Has(int tag, string key) => Ewes[tag].ContainsKey(key);

        private bool IsEmpty(int tag) => Ewes[tag].GetValueOrDefault("scan") == "0";

        private SmallFlock With(int tag, string key, string value) => this with { Ewes = Ewes.SetItem(tag, Ewes[tag].SetItem(key, value)) };
    }
}
