namespace PaperFlock.Sheets.WallPlanner;

/// <summary>Sizes of one planner: what fits the wall it hangs on.</summary>
/// <param name="Live">Width and height in points of all that is drawn.</param>
/// <param name="Capital">Millimetres of capital height of jobs and busy weeks.</param>
internal sealed record PlannerFormat(Size Live, double Capital)
{
    public TextStyle Job => TypeScale.Cap(Face.Text, Capital);

    public TextStyle JobBold => TypeScale.Cap(Face.TextBold, Capital);

    public TextStyle BusyWeek => TypeScale.Cap(Face.TextBold, Capital);

    /// <summary>What is read leaning in.</summary>
    public TextStyle Near => TypeScale.Cap(Face.Text, NearCapital);

    public TextStyle NearBold => TypeScale.Cap(Face.TextBold, NearCapital);

    public TextStyle Figures => TypeScale.Cap(Face.Text, NearCapital);

    private double NearCapital => Math.Min(TypeScale.CapAtHalfMetre, Capital);

    public static readonly Edges CellPadding = Edges.Of(4, 2);

    /// <summary>Points kept free at the right of the rations on a planner that is cut across: figures beside the cut would lie under its mark.</summary>
    public double ForCutMark { get; init; }

    /// <summary>Jobs get what the figures leave.</summary>
    /// <param name="seam">Where a column boundary must lie so that no word crosses the cut, in points from the left; null when the planner is not cut upright.</param>
    public ImmutableArray<Track> Columns(SheetContext context, int litters, double? seam)
    {
        var measurer = context.Measurer;
        var weekday = Enumerable.Range(4, 7).Max(d => measurer.WidthOf(DateText.Weekday(new LocalDate(2027, 1, d).DayOfWeek), NearBold with { Size = PlannerPoster.LeastWeekday }));
        var month = Enumerable.Range(1, 12).Max(m => measurer.WidthOf(DateText.DayMonth(new LocalDate(2026, m, 28)), BusyWeek));
        var week = Math.Max(measurer.WidthOf(DateText.DayMonth(new LocalDate(2026, 11, 30)), BusyWeek) + 14, month + 10);
        var day = seam is { } s ? (s - week) / 7 : Math.Max(Math.Max(Mm(8), Math.Min(Mm(10), Live.Width * 0.036)), weekday + 3);
        var feed = litters == 0 ? Mm(4) : litters * (measurer.WidthOf("0.00", Figures) + 7) + 4 + ForCutMark;
        return
        [
            Track.Fixed(week),
            .. Enumerable.Repeat(Track.Fixed(day), 7),
            Track.Share(),
            Track.Fixed(measurer.WidthOf("rounds", Near with { Size = Math.Min(Near.Size, 12) }) + 8),
            Track.Fixed(feed),
        ];
    }
}
