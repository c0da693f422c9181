using System.Collections.Immutable;
using System.Globalization;
using PaperFlock.Flocks;
using PaperFlock.Languages;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pages;
using PaperFlock.Sheets.House;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Guide;

/// <summary>How to use a pack, on one leaf, or in a long-winded language on two: for whoever is handed a binder and has never seen one.</summary>
public static class UserGuide
{
    private const string Code = "GUIDE";
    private const double Gap = 8;
    private const double Leading = 1.3;

    /// <returns>A front and its back, and more where the words need them, punched as a pack is.</returns>
    /// <exception cref="SheetException">A paragraph does not fit a page of this paper.</exception>
    public static Sheet Compose(Paper paper, ITextMeasurer measurer, Language language)
    {
        var size = Papers.Of(paper);
        var context = new LayoutContext(measurer);
        ImmutableArray<Page> pages;
        try
        {
            pages = Paginator.Paginate(Body(language), Design(language, size, paper == Paper.Letter ? Binding.ThreeHole : Binding.TwoHole), context, PageSide.Front, singleSided: false);
        }
        catch (LayoutException e)
        {
            throw new SheetException(Code, e.Message, e);
        }

        return new Sheet(
            "guide",
            Code,
            language.Say("How to use this pack"),
            SheetUse.Binder,
            [.. pages.Select(p => new SheetSide(p, string.Create(CultureInfo.InvariantCulture, $"{Code} {p.Number.Number}"), []))]);
    }

    private static PageDesign Design(Language language, Size paper, Binding binding) => new(
        paper,
        new Edges(Mm(20), Mm(9), Mm(9), Stationery.UnprintableFoot),
        new Edges(Mm(9), Mm(9), Mm(20), Stationery.UnprintableFoot),
        Ink.Column(
            3,
            new Row(
                [
                    new RowCell(Track.Share(), Ink.Text(language.Say("How to use this pack"), Fount.Title, leading: 1.1), VerticalAlign.Bottom),
                    new RowCell(Track.Fixed(Mm(34)), Ink.Text(Code, Fount.Code, TextAlign.Right), VerticalAlign.Top),
                ],
                10),
            new Rule(Lines.Section)),
        null,
        new Column([new Rule(Lines.Grid), new PageText(n => string.Create(CultureInfo.InvariantCulture, $"{Code} {n.Number}/{n.Of} · ") + language.Say("keep it at the front of the binder"), Fount.Control)], 3),
        Gap,
        side => HoleTicks.Upright(paper, binding, side));

    private static Column Body(Language language) => new(
        [
            .. GuideWords.Front(language).Select(Part),
            Sheets(language),
            new PageBreak(),
            .. GuideWords.Back(language).Select(Part),
        ],
        11);

    private static KeepTogether Part(GuidePart part) => new(new Column(
        [
            Ink.Text(part.Title, Fount.Heading),
            .. part.Steps.Select((s, i) => (Element)new Row(
                [
                    new RowCell(Track.Fixed(16), Ink.Text(part.InOrder ? (i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture) : "·", Fount.BodyBold, leading: Leading)),
                    new RowCell(Track.Share(), Ink.Text(s, Fount.Body, leading: Leading)),
                ])),
        ],
        3));

    private static Table Sheets(Language language) => new(
        [Track.Fixed(Mm(19)), Track.Fixed(Mm(31)), Track.Share()],
        [new TableRow([Ink.Cell(language.Say("code"), Fount.Label), Ink.Cell(language.Say("lives"), Fount.Label), Ink.Cell(language.Say("what it is for"), Fount.Label)])],
        [
            .. GuideWords.Sheets(language).Select(s => new TableRow(
                [Ink.Cell(s.Code, new TextStyle(Face.MonoBold, 11)), Ink.Cell(s.Lives, Fount.Label), Ink.Cell(s.Use, Fount.Body)],
                MinHeight: Mm(8),
                Name: s.Code)),
        ])
    { Name = "sheets" };
}
