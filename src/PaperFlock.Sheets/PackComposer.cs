using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Layout;
using PaperFlock.Planning;
using PaperFlock.Sheets.BeforeTheTup;
using PaperFlock.Sheets.CallSheet;
using PaperFlock.Sheets.Cautions;
using PaperFlock.Sheets.EweCards;
using PaperFlock.Sheets.FeedCharts;
using PaperFlock.Sheets.Handover;
using PaperFlock.Sheets.HousingSheet;
using PaperFlock.Sheets.Issues;
using PaperFlock.Sheets.Jobs;
using PaperFlock.Sheets.LambingRecord;
using PaperFlock.Sheets.Register;
using PaperFlock.Sheets.RoundLog;
using PaperFlock.Sheets.ScanDay;
using PaperFlock.Sheets.Stores;
using PaperFlock.Sheets.Theme;
using PaperFlock.Sheets.TupAndRaddle;
using PaperFlock.Sheets.WallPlanner;

namespace PaperFlock.Sheets;

/// <summary>The front door of this room: a plan in, finished pages out.</summary>
public static class PackComposer
{
    /// <summary>In binding order. The register is made last, since it lists the others, and bound first.</summary>
    private static readonly ImmutableArray<ISheetMaker> Makers =
    [
        new HandoverSheet(),
        new CallSheetMaker(),
        new WallPlannerSheet(),
        new JobsSheet(),
        new BeforeTheTupSheet(),
        new TupAndRaddleSheet(),
        new ScanDaySheet(),
        new FeedChartSheet(),
        new StoresSheet(),
        new HousingSheetMaker(),
        new RoundLogSheet(),
        new LambingRecordSheet(),
        new EweCardSheet(),
        new CautionsSheet(),
    ];

    /// <summary>The one sheet that is pinned up as a poster.</summary>
    public const string PlannerKind = WallPlannerSheet.KindWord;

    /// <summary>The words <c>--sheets</c> knows, in binding order.</summary>
    public static ImmutableArray<string> Kinds { get; } = [RegisterSheet.Kind, .. Makers.Select(m => m.Kind)];

    /// <summary>
    /// What the page codes of each kind begin with, as printed at the foot of its pages, in binding order: <c>FEED-2</c> is a leaf of <c>FEED</c>.
    /// </summary>
    public static ImmutableArray<(string Code, string Kind)> Codes { get; } =
    [
        ("REG", RegisterSheet.Kind),
        ("HAND", HandoverSheet.KindWord),
        ("CALL", CallSheetMaker.KindWord),
        ("WALL", WallPlannerSheet.KindWord),
        ("JOBS", JobsSheet.KindWord),
        ("TTT", BeforeTheTupSheet.KindWord),
        ("RADL", TupAndRaddleSheet.KindWord),
        ("SCAN", ScanDaySheet.KindWord),
        ("FEED", FeedChartSheet.KindWord),
        ("STOR", StoresSheet.KindWord),
        ("HOUS", HousingSheetMaker.KindWord),
        ("LOG", RoundLogSheet.KindWord),
        ("LAMB", LambingRecordSheet.KindWord),
        ("CARD", EweCardSheet.KindWord),
        ("SAFE", CautionsSheet.KindWord),
    ];

    /// <summary>
    /// Those that a pack for some days only may hold, in binding order: what somebody needs who has the flock for those days.
    /// The planner and the sheets of one day's work are the keeper's.
    /// </summary>
    public static ImmutableArray<string> KindsForDays { get; } =
    [
        HandoverSheet.KindWord,
        RegisterSheet.Kind,
        CallSheetMaker.KindWord,
        JobsSheet.KindWord,
        FeedChartSheet.KindWord,
        RoundLogSheet.KindWord,
        LambingRecordSheet.KindWord,
        EweCardSheet.KindWord,
        CautionsSheet.KindWord,
    ];

    /// <summary>A pack by itself, as if none had been printed before.</summary>
    /// <exception cref="SheetException">Something does not fit an empty page.</exception>
    public static ComposedPack Compose(SeasonPlan plan, ITextMeasurer measurer, PackRequest request) => Compose(plan, measurer, request, null).Pack;

    /// <summary>The next issue of a pack.</summary>
    /// <param name="record">What has been printed of it; null for nothing.</param>
    /// <exception cref="SheetException">Something does not fit an empty page.</exception>
    public static ComposedIssue Compose(SeasonPlan plan, ITextMeasurer measurer, PackRequest request, IssueRecord? record)
    {
        if (!request.IsOfAll)
        {
            return SomeSheets(plan, measurer, request, record);
        }

        return new IssueComposer(plan, measurer, request).Compose(record);
    }

    /// <summary>Some sheets, or some days, are no issue of their own: they bear the number of the last.</summary>
    private static ComposedIssue SomeSheets(SeasonPlan plan, ITextMeasurer measurer, PackRequest request, IssueRecord? record)
    {
        var context = new SheetContext(plan, measurer, request, new IssueContext(record, plan.AsOf, marked: false, again: record is not null));
        var (sheets, whole) = Make(context, request);
        if (request.Wants(RegisterSheet.Kind))
        {
            // A sitter takes the handover in hand first; the keeper begins with the list of sheets.
            var onTop = request.Days is null ? 0 : sheets.Count(s => s.Kind == HandoverSheet.KindWord);
            sheets = sheets.Insert(onTop, RegisterSheet.Make(context, new Registered(sheets, sheets, whole, null, record?.Issues ?? [IssueLine.First(plan.AsOf)])));
        }

        var title = Title(context);
        var pack = request.Days is { } days
            ? new ComposedPack(context.Mark.Id, $"{title}, {Plain(days)}", sheets, whole) { Set = $"{DateText.Code(days.Start)}-{DateText.Code(days.End)}" }
            : new ComposedPack(context.Mark.Id, title, sheets, whole);
        return new ComposedIssue(pack, null, null, WholeReason.Asked);
    }

    /// <returns>The sheets asked for but the register, in binding order, and the planner in one piece where that is another.</returns>
    internal static (ImmutableArray<Sheet> Sheets, Sheet? WholePlanner) Make(SheetContext context, PackRequest request)
    {
        var makers = Makers.RemoveAll(m => !request.Wants(m.Kind));
        return ([.. makers.SelectMany(m => m.Make(context))], Planner(context, request));
    }

    private static Sheet? Planner(SheetContext context, PackRequest request) =>
        request.Wants(WallPlannerSheet.KindWord) ? WallPlannerSheet.Whole(context) : null;

    internal static string Title(SheetContext context) => $"{context.Plan.Flock.Holding.Name} {context.Mark.Id}";

    /// <summary>A title is searched for, and nobody types a no-break space.</summary>
    private static string Plain(DateInterval days) => DateText.Span(days).Replace('\u00a0', ' ');
}
