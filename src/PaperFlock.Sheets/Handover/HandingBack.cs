using PaperFlock.Sheets.FeedCharts;

namespace PaperFlock.Sheets.Handover;

/// <summary>Below the roll: the ration with lambs, what is changed by telephone, and what is counted at the end.</summary>
internal static class HandingBack
{
    private const int Changes = 4;
    private const int Abreast = 3;
    private static readonly TextStyle Small = TypeScale.Label with { Size = 9.5 };

    public static Row Of(SheetContext context, Absence away, StayPart last) => new(
        [
            .. context.Plan.Feeding.Charts.IsEmpty ? [] : new[] { new RowCell(Track.Fixed(Mm(70)), WithLambs(context, away)) },
            new RowCell(Track.Share(), ChangeTable(context)),
            new RowCell(Track.Fixed(Mm(94)), Counts(context, away, last)),
        ],
        10);

    private static Column WithLambs(SheetContext context, Absence away)
    {
        var (two, three) = (At(context, away, [FeedTime.FirstLight, FeedTime.Dusk]), At(context, away, [FeedTime.FirstLight, FeedTime.Midday, FeedTime.Dusk]));
        return Part($"A ewe with lambs ({FeedCodes.Lambed})", $"1st: the morning after she lambs. {Unit(context)} each time, \u00d72: {two}; \u00d73: {three}", LambedChart.Table(context, isSmall: true));
    }

    private static Column Part(string title, string lead, params ImmutableArray<Element> tables) =>
        Block.Column(2, [Block.Text(title, TypeScale.BodyBold) with { Tag = StructureTag.Heading(2) }, Block.Text(lead, Small, leading: 1.05), .. tables]);

    private static string Unit(SheetContext context) => context.Flock.Feeds.Scales ? context.Amounts.FeedUnit : context.Amounts.AtFeedUnit;

    private static string At(SheetContext context, Absence away, ImmutableArray<FeedTime> times) => string.Join(", ", RoundsOfDay.FedAt(context.Plan, away.From, times));

    private static Column ChangeTable(SheetContext context) => Part(
        "Changes",
        "Feed as printed until it is written here. Then strike what it replaces.",
        new Table(
            [Track.Share(1.3), Track.Share(1.2), Track.Share(1.2), Track.Share(1.4), Track.Share(1.1), Track.Fixed(context.WriteIn.TableTick + 8)],
            [Head("when, who said so", "trough", "from which feed", $"heads, {Unit(context)} for all", "times", "read back")],
            [.. Enumerable.Repeat(new TableRow([.. Enumerable.Range(0, 5).Select(_ => Block.Blank()), new TableCell(Block.Tick(context.WriteIn.TableTick), Padding: Edges.Of(1, 1))], context.WriteIn.TableRow), Changes)]));

    private static Column Counts(SheetContext context, Absence away, StayPart last)
    {
        var places = last.Companies.Select(c => FeedText.Place(c.Place)).Distinct().Append("pens").ToList();
        string[] items = [.. places, "bags at first", "bags left", "lambed", "dead", "lambs"];
        return Part(
            "Handing back",
            $"Counted together, {DateText.Short(away.To)}, at\u00a0____.{Bags(context, away)}",
            new Table(
                [.. Enumerable.Repeat((ImmutableArray<Track>)[Track.Share(1.3), Track.Share()], Abreast).SelectMany(t => t)],
                [],
                [.. items.Chunk(Abreast).Select(row => new TableRow(
                    [.. Enumerable.Range(0, Abreast).SelectMany(i => new[] { i < row.Length ? new TableCell(Block.Text(row[i], Small, leading: 1.05), Padding: Edges.Of(2, 1)) { Scope = HeaderScope.Row } : Block.Blank(), Block.Blank() })],
                    context.WriteIn.TableRow))]),
            new Table(
                [Track.Share(), Track.Share()],
                [],
                [new TableRow([Signs($"signed: {away.Sitter ?? "in charge"} {away.Phone?.Replace(' ', '\u00a0')}"), Signs($"signed: {context.Flock.Holding.Keeper ?? "keeper"}")], context.WriteIn.TableRow)]));
    }

    /// <summary>What the stay takes out of the bins if nobody leaves a trough.</summary>
    private static string Bags(SheetContext context, Absence away)
    {
        var plan = context.Plan;
        var kilograms = 0m;
        for (var day = away.From; day <= away.To; day = day.PlusDays(1))
        {
            kilograms += plan.Feeding.On(day).Where(t => t.Kind is not null)
                .Sum(t => plan.Feeding.Charts.First(c => c.Code == t.Chart).On(day) is { FedAt.IsEmpty: false } row ? row.KgPerFeedByHeads[t.Ewes.Length - 1] * row.FedAt.Length : 0);
        }

        var bag = context.Flock.Feeds.Concentrate.Bag;
        return kilograms == 0 ? "" : $" Fed in all: {context.Amounts.Plain(decimal.Ceiling(kilograms))}{(bag is { } size ? $", {Amounts.Figure(kilograms / size.Kilograms, "0.#")} bags" : "")}.";
    }

    private static TableRow Head(params string[] words) => new([.. words.Select(w => new TableCell(Block.Text(w, Small, TextAlign.Centre, 1.05), Padding: Edges.Of(1, 1)))]);

    private static TableCell Signs(string words) => new(Block.Text(words.Trim(), Small, leading: 1), Align: VerticalAlign.Top, Padding: Edges.Of(2, 1));
}
