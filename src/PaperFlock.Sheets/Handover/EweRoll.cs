using PaperFlock.Sheets.EweCards;

namespace PaperFlock.Sheets.Handover;

/// <summary>Every ewe by name, in two columns: where she is, when she is due, and what is to be known of her.</summary>
internal sealed class EweRoll(SheetContext context, Absence away, double width)
{
    private const double Gap = 10;
    private static readonly TextStyle Small = TypeScale.Label with { Size = 9.5 };
    private static readonly TextStyle TagEnd = TypeScale.Tag with { Face = Face.Mono, Size = 11 };
    private static readonly string[] Captions = ["ewe", "tag ends", "where", "due", "note"];
    private static readonly Edges Padding = Edges.Of(3, 1.2);
    private readonly ImmutableDictionary<string, string> _codes = CardCodes.Of(context.Plan.Ewes);

    private double Half => (width - Gap) / 2;

    /// <param name="room">Points of height on a side.</param>
    /// <returns>One for each side.</returns>
    public IEnumerable<Element> Sides(double room)
    {
        var ewes = context.Plan.Ewes.Where(e => Company.StayOn(context.Plan, e.Ewe, away.From).Place.Kind != PlaceKind.Gone)
            .OrderBy(e => e.Ewe.CallName, StringComparer.OrdinalIgnoreCase).ThenBy(e => e.Ewe.Tag, StringComparer.Ordinal).Select(Row).ToList();
        var head = Heights.Of(Table([]) with { Body = [new TableRow([Block.Blank(5)])] }, Half, context);
        while (ewes.Count > 0)
        {
            var all = Fitting(ewes, 0, room - head);
            var taken = all + Fitting(ewes, all, room - head);

            // What is left is shared out between the columns.
            if (taken == ewes.Count)
            {
                for (all = (taken + 1) / 2; all < taken && Fitting(ewes, all, High(ewes.Take(all))) < taken - all; all++)
                {
                }
            }

            yield return new Row([Cell(ewes[..all]), Cell(ewes[all..taken])], Gap);
            ewes.RemoveRange(0, taken);
        }
    }

    private RowCell Cell(List<TableRow> rows) => new(Track.Share(), rows.Count == 0 ? Block.Gap(1) : Table([.. rows]));

    private int Fitting(List<TableRow> rows, int from, double room)
    {
        var taken = from;
        for (var used = 0.0; taken < rows.Count && (used += High([rows[taken]])) <= room; taken++)
        {
        }

        return Math.Max(taken - from, from == 0 ? 1 : 0);
    }

    private double High(IEnumerable<TableRow> rows) => rows.Sum(r => Heights.Of(Table([r]) with { Head = [] }, Half, context));

    private Table Table(ImmutableArray<TableRow> rows) => new(
        [
            Track.Share(1.35),
            context.Columns.Fit(Mm(14), TagEnd, 7, _codes.Values.Select(Ends)),
            Track.Fixed(Math.Min(Mm(34), context.Plan.Whereabouts.Ewes.SelectMany(e => e.Stays).Max(s => context.Measurer.WidthOf(FeedText.Place(s.Place), TypeScale.Body)) + 8)),
            context.Columns.FitDays(Mm(20), TypeScale.Body),
            Track.Share(1.9),
        ],
        [new TableRow([.. Captions.Select(w => new TableCell(Block.Text(w, Small), Padding: Padding))])],
        rows)
    { RowHeaders = true };

    private TableRow Row(EwePlan ewe)
    {
        var here = Company.StayOn(context.Plan, ewe.Ewe, away.From);
        var due = ewe.Standing switch
        {
            Standing.Lambed => $"lambed {DateText.DayMonth(ewe.Ewe.Lambed!.Value)}",
            _ when ewe.Due is { } day => DateText.Short(day.Likely),
            _ => "not in lamb",
        };
        return new TableRow(
            [
                new TableCell(new Text([Who.Called(ewe.Ewe, TypeScale.BodyBold), new Run(EweNames.Dots(ewe), TypeScale.BodyBold)], Leading: 1.05), Padding: Padding),
                new TableCell(new Text([new Run(Ends(_codes[ewe.Ewe.Tag]), TagEnd, Whole: true)]), Padding: Padding),
                new TableCell(Block.Text(FeedText.Place(here.Place), TypeScale.Body, leading: 1.05), Padding: Padding),
                new TableCell(Block.Text(due, TypeScale.Body, leading: 1.05), Padding: Padding),
                new TableCell(Block.Text(Remark(ewe, here), Small, leading: 1.05), Padding: Padding),
            ],
            About: RowKey.Of(ewe.Ewe));
    }

    /// <summary>Where she goes meanwhile, when she may lamb, and the keeper's note.</summary>
    private string Remark(EwePlan ewe, Stay here)
    {
        var remarks = context.Plan.Whereabouts.Of(ewe.Ewe).Where(s => s.From > away.From && s.From <= away.To && s.Place != here.Place)
            .Select(s => $"{FeedText.Place(s.Place)} from {DateText.Short(s.From)}").ToList();
        if (ewe.Due is { } due && due.Earliest <= away.To && due.Latest >= away.From)
        {
            remarks.Add(due.Earliest <= away.From ? "may lamb now" : $"may lamb from {DateText.Short(due.Earliest)}");
        }

        if (ewe.Ewe.Note is { } note)
        {
            remarks.Add(note.TrimEnd('.'));
        }

        return string.Join("; ", remarks);
    }

    private static string Ends(string cardCode) => cardCode["CARD-".Length..];
}
