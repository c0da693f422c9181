namespace PaperFlock.Sheets.FeedCharts;

/// <summary>Below the table: the scoop, and what to do when a row does not fit.</summary>
internal static class FeedFoot
{
    private const double Leading = 1.15;

    public static Row Of(SheetContext context)
    {
        var keeper = context.Flock.Holding.Keeper is { } name ? name.Split(' ')[0] : "the keeper";
        return new Row(
            [
                .. Scoop(context),
                Words("One has lambed?", $"She leaves this chart for {FeedCodes.Lambed}. Count the heads that stay.", 1.1),
                Words("Not lambed by the last row?", "Keep feeding it.", 1),
                Words($"{Left(context)}, thin, fat, or off her feed?", $"Ring {keeper}. Never change the feed in one go.", 1.3),
            ],
            14);
    }

    private static string Left(SheetContext context) => context.Flock.Feeds.Forage.Kind switch
    {
        ForageKind.Hay => "Hay left",
        ForageKind.Haylage => "Haylage left",
        ForageKind.Silage => "Silage left",
        ForageKind.Straw => "Straw left",
        _ => "Grass short",
    };

    private static RowCell Words(string bold, string plain, double share) => new(Track.Share(share), Block.BoldThen(bold, plain, TypeScale.Body, Leading));

    private static IEnumerable<RowCell> Scoop(SheetContext context) => context.Flock.Feeds.Concentrate.Scoop is { } scoop
        ?
        [
            new RowCell(
                Track.Share(0.9),
                Block.Column(
                    2,
                    Marked(Drawn(1) with { Tag = StructureTag.Figure("A scoop, full.") }, $"full scoop {context.Amounts.Plain(scoop.Kilograms)}"),
                    Marked(Drawn(0.5) with { Tag = StructureTag.Figure("A scoop, half full.") }, $"to the line {context.Amounts.Plain(scoop.Kilograms / 2)}"))),
        ]
        : [];

    private static Row Marked(Picture scoop, string words) => Block.Behind(scoop, Block.Text(words, TypeScale.Body, leading: 1.1), scoop.Size.Width, 5);

    /// <summary>A bucket with a handle, black up to how full it is.</summary>
    /// <param name="full">0 to 1.</param>
    private static Picture Drawn(double full)
    {
        const double width = 19, height = 12, slope = 3, handle = 7;
        double Left(double y) => 0.5 + (slope * y / height);
        double Right(double y) => width - 0.5 - (slope * y / height);
        var top = (height - 1) * (1 - full);
        return new Picture(
            new Size(width + handle, height),
            [
                new LineItem(Left(0), 0.5, Left(height), height - 0.5, Lines.Box),
                new LineItem(Right(0), 0.5, Right(height), height - 0.5, Lines.Box),
                new LineItem(Left(0), 0.5, Right(0), 0.5, Lines.Box),
                new PathItem([(Left(top), top + 0.5), (Left(height), height - 0.5), (Right(height), height - 0.5), (Right(top), top + 0.5)], true, 0),
                new LineItem(Right(1), 1.5, width + handle, 1.5, 2),
            ]);
    }
}
