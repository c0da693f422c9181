using PaperFlock.Layout.Pages;

namespace PaperFlock.Layout.Elements;

/// <summary>One line of text known only when all pages are, such as "2 of 5". Takes the width offered.</summary>
public sealed record PageText(Func<PageNumber, string> Words, TextStyle Style, TextAlign Align = TextAlign.Left) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}
