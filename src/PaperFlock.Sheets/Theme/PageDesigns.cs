namespace PaperFlock.Sheets.Theme;

/// <summary>Pages of the binder's paper: a head, a control line at the foot, ticks where holes are punched.</summary>
internal static class PageDesigns
{
    /// <param name="renumber">Where the page stands in its sheet, for a sheet put together from several runs of pages.</param>
    public static PageDesign Upright(SheetContext context, string code, Element head, Func<PageNumber, PageNumber>? renumber = null)
    {
        var page = context.Page;
        return new PageDesign(
            page.Paper, page.Upright(PageSide.Front), page.Upright(PageSide.Back), head, null, ControlLine(context, code, page.UprightWidth, renumber), 8,
            side => HoleTicks.Upright(page.Paper, page.Binding, side));
    }

    public static PageDesign Sideways(SheetContext context, string code, Element head, Func<PageNumber, PageNumber>? renumber = null)
    {
        var page = context.Page;
        var paper = Papers.Landscape(page.Paper);
        return new PageDesign(
            paper, page.Sideways(PageSide.Front), page.Sideways(PageSide.Back), head, null, ControlLine(context, code, page.SidewaysBody.Width, renumber), PageSetup.SidewaysGap,
            side => HoleTicks.Sideways(paper, page.Binding, side));
    }

    /// <summary>On one line where it fits the width, else on two.</summary>
    /// <param name="width">Points between the margins.</param>
    public static Element ControlLine(SheetContext context, string code, double width, Func<PageNumber, PageNumber>? renumber = null)
    {
        var (mark, at) = (context.Mark, renumber ?? (n => n));

        // Page counts are known last; room is kept for three figures.
        var oneLine = context.Measurer.WidthOf(mark.WidestControlLine(code), TypeScale.Control) <= width;
        ImmutableArray<Element> lines = oneLine
            ? [new PageText(n => mark.ControlLine(code, at(n)), TypeScale.Control)]
            : [new PageText(n => mark.WhichPage(code, at(n)), TypeScale.Control), new PageText(n => mark.Validity(code, at(n)), TypeScale.Control)];
        return new Column([new Rule(Lines.Grid), .. lines], 3) { About = NotContent.Instance };
    }
}
