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

        var leaves = ewes.Chunk(CardFormat.PerSheet).ToArray();
        var sides = ImmutableArray.CreateBuilder<SheetSide>(leaves.Length * 2);
        var parts = ImmutableArray.CreateBuilder<SheetPart>(ewes.Length);
        var faces = ewes.Select(e => (Ewe: e, Whole: new StructureId())).Select(card => (
            Front: Card(context, format, card.Ewe, CardFront.Of(context, format, card.Ewe, codes[card.Ewe.Ewe.Tag]), codes).As(StructureTag.Section, card.Whole),
            Back: Card(context, format, card.Ewe, CardBack.Of(context, format, card.Ewe, codes[card.Ewe.Ewe.Tag]), codes).As(StructureTag.Section, card.Whole))).ToArray();
        for (var i = 0; i < leaves.Length; i++)
        {
            var number = new PageNumber(i + 1, leaves.Length, PageSide.Front);
            var cards = faces.AsSpan(i * CardFormat.PerSheet, leaves[i].Length).ToArray();
            ImmutableArray<Piece> fronts = [.. cards.Select(c => c.Front)];
            ImmutableArray<Piece> backs = [.. cards.Select(c => c.Back)];
            parts.AddRange(leaves[i].Select((e, place) => new SheetPart(codes[e.Ewe.Tag], codes[e.Ewe.Tag], e.Ewe, [fronts[place], backs[place]])));
            var front = Page(format, fronts, number);
            var back = Page(format, backs, number with { Side = PageSide.Back });
            var label = $"{Definition.Code} {(i + 1).ToString(CultureInfo.InvariantCulture)}";
            var pair = Binder.Sides(context, Definition.Code, [front, back], isMarked: true);
            sides.Add(pair[0] with { Label = label, Contents = [.. leaves[i].Select(e => (Phrase)e.Ewe)] });
            sides.Add(pair[1] with { Label = $"{label} back" });
        }

        var title = $"Ewe cards, {English.Count(ewes.Length, "card", "cards")}";
        return [new Sheet(Definition, Definition.Code, title, sides.ToImmutable()) { Parts = parts.ToImmutable() }];
    }

    private static Piece Card(SheetContext context, CardFormat format, EwePlan ewe, Element card, ImmutableDictionary<string, string> codes) =>
        context.Mark.Issues.MarkedCard(Fit(context, format, ewe, card), codes[ewe.Ewe.Tag], context.Measurer);

    private static Page Page(CardFormat format, ImmutableArray<Piece> cards, PageNumber number)
    {
        var back = number.Side == PageSide.Back;
        var items = ImmutableArray.CreateBuilder<Item>();
        for (var i = 0; i < cards.Length; i++)
        {
            var (x, y) = format.Corner(i, back);
            items.Add(new PieceItem(x, y, cards[i]));
        }

        if (!back)
        {
            items.AddRange(CutMarks(format));
        }

        return new Page(format.Paper, number.Side, number, new Piece(format.Paper, items.ToImmutable()));
    }

    private static Piece Fit(SheetContext context, CardFormat format, EwePlan ewe, Element card)
    {
        var room = format.Content;
        return card.Place(new Space(room.Width, room.Height, room.Height), context.Layout) switch
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
