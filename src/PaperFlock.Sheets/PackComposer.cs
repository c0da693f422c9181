using PaperFlock.Sheets.WallPlanner;

namespace PaperFlock.Sheets;

/// <summary>The front door of this room: a plan in, finished pages out.</summary>
public static class PackComposer
{
    /// <inheritdoc cref="PackMark.IdOf"/>
    public static string IdOf(SeasonPlan plan) => PackMark.IdOf(plan);

    /// <summary>A pack by itself, as if none had been printed before.</summary>
    /// <exception cref="SheetException">Something does not fit an empty page.</exception>
    public static ComposedPack Compose(SeasonPlan plan, ITextMeasurer measurer, PackRequest request) => Compose(plan, measurer, request, null).Pack;

    /// <summary>The next issue of a pack, or the last one once more where no leaf is another.</summary>
    /// <param name="record">What has been printed of it; null for nothing.</param>
    /// <param name="since">The issue to compare with; null for the one that is in the binder, or else the last.</param>
    /// <param name="lastNumber">The highest number there has been, where that is more than the record knows.</param>
    /// <exception cref="ArgumentException">Changed leaves are asked for, and there is nothing to compare with.</exception>
    /// <exception cref="SheetException">Something does not fit an empty page.</exception>
    public static ComposedIssue Compose(SeasonPlan plan, ITextMeasurer measurer, PackRequest request, IssueRecord? record, PackIssue? since = null, int lastNumber = 0) =>
        request.IsOfAll && !request.Draft
            ? new IssueComposer(plan, measurer, request, record, lastNumber).Compose(since)
            : new PartComposer(plan, measurer, request, record).Compose();

    /// <returns>The sheets asked for but the register, which lists them, in binding order, and the planner on larger paper where it is wanted.</returns>
    internal static (ImmutableArray<Sheet> Sheets, Sheet? WholePlanner) Make(SheetContext context, PackRequest request)
    {
        var sheets = PackSheets.All.Where(request.Wants).SelectMany(s => Made(s)).Where(s => s.Use == SheetUse.CutUp || request.Wants(s.Definition, s.Code));
        return ([.. sheets], request.Wants(PackSheets.Planner) && request.Wants(PackSheets.Planner, "") ? WallPlannerSheet.Large(context) : null);

        ImmutableArray<Sheet> Made(SheetDefinition sheet)
        {
            request.Begins?.Invoke(sheet);
            return sheet.Make(context);
        }
    }

    internal static string Title(SheetContext context) => $"{context.Plan.Flock.Holding.Name} {context.Mark.Id}";
}
