using PaperFlock.Layout.Breaking;

namespace PaperFlock.Layout.Elements;

/// <summary>One line of text known only when all pages are, such as "2 of 5". Takes the width offered and the height of a line of <see cref="Text"/>; what turns out too long for the width is an error.</summary>
public sealed record PageText(Func<PageNumber, string> Words, TextStyle Style) : Element
{
    protected internal override StructureTag? UsualTag => StructureTag.Paragraph;

    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        var height = Text.UsualLeading * Style.Size;
        var size = new Size(space.Width, height);
        var metrics = measurer.MetricsOf(Style);
        var baseline = TextLine.BaselineIn(height, metrics.Ascent, metrics.Descent);
        return TooLarge(size, space) ?? (Placement)Fit(size, [new PageTextItem(0, baseline, space.Width, Style, Words)]);
    }
}
