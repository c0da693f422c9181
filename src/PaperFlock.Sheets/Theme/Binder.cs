namespace PaperFlock.Sheets.Theme;

/// <summary>Turns bodies into the sides of a sheet, so that every sheet starts on the front of a leaf.</summary>
internal static class Binder
{
    /// <summary>A sheet of upright pages under the usual head.</summary>
    public static Sheet Upright(SheetContext context, SheetDefinition sheet, string title, Phrase lead, Element body, bool issue = false) =>
        Bind(context, sheet, sheet.Code, title, body, PageDesigns.Upright(context, sheet.Code, PageHead.Of(context, title, sheet.Code, lead, issue)));

    /// <summary>The same of pages on their side.</summary>
    public static Sheet Sideways(SheetContext context, SheetDefinition sheet, string title, Phrase lead, Element body) =>
        Bind(context, sheet, sheet.Code, title, body, PageDesigns.Sideways(context, sheet.Code, PageHead.Of(context, title, sheet.Code, lead, sideways: true)));

    public static Sheet Bind(SheetContext context, SheetDefinition sheet, string code, string title, Element body, PageDesign design)
    {
        var sides = Sides(context, code, Pages(context, code, body, design, PageSide.Front, sheet.IsFrontsOnly || context.Page.SingleSided), ruled: sheet.OnBack);
        return new Sheet(sheet, code, title, sides)
        {
            Parts = sheet.IsOneLeaf ? [new SheetPart(Leaves.Id(code, 1), code, title, [.. sides.Where(s => !s.IsBlank).Select(s => s.Page.Content)])] : [],
        };
    }

    /// <summary>Adds the blank backs that keep every later sheet on the front of a leaf, and turns backs for a printer that flips on the short edge.</summary>
    /// <param name="isMarked">What changed since the last issue is marked already.</param>
    /// <param name="ruled">What such backs are ruled for; null for nothing.</param>
    public static ImmutableArray<SheetSide> Sides(SheetContext context, string code, ImmutableArray<Page> pages, bool isMarked = false, RuledBack? ruled = null)
    {
        var sides = ImmutableArray.CreateBuilder<SheetSide>();
        for (var i = 0; i < pages.Length; i++)
        {
            var label = pages.Length == 1 ? code : $"{code} {pages[i].Number.Number}";
            var marked = isMarked ? pages[i] : context.Mark.Issues.Marked(pages[i], code, context.Measurer, context.Print.Duplex == Duplex.ShortEdge);
            var page = i == 0 ? Anchored(marked, code) : marked;
            sides.Add(new SheetSide(Turn(context, page), label, []));
            var backFollows = i + 1 < pages.Length && pages[i + 1].Side == PageSide.Back;
            if (pages[i].Side == PageSide.Front && !backFollows && !context.Page.SingleSided)
            {
                sides.Add(new SheetSide(Turn(context, Back(context, code, pages[i], ruled)), $"{label} back", [], IsBlank: true));
            }
        }

        return sides.ToImmutable();
    }

    public static ImmutableArray<Page> Pages(SheetContext context, string code, Element body, PageDesign design, PageSide startsOn, bool frontsOnly) =>
        Pages(context.Measurer, code, body, design, startsOn, frontsOnly);

    /// <exception cref="SheetException">Something does not fit an empty page.</exception>
    public static ImmutableArray<Page> Pages(ITextMeasurer measurer, string code, Element body, PageDesign design, PageSide startsOn = PageSide.Front, bool frontsOnly = false)
    {
        try
        {
            return Paginator.Paginate(body, design, measurer, startsOn, frontsOnly);
        }
        catch (LayoutException e)
        {
            throw new SheetException(code, e.Message, e);
        }
    }

    /// <summary>An empty back says so, so that a page that failed to print shows.</summary>
    private static Page Back(SheetContext context, string code, Page front, RuledBack? ruled)
    {
        var upright = front.Paper.Width <= front.Paper.Height;
        var back = upright ? context.Page.Upright(PageSide.Back) : context.Page.Sideways(PageSide.Back);
        var foot = Block.Text(context.Mark.CardLine(code, "back"), TypeScale.Control) with { About = NotContent.Instance };
        var design = new PageDesign(front.Paper, back, back, ruled?.Heading(code), null, foot, 6);
        var width = front.Paper.Width - back.Horizontal;
        var room = front.Paper.Height - back.Vertical - Heights.Of(foot, width, context) - (design.Head is { } head ? Heights.Of(head, width, context) + design.Gap : 0) - design.Gap;
        Element body = ruled is not null
            ? ruled.Lines(context, new Size(width, room))
            : new Align(
                Block.Text($"The back of {code} is left blank on purpose.", TypeScale.Body, TextAlign.Centre) with { About = NotContent.Instance },
                TextAlign.Centre,
                VerticalAlign.Middle);
        return Pages(context, code, body, design, PageSide.Front, frontsOnly: true)[0] with { Side = PageSide.Back };
    }

    /// <summary>The register's links lead to the first page of each sheet.</summary>
    private static Page Anchored(Page page, string code) =>
        page with { Content = page.Content with { Items = page.Content.Items.Insert(0, new AnchorItem(0, 0, code)) } };

    private static Page Turn(SheetContext context, Page page) => page.Side == PageSide.Front || context.Print.Duplex != Duplex.ShortEdge
        ? page
        : page with { Content = new Piece(page.Paper, [new PieceItem(0, 0, page.Content, 2)]) };
}
