namespace PaperFlock.Sheets.Handover;

/// <summary>Lambing pens by number: which ewe, in and out.</summary>
internal static class LambingPens
{
    private const int Abreast = 4;

    /// <summary>Where the file does not say how many there are.</summary>
    private const int Usual = 4;

    private static readonly TextStyle Small = TypeScale.Label with { Size = 9 };

    /// <returns>Null where nobody lambs in a pen.</returns>
    public static Table? Of(SheetContext context)
    {
        var housing = context.Flock.Housing;
        var pens = housing.LambingPens ?? Usual;
        if (housing.Lambing == LambingPlace.Outdoors || pens == 0 || !context.Plan.Ewes.Any(e => e.IsCarrying || e.Standing == Standing.Lambed))
        {
            return null;
        }

        var number = Math.Max(Mm(8), context.Measurer.WidthOf(pens.ToString(CultureInfo.InvariantCulture), TypeScale.Heading) + Mm(4));
        return new Table(
            [Track.Fixed(Mm(20)), .. Enumerable.Repeat((ImmutableArray<Track>)[Track.Fixed(number), Track.Share(2), Track.Share(), Track.Share()], Abreast).SelectMany(t => t)],
            [],
            [.. Enumerable.Range(1, pens).Chunk(Abreast).Select((row, i) => Row(context, row, i == 0))])
        { RowHeaders = true };
    }

    private static TableRow Row(SheetContext context, int[] pens, bool isFirst) => new(
        [
            Block.Cell(isFirst ? "Lambing pens" : "", TypeScale.BodyBold),
            .. Enumerable.Range(0, Abreast).SelectMany(i => i < pens.Length
                ? new[] { Block.Cell(pens[i].ToString(CultureInfo.InvariantCulture), TypeScale.Heading, TextAlign.Centre), Corner("ewe"), Corner("in"), Corner("out") }
                : [Block.Blank(4)]),
        ],
        context.WriteIn.TableRow + 2);

    private static TableCell Corner(string words) => new(Block.Text(words, Small, leading: 1), Align: VerticalAlign.Top, Padding: Edges.Of(2, 1));
}
