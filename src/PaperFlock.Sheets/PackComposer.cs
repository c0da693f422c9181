using PaperFlock.Sheets.Register;
using PaperFlock.Sheets.WallPlanner;

namespace PaperFlock.Sheets;

/// <summary>The front door of this room: a plan in, finished pages out.</summary>
public static class PackComposer
{
    /// <summary>What tells the packs of one holding and season from those of others, such as "HB-2027".</summary>
    public static string IdOf(SeasonPlan plan) => PackMark.Of(plan).Id;

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
        if (request.Wants(RegisterSheet.Definition))
        {
            sheets = [RegisterSheet.Make(context, new Registered(sheets, sheets, whole, null, record?.Issues ?? [IssueLine.First(plan.AsOf)])), .. sheets];
        }

        var title = Title(context);
        var pack = request.Days is { } days
            ? new ComposedPack(context.Mark.Id, $"{title}, {Plain(days)}", sheets, whole) { Set = $"{DateText.Code(days.Start)}-{DateText.Code(days.End)}" }
            : new ComposedPack(context.Mark.Id, title, sheets, whole);
        return new ComposedIssue(pack, null, null, WholeReason.Asked);
    }

    /// <returns>The sheets asked for but the register, which lists them, in binding order, and the planner on larger paper where it is wanted.</returns>
    internal static (ImmutableArray<Sheet> Sheets, Sheet? WholePlanner) Make(SheetContext context, PackRequest request)
    {
        var sheets = PackSheets.All.Where(request.Wants).SelectMany(s => s.Make(context));
        return ([.. sheets], request.Wants(PackSheets.Planner) ? WallPlannerSheet.Large(context) : null);
    }

    internal static string Title(SheetContext context) => $"{context.Plan.Flock.Holding.Name} {context.Mark.Id}";

    /// <summary>A title is searched for, and nobody types a no-break space.</summary>
    private static string Plain(DateInterval days) => DateText.Span(days).Replace('\u00a0', ' ');
}
