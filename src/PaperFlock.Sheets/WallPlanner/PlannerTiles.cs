namespace PaperFlock.Sheets.WallPlanner;

/// <summary>Cuts a planner into sheets of the printer's paper, with cut marks, and names, check bars and control lines along the outer edges.</summary>
internal static class PlannerTiles
{
    /// <summary>Points that the mark of a cut reaches into a tile, and to both sides of the cut.</summary>
    public const double Mark = 8;

    /// <summary>Points between the planner and a strip below it.</summary>
    private const double AboveStrip = 2;

    /// <summary>Null when the planner goes on one sheet of the printer's paper.</summary>
    public static TileScheme? SchemeOf(SheetContext context) => TileScheme.For(context.Print.Paper, context.Print.Planner) is { } usual
        ? usual with { Strip = Math.Max(usual.Strip, TallestStrip(context, usual) + AboveStrip) }
        : null;

    public static Sheet Make(SheetContext context, TileScheme scheme)
    {
        var code = WallPlannerSheet.Definition.Code;
        var design = new PageDesign(scheme.Live, Edges.None, Edges.None, null, null, null, 0);
        ImmutableArray<Page> posters;
        try
        {
            posters =
            [
                .. PlannerPoster.ToCut(context, scheme.Live, scheme.SeamX, scheme.SeamY, TypeScale.CapAtOneMetre, TypeScale.LeastCapOnTiles)
                    .SelectMany(poster => Paginator.Paginate(poster, design, context.Layout, PageSide.Front, singleSided: true)),
            ];
        }
        catch (Exception e) when (e is LayoutException or InvalidOperationException)
        {
            throw new SheetException(code, e.Message, e);
        }

        var count = posters.Length * scheme.Down * scheme.Across;
        var pages = ImmutableArray.CreateBuilder<Page>(count);
        foreach (var whole in posters)
        {
            var marked = context.Mark.Issues.MarkedPoster(whole.Content, Leaves.Id(code, 1), context.Measurer);
            for (var row = 0; row < scheme.Down; row++)
            {
                for (var column = 0; column < scheme.Across; column++)
                {
                    pages.Add(Tile(context, scheme, code, marked, row, column, new PageNumber(pages.Count + 1, count, PageSide.Front)));
                }
            }
        }

        return new Sheet(WallPlannerSheet.Definition, code, $"{WallPlannerSheet.Title}, {count} tiles to glue", Binder.Sides(context, code, pages.ToImmutable(), isMarked: true))
        {
            // Tiles are glued together, so one is never put in alone.
            Parts = [new SheetPart(Leaves.Id(code, 1), code, WallPlannerSheet.Title, [.. posters.Select(p => p.Content)])],
        };
    }

    private static Page Tile(SheetContext context, TileScheme scheme, string code, Piece poster, int row, int column, PageNumber number)
    {
        var window = new Size(scheme.Printed.Width, scheme.Printed.Height - scheme.Strip);
        var x = column * (window.Width - TileScheme.Overlap);
        var y = row * (window.Height - TileScheme.Overlap);
        var (left, top) = (PageSetup.Unprintable, PageSetup.Unprintable);
        var stripAbove = row == 0;
        var windowTop = stripAbove ? top + scheme.Strip : top;
        var stripTop = stripAbove ? top : top + window.Height + AboveStrip;
        var words = StripWords(context, scheme, code, row, column, number, window.Width);
        var strip = words.Place(new Space(window.Width, scheme.Strip, scheme.Strip), context.Layout) is Placement.Fits fits
            ? fits.Piece
            : throw new SheetException(code, "the strip of a tile is too small for its words", new InvalidOperationException(code));
        return new Page(
            scheme.Tile,
            PageSide.Front,
            number,
            new Piece(
                scheme.Tile,
                [
                    new PieceItem(left, stripTop, strip),
                    new PieceItem(left, windowTop, poster.Clip(x, y, window.Width, window.Height)),
                    .. CutMarks(scheme, row, column, left, windowTop, window),
                ]));
    }

