using PaperFlock.Sheets.BeforeTheTup;
using PaperFlock.Sheets.CallSheet;
using PaperFlock.Sheets.EweCards;
using PaperFlock.Sheets.FeedCharts;
using PaperFlock.Sheets.Given;
using PaperFlock.Sheets.Handover;
using PaperFlock.Sheets.HousingSheet;
using PaperFlock.Sheets.HowItWent;
using PaperFlock.Sheets.Jobs;
using PaperFlock.Sheets.Register;
using PaperFlock.Sheets.RoundLog;
using PaperFlock.Sheets.ScanDay;
using PaperFlock.Sheets.Stores;
using PaperFlock.Sheets.TupAndRaddle;
using PaperFlock.Sheets.WallPlanner;
using PaperFlock.Sheets.WhatItLooksLike;
using PaperFlock.Sheets.WhoLambsWhen;

namespace PaperFlock.Sheets;

/// <summary>The kinds of sheets a pack is made of.</summary>
public static class PackSheets
{
    /// <summary>In binding order.</summary>
    public static ImmutableArray<SheetDefinition> All { get; } =
    [
        RegisterSheet.Definition,
        HandoverSheet.Definition,
        CallSheetMaker.Definition,
        WallPlannerSheet.Definition,
        DueSheet.Definition,
        JobsSheet.Definition,
        BeforeTheTupSheet.Definition,
        TupAndRaddleSheet.Definition,
        ScanDaySheet.Definition,
        FeedChartSheet.Definition,
        StoresSheet.Definition,
        GivenSheet.Definition,
        HousingSheetMaker.Definition,
        RoundLogSheet.Definition,
        HowItWentSheet.Definition,
        EweCardSheet.Definition,
        LookSheet.Definition,
    ];

    /// <summary>The one that is pinned up as a poster.</summary>
    public static SheetDefinition Planner => WallPlannerSheet.Definition;

    /// <summary>The kind whose leaves have such a page code.</summary>
    /// <param name="pageCode">Such as "FEED-2"; capitals do not matter.</param>
    /// <returns>Null for a code of no sheet of a pack.</returns>
    public static SheetDefinition? OfCode(string pageCode) => All.FirstOrDefault(s => s.Code.Equals(pageCode.Split('-')[0], StringComparison.OrdinalIgnoreCase));
}
