namespace PaperFlock.Sheets.TestPage;

/// <summary>
/// At each edge a ladder with a rung each millimetre, from which the unprintable margin is read off: the first rung that was printed. The rungs
/// at 6 and 12 mm are 10 mm long and numbered, because a pack prints up to 6 mm from the edge, and up to 12 mm from the foot. Pairs of the same two
/// rungs stand elsewhere along the edge, where paper that went in askew shows.
/// </summary>
internal static class EdgeLadders
{
    private const int Rungs = 14;
    private const double LongHalf = 5;
    private const double ShortHalf = 2;
    private static readonly int[] Numbered = [6, 12];

    /// <summary>Millimetres from the middle of a side edge, clear of every punch hole.</summary>
    private const double LadderFromMiddle = 20;
    private const double PairFromMiddle = 75;

    public static IEnumerable<Item> Around(Size paper, TestInk ink)
    {
        foreach (var edge in new[] { Edge.Head, Edge.Foot, Edge.Left, Edge.Right })
        {
            var isUpright = edge is Edge.Left or Edge.Right;
            var middle = (isUpright ? paper.Height : paper.Width) / 2;
            var (ladder, pair) = isUpright ? (LadderFromMiddle, PairFromMiddle) : (-35.0, 35.0);
            foreach (var item in Rung(Enumerable.Range(1, Rungs), middle + Mm(ladder)).Concat(Rung(Numbered, middle + Mm(pair))))
            {
                yield return item;
            }

            foreach (var mm in Numbered)
            {
                var along = middle + Mm(ladder + (isUpright ? -(LongHalf + 2) : LongHalf + 3));
                var (x, y) = Point(edge, paper, Mm(mm), along);
                yield return ink.Centred(mm.ToString(CultureInfo.InvariantCulture), TypeScale.Label with { Size = 9 }, x, y);
            }

            IEnumerable<Item> Rung(IEnumerable<int> millimetres, double along)
            {
                foreach (var mm in millimetres)
                {
                    var half = Mm(Numbered.Contains(mm) ? LongHalf : ShortHalf);
                    var (x1, y1) = Point(edge, paper, Mm(mm), along - half);
                    var (x2, y2) = Point(edge, paper, Mm(mm), along + half);
                    yield return new LineItem(x1, y1, x2, y2, Lines.Grid);
                }
            }
        }
    }

    /// <param name="deep">Points from the edge.</param>
    /// <param name="along">Points along the edge, from its upper or left end.</param>
    private static (double X, double Y) Point(Edge edge, Size paper, double deep, double along) => edge switch
    {
        Edge.Head => (along, deep),
        Edge.Foot => (along, paper.Height - deep),
        Edge.Left => (deep, along),
        _ => (paper.Width - deep, along),
    };

    private enum Edge
    {
        Head,
        Foot,
        Left,
        Right,
    }
}
