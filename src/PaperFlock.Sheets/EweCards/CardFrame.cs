namespace PaperFlock.Sheets.EweCards;

/// <summary>A card's content above its control line, which stands at the foot.</summary>
internal static class CardFrame
{
    private static readonly TextStyle Control = TypeScale.Control with { Size = 7.5 };

    /// <param name="leaf">Page code of the card.</param>
    /// <param name="face">Front or back, in words.</param>
    public static Element Of(SheetContext context, CardFormat format, Element body, string leaf, string face, string name)
    {
        var mark = context.Mark;
        var line = Block.Text(mark.CardLine(leaf, face), Control) with { About = NotContent.Instance, Tag = StructureTag.RunningFoot };
        var longest = Block.Text(mark.WidestCardLine(leaf, face), Control);
        var height = Heights.Of(longest, format.Content.Width, context);
        return new Board(
            format.Content,
            [
                new BoardPlace(0, 0, format.Content.Width, format.Content.Height - height - 3, body),
                new BoardPlace(0, format.Content.Height - height, format.Content.Width, height, line),
            ])
        { Name = name };
    }
}
