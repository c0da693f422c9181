namespace PaperFlock.Sheets.Theme;

/// <summary>What the back of a sheet that hangs on a wall is ruled for, when it is taken down to be written on.</summary>
/// <param name="Title">What is written there.</param>
/// <param name="Columns">What stands in each, and its share of the width.</param>
internal sealed record RuledBack(string Title, ImmutableArray<(string Head, double Share)> Columns)
{
    public Text Heading(string code) => Block.Text($"{code}: {Title}", TypeScale.SmallerTitle) with { About = NotContent.Instance, Tag = StructureTag.Heading(1) };

    /// <summary>As many rows as fit.</summary>
    /// <param name="size">Of what is to be filled, in points.</param>
    public Table Lines(SheetContext context, Size size)
    {
        var row = context.WriteIn.BarnRow;
        var room = size.Height - Heights.Of(Of(0), size.Width, context) - 1;
        return Of((int)(room / row));

        Table Of(int rows) => new(
            [.. Columns.Select(c => Track.Share(c.Share))],
            [new TableRow([.. Columns.Select(c => Block.Cell(c.Head, TypeScale.Label))], About: NotContent.Instance)],
            [.. Enumerable.Range(0, Math.Max(1, rows)).Select(_ => new TableRow([.. Columns.Select(_ => Block.Blank())], rows == 0 ? 0 : row, About: NotContent.Instance))])
        { Name = Title };
    }
}
