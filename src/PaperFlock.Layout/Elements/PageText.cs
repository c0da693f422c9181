using PaperFlock.Layout.Breaking;

namespace PaperFlock.Layout.Elements;

/// <summary>One line of text known only when all pages are, such as "2 of 5". Takes the width offered and the height of a line of <see cref="Text"/>; what turns out too long for the width is an error.</summary>
public sealed record PageText(Func<PageNumber, string> Words, TextStyle Style, TextAlign Align = TextAlign.Left) : Element
{
    protected internal override StructureTag? UsualTag => StructureTag.Paragraph;

    public override Placement Place(Space space, LayoutContext context)
    {
        var height = Text.UsualLeading * Style.Size;
        if (height > space.Height + Space.Epsilon)
        {
            return Wrap(Points.Needs(height, space.Height));
        }

        var metrics = context.Measurer.MetricsOf(Style);
        var baseline = TextLine.BaselineIn(height, metrics.Ascent, metrics.Descent);
        return Fit(new Size(space.Width, height), [new PageTextItem(0, baseline, space.Width, Align, Style, Words)]);
    }
}
