using PaperFlock.Sheets.EweCards;

namespace PaperFlock.Sheets.Handover;

/// <summary>Every ewe by name, in two columns: where she is, when she is due, and what is to be known of her.</summary>
internal sealed class EweRoll(SheetContext context, DateInterval days, double width)
{
    private const double Gap = 10;
    private static readonly TextStyle Small = TypeScale.Label with { Size = 9.5 };
    private static readonly TextStyle TagEnd = TypeScale.Tag with { Face = Face.Mono, Size = 11 };
    private static readonly string[] Captions = ["ewe", "tag ends", "where", "due", "first day; note"];
    private static readonly Edges Padding = Edges.Of(3, 1.2);
    private readonly ImmutableDictionary<string, string> _codes = CardCodes.Of(context.Plan.Ewes);
    private readonly ImmutableArray<Track> _tracks = Tracks(context, CardCodes.Of(context.Plan.Ewes).Values.Select(Ends));

    /// <summary>Of a note, or a day in one.</summary>
    private readonly double _longestWord = context.Columns.FitDays(0, Small, [.. context.Plan.Ewes.Select(e => RemarkText.Of(e.Ewe))]).Points;

    private double Half => IsAbreast ? (width - Gap) / 2 : width;

    /// <summary>Whether the longest word of a note has room in half the width.</summary>
    private bool IsAbreast => _tracks.Sum(t => t.Points) + _longestWord + 8 <= (width - Gap) / 2;

    /// <param name="room">Points of height on a side.</param>
    /// <returns>One for each side.</returns>
    public IEnumerable<Element> Sides(double room)
    {
        List<(TableRow Row, double High)> rows =
            [.. Ewes.Select(Row).Select(r => (r, Heights.Of(Table([r]) with { Head = [] }, Half, context)))];
        var left = room - Heights.Of(Table([]) with { Body = [new TableRow([Block.Blank(Captions.Length)])] }, Half, context);
        while (rows.Count > 0)
        {
            var first = Fitting(rows, left);
            var taken = IsAbreast ? first + Fitting(rows[first..], left) : first;
            if (IsAbreast && taken == rows.Count)
            {
                first = Enumerable.Range(1, taken).MinBy(n => Math.Max(rows[..n].Sum(r => r.High), rows[n..].Sum(r => r.High)));
            }

            yield return new Row([Cell(rows[..first]), .. IsAbreast ? [Cell(rows[first..taken])] : Array.Empty<RowCell>()], Gap);
            rows.RemoveRange(0, taken);
        }
    }

    /// <summary>All of them in one table, for pages that are not theirs alone.</summary>
    public Table Whole() => Table([.. Ewes.Select(Row)]);

    private IEnumerable<EwePlan> Ewes => context.Plan.Ewes.Where(e => Company.StayOn(context.Plan, e.Ewe, days.Start).Place.Kind != PlaceKind.Gone)
        .OrderBy(e => e.Ewe.CallName, StringComparer.OrdinalIgnoreCase).ThenBy(e => e.Ewe.Tag, StringComparer.Ordinal);

    private RowCell Cell(List<(TableRow Row, double High)> rows) => new(Track.Share(), rows.Count == 0 ? Block.Gap(1) : Table([.. rows.Select(r => r.Row)]));

    /// <summary>How many from the first on; one at least.</summary>
    private static int Fitting(List<(TableRow Row, double High)> rows, double room)
    {
        var taken = 0;
        for (var used = 0.0; taken < rows.Count && (used += rows[taken].High) <= room; taken++)
        {
        }

        return Math.Max(taken, Math.Min(1, rows.Count));
    }

    private static ImmutableArray<Track> Tracks(SheetContext context, IEnumerable<string> ends) =>
    [
        context.Columns.Fit(Mm(31), TypeScale.Tag, 7, context.Plan.Ewes.Where(e => e.Ewe.Name is null).Select(e => e.Ewe.Tag.Replace(' ', '\u00a0'))),
        context.Columns.Fit(Mm(14), TagEnd, 7, ends),
        Track.Fixed(Math.Min(Mm(34), context.Plan.Whereabouts.Ewes.SelectMany(e => e.Stays).Max(s => context.Measurer.WidthOf(FeedText.Place(s.Place), TypeScale.Body)) + 8)),
        context.Columns.FitDays(Mm(20), TypeScale.Body),
        Track.Share(),
    ];

    private Table Table(ImmutableArray<TableRow> rows) => new(
        _tracks,
        [new TableRow([.. Captions.Select(w => new TableCell(Block.Text(w, Small), Padding: Padding))])],
        rows)
    { RowHeaders = true };

    private TableRow Row(EwePlan ewe)
    {
        var here = Company.StayOn(context.Plan, ewe.Ewe, days.Start);
        var due = ewe.Standing switch
        {
            Standing.Lambed => "lambed",
            _ when ewe.Due is { } day => DateText.Short(day.Likely),
            _ => "not in lamb",
        };
        return new TableRow(
            [
                new TableCell(EweNames.Said(ewe, TypeScale.BodyBold), Padding: Padding),
                new TableCell(new Text([new Run(Ends(_codes[ewe.Ewe.Tag]), TagEnd, Whole: true)]), Padding: Padding),
                new TableCell(Block.Text(FeedText.Place(here.Place), TypeScale.Body, leading: 1.05), Padding: Padding),
                new TableCell(Block.Text(due, TypeScale.Body, leading: 1.05), Padding: Padding),
                new TableCell(Block.Text(Remark(ewe, here), Small, leading: 1.05), Padding: Padding),
            ],
            About: RowKey.Of(ewe.Ewe));
    }

    /// <summary>The first day she may lamb, where she goes meanwhile, her history and the keeper's note.</summary>
    private string Remark(EwePlan ewe, Stay here)
    {
        string?[] remarks =
        [
            ewe.Due is { } due ? $"from {DateText.Short(due.Earliest)}" : null,
            ewe.Ewe.Lambed is { } lambed ? $"on {DateText.Short(lambed)}" : null,
            .. context.Plan.Whereabouts.Of(ewe.Ewe).Where(s => s.From > days.Start && s.From <= days.End && s.Place != here.Place).Select(s => $"{FeedText.Place(s.Place)} from {DateText.Short(s.From)}"),
            RemarkText.Of(ewe.Ewe) is { Length: > 0 } remark ? remark.TrimEnd('.') : null,
        ];
        return string.Join("; ", remarks.OfType<string>());
    }

    private static string Ends(string cardCode) => cardCode[CardCodes.Start.Length..];
}