    /// <summary>Arrowheads at both ends of each cut: a line would be lost in the rule that the cut follows.</summary>
    private static IEnumerable<Item> CutMarks(TileScheme scheme, int row, int column, double left, double top, Size window)
    {
        var half = TileScheme.Overlap / 2;
        var (right, bottom) = (left + window.Width, top + window.Height);
        foreach (var y in Cuts(row, scheme.Down, top + half, bottom - half))
        {
            yield return Arrow((left, y - Mark), (left, y + Mark), (left + Mark, y));
            yield return Arrow((right, y - Mark), (right, y + Mark), (right - Mark, y));
        }

        foreach (var x in Cuts(column, scheme.Across, left + half, right - half))
        {
            yield return Arrow((x - Mark, top), (x + Mark, top), (x, top + Mark));
            yield return Arrow((x - Mark, bottom), (x + Mark, bottom), (x, bottom - Mark));
        }
    }

    /// <summary>A tile is cut on the side of the neighbour before it, and overlaid on the side of the one after.</summary>
    private static IEnumerable<double> Cuts(int index, int count, double before, double after)
    {
        if (index > 0)
        {
            yield return before;
        }

        if (index + 1 < count)
        {
            yield return after;
        }
    }

    private static PathItem Arrow((double X, double Y) one, (double X, double Y) other, (double X, double Y) tip) =>
        new([one, tip, other], Closed: true, Thickness: 0);

    /// <summary>Points that the longest of the strips takes: some languages need more than the usual room.</summary>
    private static double TallestStrip(SheetContext context, TileScheme scheme)
    {
        var last = new PageNumber(99, 99, PageSide.Front);
        var strips =
            from row in Enumerable.Range(0, scheme.Down)
            from column in Enumerable.Range(0, scheme.Across)
            select Heights.Of(StripWords(context, scheme, WallPlannerSheet.Definition.Code, row, column, last, scheme.Printed.Width), scheme.Printed.Width, context);
        return strips.Max();
    }

    /// <summary>On as many lines as wanted where they fit the width, else each part on a line of its own.</summary>
    /// <param name="wanted">1 or 2.</param>
    private static ImmutableArray<Element> ControlLines(SheetContext context, string code, PageNumber number, double width, int wanted)
    {
        var mark = context.Mark;
        var (which, validity) = (mark.WhichPage(code, number), mark.ShortValidity(code, number));
        ImmutableArray<string> lines = wanted == 1 ? [$"{which} · {validity}"] : [which, validity];
        var fits = lines.All(line => context.Measurer.WidthOf(line, TypeScale.Control) <= width);
        return [.. (fits ? lines : [which, .. mark.ShortValidityParts(code, number)]).Select(line => Block.Text(line, TypeScale.Control))];
    }

    private static Element StripWords(SheetContext context, TileScheme scheme, string code, int row, int column, PageNumber number, double width)
    {
        var cut = (row > 0, column > 0) switch
        {
            (true, true) => "Cut along the top and left marks, lay it on the sheets above and beside.",
            (true, false) => "Cut along the marks at the top, glue it over the strip of the sheet above.",
            (false, true) => "Cut along the marks at the left, glue it over the strip of the sheet beside.",
            _ => "Do not cut this one: the others are glued over its strips.",
        };
        var words = Block.Sentences(
            scheme.Across > 1
                ? $"Row {row + 1} of {scheme.Down}, column {column + 1} of {scheme.Across}."
                : $"Row {row + 1} of {scheme.Down}.",
            cut);
        var name = Block.Largest(words, context.Measurer, width, TextAlign.Left, TypeScale.LabelBold, TypeScale.LabelBold with { Size = 9 });
        var bar = new RowCell(Track.Fixed(CheckBar.Width), CheckBar.Element());
        return scheme.IsUpright
            ? Block.Column(
                1,
                name,
                new Row(
                    [
                        new RowCell(
                            Track.Share(),
                            Block.Column(0, ControlLines(context, code, number, width - CheckBar.Width - 8, 2))),
                        bar,
                    ],
                    8))
            : new Row([new RowCell(Track.Share(), Block.Column(1, [name, .. ControlLines(context, code, number, width - CheckBar.Width - 8, 1)])), bar], 8);
    }
}
