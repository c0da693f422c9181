namespace PaperFlock.Sheets.WallPlanner;

/// <summary>Sizes of a planner: those of a sheet of A4 on its side, read from 1.5 m, and as much larger as its paper is.</summary>
internal sealed class PlannerFormat(Size portrait)
{
    /// <summary>A leaf holds no more weeks than this, however quiet they are.</summary>
    public const int MostWeeks = 8;

    /// <summary>So few, whatever room is left, while ewes lamb one after another: else one who is struck through would bring another week on to the leaf.</summary>
    public const int MostWeeksOfLambing = 4;

    private readonly double _scale = Math.Max(1, Math.Min(portrait.Width / Papers.A4.Width, portrait.Height / Papers.A4.Height));

    public Size Paper { get; } = Papers.Landscape(portrait);

    public static Edges Margins { get; } = new(Mm(8), Mm(8), Mm(8), PageSetup.UnprintableFoot);

    public double Width => Paper.Width - Margins.Horizontal;

    public TextStyle Title => TypeScale.Cap(Face.TextBold, 6.2 * _scale);

    public TextStyle Code => TypeScale.Cap(Face.MonoBold, 3.4 * _scale);

    /// <summary>The first day of a week, and the rounds: found from across the room.</summary>
    public TextStyle Large => TypeScale.Cap(Face.Text, 7 * _scale);

    /// <summary>What is to be done; smaller only where a single week says more than a leaf holds.</summary>
    public ImmutableArray<TextStyle> Job => [TypeScale.Cap(Face.Text, 5 * _scale), TypeScale.Cap(Face.Text, TypeScale.CapAtHalfMetre)];

    /// <summary>What is read leaning in.</summary>
    public TextStyle Near => TypeScale.Cap(Face.Text, 3.3 * _scale);

    public TextStyle Label => TypeScale.Body with { Size = 12 * _scale };

    /// <summary>The least a week takes, in points: room to strike its days off.</summary>
    public double LeastRow => Mm(19) * _scale;

    /// <summary>Rows are not stretched beyond it.</summary>
    public double TallestRow => Mm(55) * _scale;

    public double Hatch => 6 * _scale;

    /// <summary>Week, seven days, what to do, rounds.</summary>
    public ImmutableArray<Track> Columns(ITextMeasurer measurer) =>
    [
        Track.Fixed(Enumerable.Range(1, 12).Max(m => measurer.WidthOf(DateText.DayMonth(new LocalDate(2026, m, 28)), Large)) + 12),
        .. Enumerable.Repeat(Track.Fixed(Mm(9.2) * _scale), 7),
        Track.Share(),
        Track.Fixed(measurer.WidthOf("rounds", Label) + 8),
    ];
}
