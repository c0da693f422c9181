namespace PaperFlock.Sheets.Theme;

/// <summary>What the back of a sheet that hangs on a wall is ruled for, when it is taken down to be written on.</summary>
/// <param name="Title">What is written there.</param>
/// <param name="Columns">What stands in each, and its share of the width.</param>
internal sealed record RuledBack(string Title, ImmutableArray<(string Head, double Share)> Columns)
{
    public Text Heading(string code) => Block.Text($"{code}: {Title}", TypeScale.SmallerTitle) with { About = NotContent.Instance, Tag = StructureTag.Heading(1) };

    public Table Lines(SheetContext context, Size size) => Filling(
        context, size, [.. Columns.Select(c => Track.Share(c.Share))], Block.Heads([.. Columns.Select(c => c.Head)]) with { About = NotContent.Instance }, Title);

    /// <summary>As many rows to write in as fit.</summary>
    /// <param name="size">Of what is to be filled, in points.</param>
    /// <param name="times">So many such places are filled.</param>
    public static Table Filling(SheetContext context, Size size, ImmutableArray<Track> columns, TableRow head, string name, int times = 1)
    {
        var row = context.WriteIn.BarnRow;
        var room = size.Height - Heights.Of(Of(1, 0), size.Width, context) - 1;
        var rows = times * (int)(room / row);
        return Of(Math.Max(1, rows), rows == 0 ? 0 : row);

        Table Of(int count, double high) =>
            new(columns, [head], [.. Enumerable.Repeat(new TableRow([.. columns.Select(_ => Block.Blank())], high, About: NotContent.Instance), count)]) { Name = name };
    }
}
