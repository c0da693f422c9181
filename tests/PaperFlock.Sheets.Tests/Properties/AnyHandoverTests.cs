using System.Text.RegularExpressions;
using NodaTime;
using NodaTime.Text;
using PaperFlock.Pdf;
using PaperFlock.Planning;
using PaperFlock.Sheets.FeedCharts;
using PaperFlock.Sheets.Handover;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Sheets.Tests.Properties;

/// <summary>What is handed over, held against the feed charts, the cards and where everyone is; as it is printed.</summary>
public sealed partial class AnyHandoverTests
{
    [Fact]
    public void Every_ewe_is_on_the_roll_and_in_one_block_on_every_day() => Each((plan, stay, sheets) =>
    {
        var parts = Parts(plan, stay);
        var rows = sheets["handover"];
        var roll = rows.Where(r => r.Key.Kind == RowKind.Ewe && r.Cells.Length > 1).Select(r => r.Key.Name).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(plan.Ewes.Select(e => RowKey.Of(e.Ewe).Name).Order(StringComparer.Ordinal), roll);

        var named = rows.Where(r => r.Key.Kind == RowKind.Ewe && r.Cells.Length == 1).Select(r => r.Key.Name)
            .Concat(Amounts(rows).Select(r => r.Key.Name[(r.Key.Name.LastIndexOf(", ", StringComparison.Ordinal) + 2)..]).Where(last => roll.Contains(last)));
        Assert.Equal(Enumerable.Repeat(roll, parts.Count).SelectMany(r => r).Order(StringComparer.Ordinal), named.Order(StringComparer.Ordinal));
    });

    [Fact]
    public void A_block_is_a_trough_of_the_plan_on_each_of_its_days() => Each((plan, stay, _) =>
    {
        foreach (var part in Parts(plan, stay))
        {
            for (var day = part.From; day <= part.To; day = day.PlusDays(1))
            {
                var fed = plan.Feeding.On(day).Where(t => t.Kind is not null && plan.Feeding.Charts.First(c => c.Code == t.Chart).On(day) is { FedAt.IsEmpty: false });
                var blocks = part.Companies.Where(c => c.Feeds(day, day).Any(f => !f.FedAt.IsEmpty));
                Assert.Equal(
                    fed.Select(t => $"{t.Place} {t.Chart} {string.Join(' ', t.Ewes.Select(e => e.Tag))}").Order(StringComparer.Ordinal),
                    blocks.Select(c => $"{c.Place} {c.Chart!.Code} {string.Join(' ', c.Ewes.Select(e => e.Ewe.Tag))}").Order(StringComparer.Ordinal));
            }
        }
    });

    /// <summary>Feed chart and card are printed from the same figures: cell by cell they say the same as the handover.</summary>
    [Fact]
    public void Handover_feed_chart_and_card_agree_cell_by_cell() => Each((plan, stay, sheets) =>
    {
        var chartCells = plan.Feeding.Charts.Where(c => !c.IsForageOnly).SelectMany(c => ChartCells(c, sheets.Feed)).ToDictionary(c => c.Key, c => c.Amount);
        var printed = Amounts(sheets["handover"]).ToLookup(r => r.Key.Name, r => r.Cells.Select(c => c.Words).ToList());
        foreach (var part in Parts(plan, stay))
        {
            foreach (var company in part.Companies.Where(c => c.Feeds(part.From, part.To).Any(f => !f.FedAt.IsEmpty)))
            {
                var title = $"{FeedText.Place(company.Place)} {FeedText.Class(company.Chart!, plan.Feeding)}";
                var feeds = company.Feeds(part.From, part.To);
                foreach (var (word, heads) in Rows(company))
                {
                    var cells = feeds.Select(f => f.FedAt.IsEmpty ? "\u2013" : chartCells.GetValueOrDefault((company.Chart!.Code, f.From, heads))).ToList();
                    if (cells.All(c => c is not null))
                    {
                        Assert.Contains(printed[Wording.Tidy($"{title}, {word}")], row => row.Skip(1).Take(feeds.Length).SequenceEqual(cells));
                    }
                }
            }
        }

        foreach (var card in plan.Ewes.Where(e => e.IsCarrying && plan.Feeding.ChartOf(e) is { IsForageOnly: false }))
        {
            var said = sheets[$"card {card.Ewe.Tag}"].SelectMany(r => r.Cells).Select(c => c.Words).ToList();
            // On a crowded card the ration gives way.
            foreach (var step in !said.Any(w => w.Contains("ed by FEED", StringComparison.Ordinal)) ? [] : plan.Feeding.ChartOf(card)!.Steps.TakeLast(2).Where(s => !s.FedAt.IsEmpty))
            {
                if (chartCells.GetValueOrDefault((card.Chart!, step.From, 1)) is { } one)
                {
                    Assert.Contains(said, words => words.Contains($"{one} {FeedText.Times(step.FedAt.Length)}", StringComparison.Ordinal) || words.Contains($"{one} {sheets.Unit} from", StringComparison.Ordinal));
                }
            }
        }
    });

    [Fact]
    public void No_amount_has_a_zero_too_many_and_a_ewe_has_one_due_date() => Each((plan, _, sheets) =>
    {
        foreach (var row in sheets.All.Where(r => r.Key.Kind == RowKind.Ration))
        {
            Assert.All(row.Cells, c => Assert.DoesNotMatch(TrailingZero(), c.Words));
        }

        foreach (var ewe in plan.Ewes.Where(e => e.Due is not null))
        {
            var due = DateText.Loose(ewe.Due!.Likely);
            Assert.Equal(due, Assert.Single(sheets["handover"], r => r.Key.Id == ewe.Ewe.Tag && r.Cells.Length > 1).Cells[^2].Words);
            Assert.Contains(sheets[$"card {ewe.Ewe.Tag}"], r => r.Cells[0].Words == due);
        }
    });

