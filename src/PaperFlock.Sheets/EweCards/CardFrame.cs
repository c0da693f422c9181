using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Sheets.House;

namespace PaperFlock.Sheets.EweCards;

/// <summary>A card's content above its control line, which stands at the foot.</summary>
internal static class CardFrame
{
    private static readonly TextStyle Control = Fount.Control with { Size = 7.5 };

    public static Element Of(Stationery stationery, CardFormat format, Element body, string code, string name)
    {
        var mark = stationery.Mark;
        var line = Ink.Text($"{mark.Id} {code} · {mark.IssueWords}", Control);
        var height = Heights.Of(line, format.Content.Width, stationery);
        return new Board(
            format.Content,
            [
                new BoardPlace(0, 0, format.Content.Width, format.Content.Height - height - 3, body),
                new BoardPlace(0, format.Content.Height - height, format.Content.Width, height, line),
            ])
        { Name = name };
    }
}
