namespace PaperFlock.Sheets.EweCards;

/// <summary>A card a ewe, for the pocket: who she is and what is planned on the front, her lambing to write down on the back.</summary>
internal static class EweCardSheet
{
    public static readonly SheetDefinition Definition = new("cards", "CARD", SheetUse.CutUp)
    {
        Lives = "pocket, box",
        Purpose = "a ewe: who she is, when she is due, what is done to her; her lambing on the back",
        IsForSitter = true,
        Make = Make,
    };

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var format = new CardFormat(context.Page.Paper, context.Print.Duplex == Flocks.Duplex.ShortEdge);
        var codes = CardCodes.Of(context.Plan.Ewes);
        var ewes = context.Plan.Ewes.Where(e => e.Standing != Standing.Gone).Where(context.MayLamb).Where(e => context.OnlyCards?.Contains(codes[e.Ewe.Tag]) != false).ToArray();
        if (ewes.Length == 0)
        {
            return [];
        }

        ImmutableArray<SheetPart> cards = [.. ewes.Select(e => Card(context, format, e, codes[e.Ewe.Tag]))];
        var leaves = cards.Chunk(CardFormat.PerSheet).ToArray();
        var sides = ImmutableArray.CreateBuilder<SheetSide>(leaves.Length * 2);
        foreach (var (i, leaf) in leaves.Index())
        {
            var number = new PageNumber(i + 1, leaves.Length, PageSide.Front);
            var front = Page(format, leaf.Select(c => c.Pieces[0]), number);
            var back = Page(format, leaf.Select(c => c.Pieces[1]), number with { Side = PageSide.Back });
            var label = $"{Definition.Code} {(i + 1).ToString(CultureInfo.InvariantCulture)}";
            var pair = Binder.Sides(context, Definition.Code, [front, back], isMarked: true);
            sides.Add(pair[0] with { Label = label, Contents = [.. leaf.Select(c => c.Title)] });
            sides.Add(pair[1] with { Label = $"{label} back" });
        }

        var title = $"Ewe cards, {English.Count(ewes.Length, "card", "cards")}";
        return [new Sheet(Definition, Definition.Code, title, sides.ToImmutable()) { Parts = cards }];
    }

    /// <summary>Both faces are one section to whoever has them read out.</summary>
    private static SheetPart Card(SheetContext context, CardFormat format, EwePlan ewe, string code)
    {
        var whole = new StructureId();
        return new SheetPart(code, code, ewe.Ewe, [Face(CardFront.Of(context, format, ewe, code)), Face(CardBack.Of(context, format, ewe, code))]);

        Piece Face(Element card) => context.Mark.Issues.MarkedCard(Fit(context, format, ewe, card), code, context.Measurer).As(StructureTag.Section, whole);
    }

    private static Page Page(CardFormat format, IEnumerable<Piece> cards, PageNumber number)
    {
        var isBack = number.Side == PageSide.Back;
        return new Page(format.Paper, number.Side, number, new Piece(format.Paper, [.. cards.Select(Placed), .. isBack ? [] : CutMarks(format)]));

        PieceItem Placed(Piece card, int place)
        {
            var (x, y) = format.Corner(place, isBack);
            return new PieceItem(x, y, card);
        }
    }

    private static Piece Fit(SheetContext context, CardFormat format, EwePlan ewe, Element card)
    {
        var room = format.Content;
        return card.Place(new Space(room.Width, room.Height, room.Height), context.Measurer) switch
        {
            Placement.Fits fits => fits.Piece,
            Placement.Wraps wraps => throw Misfit(ewe, $"{string.Join(" > ", wraps.Path)}: {wraps.Reason}"),
            _ => throw Misfit(ewe, "more than one card can hold"),
        };
    }

    private static SheetException Misfit(EwePlan ewe, string reason) =>
        new($"card of {ewe.Ewe.CallName}", reason, new InvalidOperationException($"card of {ewe.Ewe.Tag}"));

    /// <summary>Ticks at the edges and a small cross in the middle: one cut each way, by the fronts.</summary>
    private static IEnumerable<Item> CutMarks(CardFormat format)
    {
        var (x, y) = (format.Card.Width, format.Card.Height);
        var (near, far) = (PageSetup.Unprintable, PageSetup.Unprintable + 12);
        yield return new LineItem(x, near, x, far, Lines.Crop);
        yield return new LineItem(x, format.Paper.Height - Mm(12) - 12, x, format.Paper.Height - Mm(12), Lines.Crop);
        yield return new LineItem(near, y, far, y, Lines.Crop);
        yield return new LineItem(format.Paper.Width - far, y, format.Paper.Width - near, y, Lines.Crop);
        yield return new LineItem(x - 6, y, x + 6, y, Lines.Crop);
        yield return new LineItem(x, y - 6, x, y + 6, Lines.Crop);
    }
}
