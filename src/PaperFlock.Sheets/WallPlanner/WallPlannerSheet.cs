namespace PaperFlock.Sheets.WallPlanner;

/// <summary>What is to be done, week by week, pinned up: a leaf for four busy weeks or eight quiet ones, each below the one before.</summary>
internal static class WallPlannerSheet
{
    public static readonly SheetDefinition Definition = new("planner", "WALL", SheetUse.Pinned)
    {
        Lives = "wall",
        Purpose = "what is to be done this week, on which day; who is due",
        Together = "Wall planner",
        IsFrontsOnly = true,
        IsStruckByHand = true,
        Make = context => Make(context, context.Page.Paper),
    };

    private const double Gap = 4;

    /// <summary>What begins later than sixteen weeks from now is likely to move (common practice, no source).</summary>
    private const int WorthPrintingDays = 16 * 7;

    /// <summary>The same leaves on larger paper, as one sheet; null where the planner is no larger than the pack.</summary>
    public static Sheet? Large(SheetContext context)
    {
        if (context.Print.Planner is PlannerPaper.A4 or PlannerPaper.Letter)
        {
            return null;
        }

        var leaves = Make(context, Papers.Of(context.Print.Planner));
        return leaves.IsEmpty ? null : leaves[0] with { Code = Definition.Code, Title = "Wall planner", Sides = [.. leaves.SelectMany(l => l.Sides).Where(s => !s.IsBlank)] };
    }

    /// <summary>Which weeks share a leaf is settled on the pack's own paper: the larger ones are the same leaves.</summary>
    private static ImmutableArray<Sheet> Make(SheetContext context, Size paper)
    {
        var usual = new PlannerLeaf(context, new PlannerFormat(context.Page.Paper));
        var format = new PlannerFormat(paper);
        var leaf = paper == context.Page.Paper ? usual : new PlannerLeaf(context, format);
        var last = LocalDate.Max(context.Plan.AsOf, context.Plan.From).PlusDays(WorthPrintingDays);
        var leaves = usual.Split(PlannerWeek.Of(context.Plan)).ToArray();
        return [.. leaves.Where(weeks => weeks[^1].Last >= context.Plan.AsOf && weeks[0].Start <= last).Select(weeks => Leaf(context, format, leaf, weeks, isLast: weeks == leaves[^1]))];
    }

    /// <param name="weeks">All of the leaf's, those that are over as well: they give it its code, and are left off.</param>
    private static Sheet Leaf(SheetContext context, PlannerFormat format, PlannerLeaf leaf, ImmutableArray<PlannerWeek> weeks, bool isLast)
    {
        var left = weeks.RemoveAll(w => w.Last < context.Plan.AsOf);
        var code = $"{Definition.Code}-{DateText.Code(weeks[0].Start)}";
        var days = $"{DateText.Short(left[0].Start)} to {DateText.Long(left[^1].Last)}";
        var design = new PageDesign(format.Paper, PlannerFormat.Margins, PlannerFormat.Margins, leaf.Head(days, code), null, PageDesigns.ControlLine(context, code, format.Width), Gap);
        return Binder.Bind(context, Definition, code, $"Wall planner, {days}", leaf.Body(left, weeks, isLast), design) with { Last = weeks[^1].Last };
    }
}
