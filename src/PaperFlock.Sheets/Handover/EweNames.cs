namespace PaperFlock.Sheets.Handover;

/// <summary>Names with their lambs as dots, each with a box to strike when she has left.</summary>
internal sealed class EweNames
{
    /// <summary>A longer name may take two lines.</summary>
    private const int LongName = 18;

    private const double Between = 5;
    private const double Below = 1.2;
    private static readonly double Narrowest = Mm(26);
    private static readonly double Widest = Mm(62);

    /// <summary>Of a column of names: a side of a leaf holds it under any head.</summary>
    private static readonly double Highest = Mm(112);

    private readonly SheetContext _context;
    private readonly double _tick;

    public EweNames(SheetContext context, IReadOnlyCollection<EwePlan> ewes)
    {
        (_context, _tick) = (context, context.WriteIn.BarnTick);
        Width = Math.Clamp(ewes.Max(e => Said(e).Runs.Sum(r => context.Measurer.WidthOf(r.Words, r.Style))) + _tick + Between + 3, Narrowest, Widest);
        Rows = (int)(Highest / (ewes.Max(e => Heights.Of(Line(Said(e)), Width, context)) + Below));
    }

    /// <summary>Of one column, with its boxes.</summary>
    public double Width { get; }

    /// <summary>The most below one another.</summary>
    public int Rows { get; }

    /// <summary>Of so many columns.</summary>
    public double WidthOf(int columns) => (columns * (Width + Between)) - Between;

    /// <summary>Columns that stand beside one another.</summary>
    /// <param name="room">Points there are for them.</param>
    public int Abreast(double room) => (int)((room + Between) / (Width + Between));

    /// <summary>As many columns as so many names take.</summary>
    /// <param name="room">Points there are for them.</param>
    public int Columns(int names, double room) => Math.Max(1, Math.Min((names + Rows - 1) / Rows, Abreast(room)));

    /// <param name="columns">Names run down the first, then the next.</param>
    public Row Of(IReadOnlyCollection<EwePlan> ewes, int columns) => new(
        [
            .. ewes.Chunk((ewes.Count + columns - 1) / columns).Select(column => new RowCell(
                Track.Fixed(Width), new Column([.. column.Select(e => Line(Said(e)) with { Tag = StructureTag.ListItem, About = RowKey.Of(e.Ewe) })], Below))),
        ],
        Between)
    { Tag = StructureTag.List };

    /// <summary>A box and what stands behind it.</summary>
    public Row Line(Text said) => Block.Behind(Block.TickBox(_tick), said, _tick, Between);

    /// <summary>"Bryony ••": lambs carried as counted, or at foot.</summary>
    public static Text Said(EwePlan ewe, TextStyle? style = null)
    {
        var called = Who.Called(ewe.Ewe, style ?? TypeScale.Body);
        return new([ewe.Ewe.Name is { Length: > LongName } name ? called with { Words = name } : called, new Run(Dots.After(Lambs(ewe)), TypeScale.BodyBold)], Leading: 1.05);
    }

    private static int Lambs(EwePlan ewe) => ewe.Standing == Standing.Lambed ? ewe.Ewe.BornAlive ?? ewe.Ewe.Scan ?? 0 : ewe.IsScanned ? ewe.Litter : 0;
}
