namespace PaperFlock.Sheets.Handover;

/// <summary>Blocks in columns, each below the shortest there is, on as few sides as will do.</summary>
/// <param name="room">Points of height on the first side, and on those that follow.</param>
internal sealed class BlockSides(SheetContext context, double width, (double First, double Later) room)
{
    private const double Gap = 6;
    private const int MostColumns = 3;
    private static readonly double Paragraph = Mm(60);

    /// <param name="notes">Paragraphs for the room that blocks leave.</param>
    /// <param name="last">Across the whole width below them; null for nothing.</param>
    /// <returns>One for each side.</returns>
    public ImmutableArray<Element> Of(IReadOnlyList<TroughBlock> blocks, IReadOnlyList<Element> notes, Element? last)
    {
        var sides = Sides(blocks);
        foreach (var note in sides[^1].AddAll(notes, context) ? [] : notes)
        {
            if (!sides[^1].Add(note, context))
            {
                sides.Add(new Side(sides[^1].Widths.Length, width, room.Later));
                sides[^1].Add(note, context);
            }
        }

        if (last is not null)
        {
            var height = Heights.Of(last, width, context);
            if (sides[^1].Used + Gap + height > sides[^1].Height)
            {
                sides.Add(new Side(1, width, room.Later));
            }

            sides[^1].Last = last;
        }

        return [.. sides.Select(s => s.Composed(context))];
    }

    /// <summary>Each block goes on the first side that holds it beside those already there, in as many columns as do.</summary>
    private List<Side> Sides(IReadOnlyList<TroughBlock> blocks)
    {
        var sides = new List<(List<TroughBlock> Blocks, Side Side)> { ([], new(MostColumns, width, room.First)) };
        foreach (var block in blocks)
        {
            var (at, with) = sides.Select((s, i) => (At: i, Side: Filled([.. s.Blocks, block], i == 0 ? room.First : room.Later))).FirstOrDefault(s => s.Side is not null, (sides.Count, null));
            if (with is null)
            {
                sides.Add(([block], Alone(block)));
                continue;
            }

            sides[at].Blocks.Add(block);
            sides[at] = (sides[at].Blocks, with);
        }

        return [.. sides.Select(s => s.Side)];
    }

    private Side Alone(TroughBlock block)
    {
        var side = new Side(1, width, room.Later);
        side.Add(block);
        return side;
    }

    /// <returns>Null where no number of columns holds them all.</returns>
    private Side? Filled(IReadOnlyList<TroughBlock> blocks, double height)
    {
        for (var columns = MostColumns; columns > 0; columns--)
        {
            var side = new Side(columns, width, height);
            if (blocks.All(side.Add) && (columns == 1 || side.IsWideEnough))
            {
                return side;
            }
        }

        return null;
    }

    /// <summary>One side of a leaf on its way.</summary>
    private sealed class Side(int columns, double width, double height)
    {
        private readonly List<Element>[] _columns = [.. Enumerable.Range(0, columns).Select(_ => new List<Element>())];
        private readonly double[] _used = new double[columns];
        private readonly double[] _least = new double[columns];

        public double Height => height;

        public double Used => _used.Max();

        public Element? Last { get; set; }

        public bool IsWideEnough => Needed.Sum() <= Inner;

        /// <summary>What each column needs, and a share of what is left over.</summary>
        public double[] Widths => [.. Needed.Select(l => l + ((Inner - Needed.Sum()) / columns))];

        /// <summary>A column with no block in it is for paragraphs.</summary>
        private double[] Needed => [.. _least.Select(l => l > 0 ? l : Paragraph)];

        private double Inner => width - (Gap * (columns - 1));

        /// <summary>Into the first of the shortest columns.</summary>
        /// <returns>False where it does not fit; an empty side takes anything.</returns>
        public bool Add(TroughBlock block)
        {
            var column = Array.IndexOf(_used, _used.Min());
            if (!Add(block.Content, column, block.Height))
            {
                return false;
            }

            _least[column] = Math.Max(_least[column], block.Least);
            return true;
        }

        public bool Add(Element note, SheetContext context)
        {
            var column = Array.IndexOf(_used, _used.Min());
            return Add(note, column, Heights.Of(note, Widths[column], context));
        }

        /// <summary>Shared out among the columns so that the highest is as low as can be; each column keeps their order. They are few: every way is tried.</summary>
        /// <returns>False, with none added, where they do not all fit.</returns>
        public bool AddAll(IReadOnlyList<Element> notes, SheetContext context)
        {
            var widths = Widths;
            var high = notes.Select(n => widths.Select(w => Heights.Of(n, w, context) + Gap).ToArray()).ToArray();
            var ways = Enumerable.Range(0, notes.Count).Aggregate(1, (all, _) => all * columns);
            int Into(int way, int note) => way / (int)Math.Pow(columns, note) % columns;
            double Foot(int way) => Enumerable.Range(0, columns).Max(c => _used[c] + Enumerable.Range(0, notes.Count).Where(n => Into(way, n) == c).Sum(n => high[n][c]));
            var best = Enumerable.Range(0, ways).MinBy(Foot);
            if (Foot(best) > height)
            {
                return false;
            }

            for (var i = 0; i < notes.Count; i++)
            {
                Add(notes[i], Into(best, i), high[i][Into(best, i)] - Gap);
            }

            return true;
        }

        /// <summary>Its board, as high as what stands on it.</summary>
        public Element Composed(SheetContext context)
        {
            var places = ImmutableArray.CreateBuilder<BoardPlace>();
            var (x, foot) = (0.0, 0.0);
            var widths = Widths;
            for (var i = 0; i < columns; i++)
            {
                var y = 0.0;
                foreach (var element in _columns[i])
                {
                    var high = Heights.Of(element, widths[i], context);
                    places.Add(new BoardPlace(x, y, widths[i], high, element));
                    foot = Math.Max(foot, y + high);
                    y += high + Gap;
                }

                x += widths[i] + Gap;
            }

            var board = new Board(new Size(width, foot), places.ToImmutable());
            Element[] all = [.. places.Count > 0 ? new[] { board } : [], .. Last is null ? [] : new[] { Last }];
            return Block.Column(Gap, [.. all]);
        }

        private bool Add(Element element, int column, double high)
        {
            var top = _used[column] > 0 ? _used[column] + Gap : 0;
            if (top + high > height && _used.Any(u => u > 0))
            {
                return false;
            }

            _columns[column].Add(element);
            _used[column] = top + high;
            return true;
        }
    }
}
