using PaperFlock.Languages;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pieces;
using PaperFlock.Sheets.House;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.TestPage;

/// <summary>Which side this is, and an arrow at its head: on a leaf turned on the long edge both arrows point the same way.</summary>
internal static class TestHead
{
    /// <summary>Millimetres from the head to the words below the heavy rule.</summary>
    public const double Below = 49;
    private const double ArrowTop = 8;
    private const double ArrowFoot = 24;

    /// <param name="left">Left edge of the words, in points; they end at <paramref name="right"/>.</param>
    public static void Draw(TestInk ink, Size paper, Language language, string title, string side, double left, double right)
    {
        Arrow(ink, paper.Width / 2, language);
        ink.Put(Ink.Text(title, Fount.Title, leading: 1.1), left, Mm(34), Mm(110), Mm(12));
        ink.Put(Ink.Text(side, Fount.Title, TextAlign.Right, 1.1), right - Mm(50), Mm(34), Mm(50), Mm(12));
        ink.Add(new LineItem(left, Mm(46.2), right, Mm(46.2), Lines.Section));
    }

    private static void Arrow(TestInk ink, double middle, Language language)
    {
        ink.Add(
            new PathItem([(middle, Mm(ArrowTop)), (middle + Mm(5), Mm(ArrowTop + 8)), (middle - Mm(5), Mm(ArrowTop + 8))], Closed: true, 0),
            new LineItem(middle, Mm(ArrowTop + 7), middle, Mm(ArrowFoot), Lines.Section),
            ink.Centred(language.Say("head of the page"), Fount.Label, middle, Mm(ArrowFoot + 3)));
    }
}
