using System.Collections.Immutable;
using PaperFlock.Flocks;
using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Sheets.House;

/// <summary>Turns bodies into the sides of a sheet, so that every sheet starts on the front of a leaf.</summary>
internal static class Binder
{
    /// <summary>Pages that follow each other on fronts and backs.</summary>
    public static ImmutableArray<SheetSide> BothSides(Stationery stationery, string code, Element body, PageDesign design)
    {
        var pages = Paginate(code, body, design, stationery, stationery.SingleSided);
        return Sides(stationery, code, pages);
    }

    /// <summary>Pages on fronts only, each with its back said to be blank: for what is pinned up.</summary>
    public static ImmutableArray<SheetSide> FrontsOnly(Stationery stationery, string code, Element body, PageDesign design) =>
        Sides(stationery, code, Paginate(code, body, design, stationery, singleSided: true));

    /// <summary>Adds the blank backs that keep every later sheet on the front of a leaf, and turns backs for a printer that flips on the short edge.</summary>
    /// <param name="isMarked">What changed since the last issue is marked already.</param>
    public static ImmutableArray<SheetSide> Sides(Stationery stationery, string code, ImmutableArray<Page> pages, bool isMarked = false)
    {
        var sides = ImmutableArray.CreateBuilder<SheetSide>();
        for (var i = 0; i < pages.Length; i++)
        {
            var label = pages.Length == 1 ? code : $"{code} {pages[i].Number.Number}";
            var marked = isMarked ? pages[i] : stationery.Mark.Issues.Marked(pages[i], code, stationery.Measurer);
            var page = i == 0 ? Anchored(marked, code) : marked;
            sides.Add(new SheetSide(Turn(stationery, page), label, []));
            var backFollows = i + 1 < pages.Length && pages[i + 1].Side == PageSide.Back;
            if (pages[i].Side == PageSide.Front && !backFollows && !stationery.SingleSided)
            {
                sides.Add(new SheetSide(Turn(stationery, BlankBack(stationery, code, pages[i])), stationery.Language.Say($"{label} back"), [], IsBlank: true));
            }
        }

        return sides.ToImmutable();
    }

    /// <summary>Pages that will be put together with others on the same leaf.</summary>
    public static ImmutableArray<Page> Pages(Stationery stationery, string code, Element body, PageDesign design, PageSide startsOn, bool frontsOnly) =>
        Paginate(code, body, design, stationery, frontsOnly, startsOn);

    private static ImmutableArray<Page> Paginate(string code, Element body, PageDesign design, Stationery stationery, bool singleSided, PageSide startsOn = PageSide.Front)
    {
        try
        {
            return Paginator.Paginate(body, design, stationery.Context, startsOn, singleSided);
        }
        catch (LayoutException e)
        {
            throw new SheetException(code, e.Message, e);
        }
    }

    /// <summary>An empty back says so, so that a page that failed to print shows.</summary>
    private static Page BlankBack(Stationery stationery, string code, Page front)
    {
        var upright = front.Paper.Width <= front.Paper.Height;
        var back = upright ? stationery.Upright(PageSide.Back) : stationery.Sideways(PageSide.Back);
        var body = new Align(
            Ink.Text(stationery.Language.Say($"The back of {code} is left blank on purpose."), Fount.Body, TextAlign.Centre) with { Name = PageReading.IssueMark },
            TextAlign.Centre,
            VerticalAlign.Middle);
        var design = new PageDesign(front.Paper, back, back, null, null, Ink.Text(stationery.Mark.CardLine(code, stationery.Language.Say("back")), Fount.Control) with { Name = PageReading.IssueMark }, 6);
        return Paginate(code, body, design, stationery, singleSided: true)[0] with { Side = PageSide.Back };
    }

    /// <summary>The register's links lead to the first page of each sheet.</summary>
    private static Page Anchored(Page page, string code) =>
        page with { Content = page.Content with { Items = page.Content.Items.Insert(0, new AnchorItem(0, 0, code)) } };

    private static Page Turn(Stationery stationery, Page page)
    {
        if (page.Side == PageSide.Front || stationery.Print.Duplex != Duplex.ShortEdge)
        {
            return page;
        }

        return page with { Content = new Piece(page.Paper, [new PieceItem(0, 0, page.Content, 2)]) };
    }
}
