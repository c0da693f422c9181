using PaperFlock.Flocks.Lists;

namespace PaperFlock.Cli.Entering;

/// <summary>Results from a spreadsheet: a row a ewe, found by her tag, with columns by their headings in any order.</summary>
internal sealed class ResultsTable(IPencilSheet sheet, CsvTable table, DiagnosticBag bag)
{
    private static readonly ResultColumn Tag = new("tag", "ear tag", "eartag", "tag number", "tag no", "ewe tag", "eid", "id", "ear tag number");

    /// <summary>Columns that no sheet asks for, told from a column that was meant for results and has a slip in its heading.</summary>
    private static readonly ResultColumn[] Ignored = [new("name", "ewe", "ewe name"), new("note", "notes", "comment", "comments", "remarks"), new("breed"), new("group"), new("born")];

    /// <summary>Answers in the order of the file; what is wrong is in the bag.</summary>
    /// <param name="ewes">The tags on the printed sheet.</param>
    public ImmutableArray<ResultRow> Read(Flock flock, IReadOnlySet<string> ewes, LocalDate today)
    {
        if (table.Headings.IsEmpty)
        {
            bag.Add(ResultMessages.Empty());
            return [];
        }

        if (Columns() is not { } columns)
        {
            return [];
        }

        var tags = new TagFinder(flock.Ewes.Select(e => e.Tag));
        var lines = new Dictionary<string, int>(StringComparer.Ordinal);
        var twice = new HashSet<string>(StringComparer.Ordinal);
        var rows = ImmutableArray.CreateBuilder<ResultRow>();
        foreach (var row in table.Rows)
        {
            var tag = row.Length > columns.Tag ? row[columns.Tag] : null;
            if (tag is null || tag.IsBlank)
            {
                bag.Add(ResultMessages.NoTag(row[0].Span));
                continue;
            }

            if (!tags.Has(tag.Text))
            {
                bag.Add(ResultMessages.UnknownTag(tag.Span, tag.Text, tags.Meant(tag.Text)));
                continue;
            }

            if (!sheet.RowsMayRepeat && !lines.TryAdd(tag.Text, tag.Span.Line))
            {
                bag.Add(ResultMessages.TagTwice(tag.Span, tag.Text, lines[tag.Text]));
                // Nobody but the keeper knows which of them is right.
                twice.Add(tag.Text);
                continue;
            }

            var ewe = flock.Ewes.First(e => e.Tag == tag.Text);
            if (Answer(row, columns.Results, new Asked(flock, ewe, today)) is { } answer)
            {
                rows.Add(new ResultRow(ewe.Tag, answer));
                if (!ewes.Contains(ewe.Tag))
                {
                    bag.Add(ResultMessages.NotOnTheSheet(tag.Span, ewe.CallName, sheet.Title));
                }
            }
        }

        return [.. rows.Where(r => !twice.Contains(r.Tag)).GroupBy(r => r.Tag, StringComparer.Ordinal).Select(Together)];
    }

    private static ResultRow Together(IGrouping<string, ResultRow> rows) => rows.First() with
    {
        Answer = new EweAnswer(
            string.Join(", ", rows.Select(r => r.Answer.Words).Distinct(StringComparer.Ordinal)),
            [.. rows.SelectMany(r => r.Answer.Parts).Distinct()]),
    };

    /// <returns>Null when nothing is written in the row, or something that is refused.</returns>
    private EweAnswer? Answer(ImmutableArray<CsvCell> row, ImmutableArray<(int At, string Column)> columns, Asked asked)
    {
        ImmutableArray<(string Column, CsvCell Cell)> written = [.. columns.Where(c => c.At < row.Length && !row[c.At].IsBlank).Select(c => (c.Column, row[c.At]))];
        if (written.IsEmpty)
        {
            return null;
        }

        var (what, column) = sheet.Understand([.. written.Select(w => (w.Column, w.Cell.Text.Trim()))], asked);
        if (what.Answer is null)
        {
            var at = written.FirstOrDefault(w => w.Column == column, written[0]).Cell.Span;
            bag.Add(ResultMessages.Refused(at, asked.Ewe.CallName, what.WhyNot!));
        }

        return what.Answer;
    }

    /// <returns>Null when there is no tag, or nothing to enter.</returns>
    private (int Tag, ImmutableArray<(int At, string Column)> Results)? Columns()
    {
        var found = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < table.Headings.Length; i++)
        {
            var heading = table.Headings[i];
            if (heading.IsBlank)
            {
                continue;
            }

            if (new[] { Tag }.Concat(sheet.Columns).FirstOrDefault(c => Is(c, heading.Text)) is { } column)
            {
                if (!found.TryAdd(column.Name, i))
                {
                    bag.Add(ResultMessages.ColumnTwice(heading.Span, column.Name, table.Headings[found[column.Name]].Text));
                }
            }
            else if (!Ignored.Any(c => Is(c, heading.Text)))
            {
                bag.Add(ResultMessages.UnknownColumn(heading.Span, heading.Text, NearestWord.Find(heading.Text, sheet.Columns.SelectMany(c => c.Headings.Prepend(c.Name)))));
            }
        }

        if (!found.TryGetValue(Tag.Name, out var tag))
        {
            bag.Add(ResultMessages.NoTagColumn(table.Headings[0].Span));
            return null;
        }

        if (found.Count == 1)
        {
            bag.Add(ResultMessages.NoResultColumn(table.Headings[0].Span, sheet.Columns));
            return null;
        }

        return (tag, [.. sheet.Columns.Where(c => found.ContainsKey(c.Name)).Select(c => (found[c.Name], c.Name))]);
    }

    private static bool Is(ResultColumn column, string heading) =>
        column.Headings.Prepend(column.Name).Any(h => string.Equals(Plain(h), Plain(heading), StringComparison.Ordinal));

    private static string Plain(string heading) => string.Concat(heading.Where(char.IsLetterOrDigit)).ToLowerInvariant();
}

internal sealed record ResultRow(string Tag, EweAnswer Answer);
