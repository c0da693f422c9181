namespace PaperFlock.Sheets.Handover;

/// <summary>Names with their lambs as dots, each with a box to strike when she has left.</summary>
internal sealed class EweNames
{
    /// <summary>More below one another are hard to keep apart.</summary>
    private const int MostRows = 13;

    private const double Between = 5;
    private static readonly double Narrowest = Mm(26);
    private static readonly double Widest = Mm(62);
    private readonly SheetContext _context;
    private readonly double _tick;

    public EweNames(SheetContext context)
    {
        (_context, _tick) = (context, context.WriteIn.BarnTick);
    }

    /// <summary>Of one column of names, with its boxes.</summary>
    public double WidthFor(IEnumerable<EwePlan> ewes) =>
        Math.Clamp(ewes.Max(e => Said(e).Runs.Sum(r => _context.Measurer.WidthOf(r.Words, r.Style))) + _tick + Between + 3, Narrowest, Widest);

    /// <summary>As many columns as it takes.</summary>
    /// <param name="room">Points there are for them.</param>
    public static int Columns(int ewes, double width, double room) => Math.Max(1, Math.Min((ewes + MostRows - 1) / MostRows, (int)(room / width)));

    public static int Most(int columns) => columns * MostRows;

    /// <param name="columns">Names run down the first, then the next.</param>
    public Row Of(IEnumerable<EwePlan> ewes, double width, int columns)
    {
        var all = ewes.ToList();
        var rows = (all.Count + columns - 1) / columns;
        return new Row([.. all.Chunk(rows).Select(column => new RowCell(Track.Fixed(width), new Column([.. column.Select(e => Line(Said(e)) with { Tag = StructureTag.ListItem, About = RowKey.Of(e.Ewe) })], 1.2)))]) { Tag = StructureTag.List };
    }

    /// <summary>A box and what stands behind it.</summary>
    public Row Line(Text said) => new(
        [
            new RowCell(Track.Fixed(_tick), Block.TickBox(_tick), VerticalAlign.Middle),
            new RowCell(Track.Share(), said, VerticalAlign.Middle),
        ],
        Between);

    /// <summary>"Bryony ••": lambs carried as counted, or at foot.</summary>
    public static Text Said(EwePlan ewe) => new([Who.Called(ewe.Ewe, TypeScale.Body), new Run(Dots(ewe), TypeScale.BodyBold)], Leading: 1.05);

    public static string Dots(EwePlan ewe)
    {
        var lambs = ewe.Standing == Standing.Lambed ? ewe.Ewe.Lambing.Alive ?? ewe.Ewe.Scan ?? 0 : ewe.IsScanned ? ewe.Litter : 0;
        return lambs == 0 ? "" : "\u00a0" + new string('\u2022', lambs);
    }
}
