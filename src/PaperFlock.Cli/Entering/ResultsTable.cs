using PaperFlock.Flocks.Lists;

namespace PaperFlock.Cli.Entering;

/// <summary>Results from a spreadsheet: a row a ewe, found by her tag, with columns by their headings in any order.</summary>
/// <param name="which">Asks which of several ewes is meant whose tags all end so; null where there is nobody to ask, or no answer.</param>
internal sealed class ResultsTable(PencilSheet sheet, HeadedTable table, Func<string, ImmutableArray<Ewe>, Ewe?> which, DiagnosticBag bag)
{
    /// <summary>Columns that no sheet asks for, told from a column that was meant for results and has a slip in its heading.</summary>
    private static readonly ResultColumn[] Ignored = [new("name", "ewe", "ewe name"), new("note", "notes", "comment", "comments", "remarks"), new("breed"), new("group"), new("born")];

    /// <summary>Whether a heading stands over results of a sheet, or over something that is often beside them.</summary>
    public static bool IsKnown(PencilSheet sheet, string heading) => sheet.Columns.Concat(Ignored).Any(c => Is(c, heading));

    /// <summary>Answers in the order of the file; what is wrong is in the bag.</summary>
    /// <param name="onSheet">The tags on the printed sheet.</param>
    public ImmutableArray<ResultRow> Read(Flock flock, IReadOnlySet<string> onSheet, LocalDate today)
    {
        if (Columns() is not { IsEmpty: false } columns)
        {
            return [];
        }

        var finder = new TagFinder(flock.Ewes);
        var found = table.Rows.Select(row => (Row: row, Ewe: Find(row, finder))).Where(r => r.Ewe is not null).GroupBy(r => r.Ewe!.Tag, StringComparer.Ordinal);
        var results = ImmutableArray.CreateBuilder<ResultRow>();
        foreach (var rows in found.Select(ewe => ewe.ToList()))
        {
            var (ewe, tag) = (rows[0].Ewe!, rows[0].Row[table.Tag]);
            if (rows.Count > 1 && !sheet.RowsMayRepeat)
            {
                // Nobody but the keeper knows which of them is right.
                bag.AddRange(rows.Skip(1).Select(r => ResultMessages.TagTwice(r.Row[table.Tag].Span, ewe.Tag, tag.Span.Line)));
                continue;
            }

            if (Answer([.. rows.SelectMany(r => columns.Where(c => c.At < r.Row.Length && !r.Row[c.At].IsBlank).Select(c => (c.Column, r.Row[c.At])))], new Asked(flock, ewe, today)) is not { } answer)
            {
                continue;
            }

            results.Add(new ResultRow(ewe.Tag, answer, tag));
            bag.Add(onSheet.Contains(ewe.Tag) ? null : ResultMessages.NotOnTheSheet(tag.Span, ewe.CallName, sheet.Title));
        }

        return results.ToImmutable();
    }

    /// <returns>Null after saying what is wrong with the tag.</returns>
    private Ewe? Find(ImmutableArray<CsvCell> row, TagFinder finder)
    {
        if (table.Tag >= row.Length || row[table.Tag].IsBlank)
        {
            return bag.Refuse<Ewe>(ResultMessages.NoTag(row[0].Span));
        }

        var cell = row[table.Tag];
        var text = TagCells.Unwrapped(cell.Text);
        return finder.Find(text) switch
        {
            [var ewe] => ewe,
            [] => bag.Refuse<Ewe>(TagCells.IsExponent(text) ? ListMessages.Exponent(cell.Span, text) : ResultMessages.UnknownTag(cell.Span, text)),
            var several => which(text, several) ?? bag.Refuse<Ewe>(ResultMessages.SeveralTags(cell.Span, text, several)),
        };
    }

    /// <summary>What the cells say together, without those that cannot be: those are named.</summary>
    /// <returns>Null when nothing is left.</returns>
    private EweAnswer? Answer(ImmutableArray<(string Column, CsvCell Cell)> written, Asked asked)
    {
        while (!written.IsEmpty)
        {
            var (answer, whyNot, at) = sheet.Understand([.. written.Select(w => (w.Column, w.Cell.Text.Trim()))], asked);
            if (answer is not null)
            {
                return answer;
            }

            bag.Add(ResultMessages.LeftOut(written[at].Cell.Span, asked.Ewe.CallName, whyNot!));
            written = written.RemoveAt(at);
        }

        return null;
    }

    /// <returns>Empty when there is nothing to enter.</returns>
    private ImmutableArray<(int At, string Column)> Columns()
    {
        var found = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (heading, at) in table.Headings.Select((heading, at) => (heading, at)).Where(h => !h.heading.IsBlank && h.at != table.Tag))
        {
            bag.Add(
                sheet.Columns.FirstOrDefault(c => Is(c, heading.Text)) is { } column
                    ? found.TryAdd(column.Name, at) ? null : ResultMessages.ColumnTwice(heading.Span, column.Name, table.Headings[found[column.Name]].Text)
                : Ignored.Any(c => Is(c, heading.Text)) ? null
                : ResultMessages.UnknownColumn(heading.Span, heading.Text, NearestWord.Find(heading.Text, sheet.Columns.SelectMany(c => c.Headings.Prepend(c.Name)))));
        }

        bag.Add(found.Count == 0 ? ResultMessages.NoResultColumn(table.Headings.IsEmpty ? SourceSpan.WholeFile : table.Headings[0].Span, sheet.Columns) : null);

        return [.. sheet.Columns.Where(c => found.ContainsKey(c.Name)).Select(c => (found[c.Name], c.Name))];
    }

    private static bool Is(ResultColumn column, string heading) =>
        column.Headings.Prepend(column.Name).Any(h => string.Equals(Plain(h), Plain(heading), StringComparison.Ordinal));

    private static string Plain(string heading) => string.Concat(heading.Where(char.IsLetterOrDigit)).ToLowerInvariant();
}

/// <param name="TagCell">Where she stands in the spreadsheet.</param>
internal sealed record ResultRow(string Tag, EweAnswer Answer, CsvCell TagCell);
