namespace PaperFlock.Sheets.Issues;

/// <summary>What a cell of a table says, however it is laid out.</summary>
internal static class Wording
{
    /// <returns>All words in reading order, and what drawings say; empty for a cell to write in.</returns>
    public static string Of(Element? element) => Tidy(string.Join(' ', Parts(element)));

    /// <summary>One plain space wherever there is space of any kind.</summary>
    public static string Tidy(string words)
    {
        var (tidy, length) = (new char[words.Length], 0);
        foreach (var c in words)
        {
            if (!char.IsWhiteSpace(c))
            {
                tidy[length++] = c;
            }
            else if (length > 0 && tidy[length - 1] != ' ')
            {
                tidy[length++] = ' ';
            }
        }

        return new string(tidy, 0, length > 0 && tidy[length - 1] == ' ' ? length - 1 : length);
    }

    private static IEnumerable<string> Parts(Element? element) => element switch
    {
        null or Picture or { About: NotContent } => [],
        Text text => [text.Words],
        Chart chart => [chart.Says ?? string.Empty],
        Column column => [string.Join(" · ", column.Children.Select(child => string.Join(' ', Parts(child))).Where(words => words.Length > 0))],
        Layers layers => Parts(layers.Content),
        Row row => row.Cells.SelectMany(cell => Parts(cell.Child)),
        Align align => Parts(align.Child),
        Link link => Parts(link.Child),
        _ => throw new InvalidOperationException($"nobody has said what {element.GetType().Name} says in a cell"),
    };
}
