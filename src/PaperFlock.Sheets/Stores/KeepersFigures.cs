namespace PaperFlock.Sheets.Stores;

/// <summary>How rations and stores were reckoned: for the keeper alone, since whoever feeds needs none of it.</summary>
internal static class KeepersFigures
{
    public static Column Of(SheetContext context)
    {
        var (flock, feeding) = (context.Flock, context.Plan.Feeding);
        var charts = feeding.Charts.Where(c => !c.IsForageOnly).ToArray();
        return Block.Column(
            5,
            [
                Block.Heading("How it was reckoned"),
                .. context.Plan.Stores.Select(s => Block.BoldThen($"{StoreText.Name(s, flock)}:", $"{StoreText.Basis(s, flock)}.", TypeScale.Body, 1.15)),
                .. charts.Length == 0 ? Array.Empty<Element>() : [Block.BoldThen("Rations:", $"{Method(context)} At the most, a ewe a day:", TypeScale.Body, 1.15), Rations(context, charts)],
                .. feeding.Warnings.Where(w => w.Kind is FeedWarningKind.OverEnergySum or FeedWarningKind.UnderEnergySum)
                    .Select(w => Block.Text(English.Sentence(FeedWarningText.Words(w, context.Amounts).Message), TypeScale.BodyBold)),
            ]);
    }

    private static string Method(SheetContext context) => context.Flock.Feeds.Method switch
    {
        FeedMethod.Stepped => "each week what the energy sum asks for, never less than the week before.",
        FeedMethod.PerLamb => "so much for each lamb she carries, reached in steps.",
        _ => "what the energy sum asks for.",
    };

    private static Table Rations(SheetContext context, FeedChart[] charts) => new(
        [Track.Share(1.6), .. Enumerable.Repeat(Track.Share(), 5)],
        [
            new TableRow([Cell("chart", TextAlign.Left), Cell(context.Flock.Feeds.Concentrate.Name), Cell("energy sum"), Cell("needs, MJ"), Cell("gets, MJ at most"), Cell("dry matter of weight")]),
        ],
        [.. charts.Select(c => Row(context, c))])
    { Name = "rations", RowHeaders = true };

    private static TableRow Row(SheetContext context, FeedChart chart)
    {
        var last = chart.Rows[^1];
        return new TableRow(
            [
                Cell(chart.Code["FEED-".Length..].ToLowerInvariant().Replace('-', ' '), TextAlign.Left),
                Cell(context.Amounts.Plain(last.KgPerEwePerDay)),
                Cell(context.Amounts.Plain(last.EnergyBalanceKg)),
                Cell(Amounts.Figure(last.Need.Energy, "0.#")),
                Cell(Amounts.Figure(last.Supply.Energy, "0.#")),
                Cell($"{Amounts.Figure(last.DryMatterShare * 100, "0.#")}\u00a0%"),
            ],
            About: RowKey.Named(RowKind.Ration, chart.Code));
    }

    private static TableCell Cell(string words, TextAlign align = TextAlign.Right) => new(Block.Text(words, TypeScale.Label, align, 1.1), Padding: Edges.Of(4, 1.5));
}
