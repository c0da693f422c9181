namespace PaperFlock.Sheets.Theme;

/// <summary>Title at the left, page code at the right, a line to act on below, a heavy rule under it all.</summary>
internal static class PageHead
{
    /// <param name="issue">Which issue it is stands at the right.</param>
    public static Element Of(SheetContext context, string title, string code, Phrase? lead = null, bool issue = false, bool sideways = false)
    {
        var width = sideways ? context.Page.SidewaysBody.Width : context.Page.UprightWidth;
        var codeStyle = code.Length > 6 ? TypeScale.LongCode : TypeScale.Code;
        var codeWidth = context.Measurer.WidthOf(code, codeStyle) + 2;
        var name = Block.Largest(title, context.Measurer, width - codeWidth - 10, TextAlign.Left, TypeScale.Title, TypeScale.SmallerTitle);
        var top = Block.Ends(name with { Tag = StructureTag.Heading(1) }, Block.Text(code, codeStyle, TextAlign.Right), codeWidth, 10);
        if (lead is null && !issue)
        {
            return Block.Column(3, top, new Rule(Lines.Section));
        }

        var below = new Row(
            [
                new RowCell(Track.Share(sideways ? 5 : 3), new Text((lead ?? "").Runs(TypeScale.Lead), Leading: 1.25)),
                issue ? IssueCell(context) : new RowCell(Track.Share(0.01), Block.Text("", TypeScale.Label, TextAlign.Right)),
            ],
            8);
        return Block.Column(3, top, below, new Rule(Lines.Section));
    }

    /// <summary>As wide whichever issue it is, so that none moves what stands beside and below it.</summary>
    private static RowCell IssueCell(SheetContext context) => new(
        Track.Fixed(context.Measurer.WidthOf(PackMark.WidestIssueWords, TypeScale.Label) + 2),
        Block.Text(context.Mark.IssueWords, TypeScale.Label, TextAlign.Right) with { About = NotContent.Instance });
}
