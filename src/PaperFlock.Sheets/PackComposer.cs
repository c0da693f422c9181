using System.Collections.Immutable;
using PaperFlock.Layout;
using PaperFlock.Planning;
using PaperFlock.Sheets.BeforeTheTup;
using PaperFlock.Sheets.CallSheet;
using PaperFlock.Sheets.Cautions;
using PaperFlock.Sheets.EweCards;
using PaperFlock.Sheets.FeedCharts;
using PaperFlock.Sheets.Handover;
using PaperFlock.Sheets.House;
using PaperFlock.Sheets.HousingSheet;
using PaperFlock.Sheets.Jobs;
using PaperFlock.Sheets.LambingRecord;
using PaperFlock.Sheets.Register;
using PaperFlock.Sheets.RoundLog;
using PaperFlock.Sheets.ScanDay;
using PaperFlock.Sheets.Stores;
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

    /// <summary>The words <c>--sheets</c> knows, in binding order.</summary>
    public static ImmutableArray<string> Kinds { get; } = [RegisterSheet.Kind, .. Makers.Select(m => m.Kind)];

    /// <exception cref="SheetException">Something does not fit an empty page.</exception>
    public static ComposedPack Compose(SeasonPlan plan, ITextMeasurer measurer, PackRequest request)
    {
        var stationery = new Stationery(plan, measurer);
        var sheets = Makers.Where(m => request.Wants(m.Kind)).SelectMany(m => m.Make(stationery)).ToImmutableArray();
        var whole = request.Wants(WallPlannerSheet.KindWord) ? WallPlannerSheet.Whole(stationery) : null;
        if (request.Wants(RegisterSheet.Kind))
        {
            sheets = sheets.Insert(0, RegisterSheet.Make(stationery, sheets, whole));
        }

        return new ComposedPack(stationery.Mark.Id, $"{plan.Flock.Holding.Name} {stationery.Mark.Id}", sheets, whole);
    }
}
