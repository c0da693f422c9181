using PaperFlock.Flocks.Drafting;
using PaperFlock.Flocks.Editing;

namespace PaperFlock.Flocks.Lists;

/// <summary>The rows of a list of ewes. What a value may be is for the reader of flock files to say; here it is put into its words.</summary>
/// <param name="tupping">The year, for ages.</param>
internal sealed class EweRows(HeadedTable table, int tupping, DiagnosticBag bag)
{
    private static readonly Dictionary<string, string> ScanWords = new(StringComparer.OrdinalIgnoreCase)
    {
        ["empty"] = "0",
        ["barren"] = "0",
        ["geld"] = "0",
        ["single"] = "1",
        ["twin"] = "2",
        ["twins"] = "2",
        ["triplet"] = "3",
        ["triplets"] = "3",
        ["quad"] = "4",
        ["quads"] = "4",
    };

    /// <returns>Every row with anything in it; none when the list as a whole is of no use.</returns>
    public ImmutableArray<ListedEwe> Read()
    {
        if (table.Rows.IsEmpty || table.Rows.Length > FlockReader.LongestList)
        {
            bag.Add(table.Rows.IsEmpty ? ListMessages.NoRows() : ListMessages.TooManyRows(table.Rows.Length));
            return [];
        }

        var columns = EweColumn.Of(table.Headings, table.Tag);
        NameWhatIsLeftOut(columns);
        var tags = new TagCells(table.Rows.Where(r => table.Tag < r.Length && !r[table.Tag].IsBlank).Select(r => r[table.Tag].Text));
        var dates = new ListDates(columns.Where(c => c.Key is "born" or "marks" or "lambed").SelectMany(Column).SelectMany(c => ListDates.Split(c.Text)));
        bag.Add(columns.FirstOrDefault(c => c.Key == EweColumn.Age) is { } age ? ListMessages.AgeReckoned(age.Heading.Span, tupping) : null);

        return [.. table.Rows.Select(row => Row(row, columns, tags, dates))];
    }

    private void NameWhatIsLeftOut(ImmutableArray<EweColumn> columns)
    {
        foreach (var (_, heading) in table.Headings.Index().Where(h => !h.Item.IsBlank && h.Index != table.Tag && !columns.Any(c => c.At == h.Index)))
        {
            var other = EweColumn.KeyOf(heading.Text) switch
            {
                null => null,
                "tag" => table.Headings[table.Tag],
                var key => columns.FirstOrDefault(c => c.Key == key || (c.Key == "born" && key == EweColumn.Age))?.Heading,
            };
            bag.Add(other is null
                ? ListMessages.UnknownColumn(heading.Span, heading.Text.Trim())
                : ListMessages.SecondColumn(heading.Span, heading.Text.Trim(), other.Text.Trim()));
        }
    }

    private IEnumerable<CsvCell> Column(EweColumn column) => table.Rows.Where(r => column.At < r.Length && !r[column.At].IsBlank).Select(r => r[column.At]);

    private ListedEwe Row(ImmutableArray<CsvCell> row, ImmutableArray<EweColumn> columns, TagCells tags, ListDates dates)
    {
        var tagCell = table.Tag < row.Length ? row[table.Tag] : new CsvCell("", row[0].Span);
        var tag = tags.Read(tagCell, bag);
        var written = columns.Where(c => c.At < row.Length && !row[c.At].IsBlank)
            .Select(c => (Key: c.Key == EweColumn.Age ? "born" : c.Key, Cell: row[c.At], Value: Value(c, row[c.At], dates)))
            .ToList();
        return new ListedEwe(
            row[0].Span.Line,
            tagCell.Text.Trim(),
            written.Find(w => w.Key == "name").Cell?.Text.Trim(),
            tag is null ? null : new DraftEwe([("tag", FlockValue.Text(tag)), .. written.Where(w => w.Value is not null).Select(w => (w.Key, w.Value!))]),
            written.ToImmutableDictionary(w => w.Key, w => w.Cell, StringComparer.Ordinal).Add("tag", tagCell),
            [.. written.Where(w => w.Value is null).Select(w => w.Key)]);
    }

    /// <returns>Null after saying what is wrong.</returns>
    private FlockValue? Value(EweColumn column, CsvCell cell, ListDates dates)
    {
        var text = cell.Text.Trim();
        switch (column.Key)
        {
            case "name" or "breed" or "group" or "note":
                return FlockValue.Text(string.Join(' ', text.Split([' ', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries)));
            case "born":
                return Born(text, cell);
            case EweColumn.Age:
                return Age(text, cell);
            case "weight":
                return WeightCell.Read(text, column.Unit, cell, bag) is { } weight ? FlockValue.Word(weight) : null;
            case "condition":
                return FlockValue.Word(text.Replace(',', '.'));
            case "teeth" or "toes" or "teats":
                return FlockValue.Word(string.Equals(text, "ok", StringComparison.OrdinalIgnoreCase) || string.Equals(text, "good", StringComparison.OrdinalIgnoreCase) ? "sound" : text);
            case "scan":
                return FlockValue.Word(ScanWords.GetValueOrDefault(text, text));
            case "lambed":
                return dates.Read(text, cell, bag) is { } day ? FlockValue.Word(day) : null;
            case "marks":
                var marks = ListDates.Split(text).Select(t => dates.Read(t, cell, bag)).ToArray();
                return marks.Contains(null) ? null : FlockValue.List(marks.OfType<string>().Select(FlockValue.Word));
            default:
                return FlockValue.Word(text);
        }
    }

    /// <summary>A year, or a date of which only the year counts, whichever way round it is.</summary>
    private FlockValue? Born(string text, CsvCell cell) =>
        text.Length == 4 && text.All(char.IsAsciiDigit) ? FlockValue.Word(text)
        : WrittenDate.Read(text) is var (day, other) && (day ?? other) is { } date ? FlockValue.Word(date.Year.ToString(CultureInfo.InvariantCulture))
        : bag.Refuse<FlockValue>(ListMessages.NotADate(cell.Span, text));

    private FlockValue? Age(string text, CsvCell cell) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var years) && years is > 0 and < 30
            ? FlockValue.Word((tupping - years).ToString(CultureInfo.InvariantCulture))
            : bag.Refuse<FlockValue>(ListMessages.NotAnAge(cell.Span, text));
}
