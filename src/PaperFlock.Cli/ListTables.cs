using PaperFlock.Flocks.Lists;

namespace PaperFlock.Cli;

/// <summary>Opens a spreadsheet's CSV file, and asks which column has the tags where its headings do not say.</summary>
internal static class ListTables
{
    private const int RowsShown = 5;
    private const int MostColumns = 8;
    private const int MostLetters = 20;

    public const string Option = "--tag-column";

    public const string About = "which column of the list has the ear tags, by its letter or its heading, where nothing known stands over it";

    /// <param name="path">As typed.</param>
    /// <param name="tagColumn">As typed; null to go by the headings.</param>
    /// <param name="isKnown">Whether a heading means something here, beside those over tags.</param>
    /// <returns>Without a headed table where it is no list, or nobody can say where the tags are.</returns>
    /// <exception cref="UsageException">It cannot be read, or no column is called so.</exception>
    public static (CsvTable Csv, HeadedTable? Table) Open(string path, string? tagColumn, Func<string, bool> isKnown, DiagnosticBag bag, Host host)
    {
        var csv = CsvTable.Read(path, InputFile.Read(path, host), bag);
        var table = csv.Rows.IsEmpty ? null
            : HeadedTable.Of(csv, isKnown, tagColumn) is { } found ? found
            : tagColumn is not null ? throw new UsageException($"{Option}: {path} has no column `{tagColumn}`; {Columns(csv)}")
            : host.InIsTerminal ? Ask(csv, isKnown, host)
            : null;
        return (csv, table);
    }

    private static HeadedTable? Ask(CsvTable csv, Func<string, bool> isKnown, Host host)
    {
        var width = Math.Min(MostColumns, csv.Rows.Max(r => r.Length));
        host.Out.WriteLine($"No column of {csv.Source.Path} is known to hold ear tags. It begins:");
        new ReportWriter(host).Table(
            [.. Enumerable.Range(0, width).Select(Letter)],
            csv.Rows.Take(RowsShown).Select(row => (IReadOnlyList<string>)[.. Enumerable.Range(0, width).Select(i => i < row.Length ? Short(row[i].Text) : "")]));
        return host.Ask(
            "Which column has the ear tags? Type its letter, or press Enter to leave it. > ",
            typed => HeadedTable.Of(csv, isKnown, typed),
            typed => $"there is no column `{typed}`; {Columns(csv)}");
    }

    private static string Columns(CsvTable csv) =>
        $"there are {ScreenText.List(csv.Rows[0].Take(MostColumns).Select((cell, i) => cell.IsBlank ? Letter(i) : $"{Letter(i)} ({Short(cell.Text)})"))}";

    private static string Letter(int column) => ((char)('A' + column)).ToString();

    private static string Short(string text) => text.Length <= MostLetters ? text : string.Concat(text.AsSpan(0, MostLetters - 1), "\u2026");
}