    [Fact]
    public void What_is_called_a_feed_is_a_round_and_each_feed_has_one() => Each((plan, stay, sheets) =>
    {
        var part = Parts(plan, stay)[0];
        if (plan.Rounds.FirstOrDefault(r => r.Date == part.From) is not { } day)
        {
            return;
        }

        var said = sheets["handover"].Select(r => r.Cells[0].Words).First(w => RoundWord().IsMatch(w));
        var rounds = RoundWord().Matches(said).Select(m => (At: m.Groups[1].Value, IsFeed: m.Groups[2].Value == "FEED")).ToList();
        Assert.Equal(day.Times.Select(t => DateText.Clock(t.At)), rounds.Select(r => r.At));
        var most = part.Companies.SelectMany(c => c.Feeds(part.From, part.To)).Select(f => f.FedAt.Length).DefaultIfEmpty(0).Max();
        Assert.InRange(rounds.Count(r => r.IsFeed), Math.Min(most, rounds.Count), rounds.Count);
    });

    private static List<StayPart> Parts(SeasonPlan plan, DateInterval stay) =>
        [.. StayPart.Of(plan, stay.Start, stay.End).Where(p => p.To >= plan.AsOf)];

    private static IEnumerable<LeafRow> Amounts(IEnumerable<LeafRow> rows) => rows.Where(r => r.Key.Kind == RowKind.Ration && r.Key.Name.Contains(", ", StringComparison.Ordinal) && !r.Key.Name.StartsWith("1st", StringComparison.Ordinal));

    private static IEnumerable<(string Word, int Heads)> Rows(Company company) => company.Ewes.Length switch
    {
        1 => [(company.Ewes[0].Ewe.CallName, 1)],
        2 => [("both", 2), .. company.Ewes.Select(e => (e.Ewe.CallName, 1))],
        var many => ReckonerTable.HeadsAcross(many).Select(h => h == 0 ? ("each", 1) : (h.ToString(CultureInfo.InvariantCulture), h)),
    };

    private static IEnumerable<((string Chart, LocalDate From, int Heads) Key, string Amount)> ChartCells(FeedChart chart, IEnumerable<LeafRow> rows)
    {
        var heads = ReckonerTable.HeadsAcross(chart.MostHeads);
        return
            from row in rows
            where row.Key.Kind == RowKind.Ration && row.Key.Id.StartsWith($"{chart.Code} ", StringComparison.Ordinal)
            from column in Enumerable.Range(0, heads.Length)
            select ((chart.Code, LocalDatePattern.Iso.Parse(row.Key.Id[(chart.Code.Length + 1)..]).Value, Math.Max(1, heads[column])), row.Cells[3 + column].Words);
    }

    /// <summary>A stay that begins on the day of the pack, in the weeks in which ewes are fed, come in and lamb.</summary>
    private static void Each(Action<SeasonPlan, DateInterval, Sheets> test) => AnyFlock.Each(few: 30, drawn =>
    {
        var first = Composed.PlanOf(drawn.Flock.ToString(), drawn.AsOf);
        var fed = first.Feeding.Charts.Select(c => c.Start).DefaultIfEmpty(first.From).Min().PlusDays(first.Ewes.Length * 5 % 60);
        var from = LocalDate.Max(drawn.AsOf, fed);
        var stay = new DateInterval(from, from.PlusDays(first.Ewes.Length * 7 % 16));
        var flock = drawn.Flock with { Away = [$"{{from: {LocalDatePattern.Iso.Format(stay.Start)}, to: {LocalDatePattern.Iso.Format(stay.End)}, sitter: Tom Birkett}}"] };
        var plan = Composed.PlanOf(flock.ToString(), drawn.AsOf);
        test(plan, stay, new Sheets(plan));
    });

    [GeneratedRegex(@"\d\.\d*0(?!\d)")]
    private static partial Regex TrailingZero();

    [GeneratedRegex(@"(\d\d:\d\d) (FEED|look)")]
    private static partial Regex RoundWord();

    /// <summary>Rows by sheet: of the handover by its kind, of feed charts by theirs, of cards by their tags.</summary>
    private sealed class Sheets
    {
        private readonly Dictionary<string, List<LeafRow>> _rows;

        public Sheets(SeasonPlan plan)
        {
            var pack = PackComposer.Compose(plan, FontLibrary.Measurer, new PackRequest(["handover", "feed", "cards"]));
            _rows = pack.Sheets.SelectMany(s => Leaves.Of(s).Select(leaf => (s.Kind, Leaf: leaf)))
                .GroupBy(l => l.Kind == "cards" ? $"card {Tag(plan, l.Leaf)}" : l.Kind)
                .ToDictionary(g => g.Key, g => g.SelectMany(l => l.Leaf.Rows).ToList());
            Unit = new PaperFlock.Sheets.Theme.SheetContext(plan, FontLibrary.Measurer).Amounts.AtFeedUnit;
        }

        public string Unit { get; }

        public IEnumerable<LeafRow> All => _rows.Values.SelectMany(r => r);

        public List<LeafRow> this[string key] => _rows[key];

        public List<LeafRow> Feed => _rows.GetValueOrDefault("feed") ?? [];

        private static string Tag(SeasonPlan plan, Leaf card) => plan.Ewes.Select(e => e.Ewe.Tag).First(t => card.Rows.Any(r => r.Cells[0].Words == t));
    }
}
