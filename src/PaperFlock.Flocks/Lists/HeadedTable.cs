namespace PaperFlock.Flocks.Lists;

/// <summary>A spreadsheet's rows below their headings. Headings are one row, or two read as one; what stands above them is a title.</summary>
/// <param name="Source">What the places are in.</param>
/// <param name="Tag">Which column has the ear tags, from 0.</param>
public sealed record HeadedTable(SourceText Source, ImmutableArray<CsvCell> Headings, int Tag, ImmutableArray<ImmutableArray<CsvCell>> Rows)
{
    /// <summary>Rows in which headings are looked for.</summary>
    private const int Top = 6;

    /// <param name="isKnown">Whether a heading means something, beside those that are known to hold tags.</param>
    /// <param name="tagColumn">Which column somebody says has the tags, by its letter, its number or its heading; null to go by the headings.</param>
    /// <returns>Null where no column is known to have the tags, or there is none of that name.</returns>
    public static HeadedTable? Of(CsvTable table, Func<string, bool> isKnown, string? tagColumn)
    {
        var rows = table.Rows;
        var all = new HeadingRows(text => EweColumn.TagRank(text) is not null || isKnown(text));
        if (tagColumn is not null)
        {
            return Said(table, all, tagColumn);
        }

        for (var at = 0; at < Math.Min(Top, rows.Length); at++)
        {
            if (TagIn(rows[at]) is { } tag)
            {
                var above = at == 0 ? [] : rows[at - 1];
                var isTwo = at + 1 < rows.Length && all.GoOn(rows[at], rows[at + 1], tag);
                return isTwo
                    ? new HeadedTable(table.Source, all.Joined(rows[at], rows[at + 1]), tag, rows[(at + 2)..])
                    : new HeadedTable(table.Source, all.Joined(above, rows[at]), tag, rows[(at + 1)..]);
            }
        }

        for (var at = 0; at + 1 < Math.Min(Top, rows.Length); at++)
        {
            var joined = all.Joined(rows[at], rows[at + 1]);
            if (TagIn(joined) is { } tag)
            {
                return new HeadedTable(table.Source, joined, tag, rows[(at + 2)..]);
            }
        }

        return null;
    }

    /// <summary>
    /// Why there is none, where nothing else has been said of the list; else cells to the right of the last heading, of which nobody knows what they are: the
    /// first of each row.
    /// </summary>
    /// <param name="headed">What <see cref="Of"/> made of the table.</param>
    public static void SayWhatIsMissing(CsvTable table, HeadedTable? headed, DiagnosticBag bag)
    {
        bag.Add(headed is not null || bag.HasErrors ? null : table.Rows.IsEmpty ? ListMessages.NoRows() : ListMessages.NoTagColumn(table.Rows[0]));
        if (headed is { Headings: { IsEmpty: false } headings })
        {
            var strays = headed.Rows.Select(r => r.Skip(headings.Length).FirstOrDefault(c => !c.IsBlank)).OfType<CsvCell>();
            bag.AddRange(strays.Select(cell => ListMessages.NoHeading(cell.Span, cell.Text.Trim())));
        }
    }

    /// <summary>A list may have no headings at all: then its first row is a ewe, and nothing but the tag is known of her.</summary>
    private static HeadedTable? Said(CsvTable table, HeadingRows all, string column)
    {
        var rows = table.Rows;
        if (Number(column) is not { } tag)
        {
            var at = rows.Take(Top).ToList().FindIndex(r => Named(r) >= 0);
            return at < 0 ? null : new HeadedTable(table.Source, rows[at], Named(rows[at]), rows[(at + 1)..]);
        }

        if (tag >= rows.Max(r => r.Length))
        {
            return null;
        }

        var head = rows.Take(Top).ToList().FindIndex(r => r.Any(c => all.IsKnown(c.Text)) && !HasTag(r));
        var first = Math.Max(head, 0);
        var isEwe = head < 0 && HasTag(rows[0]);
        return isEwe
            ? new HeadedTable(table.Source, [], tag, rows)
            : new HeadedTable(table.Source, rows[first], tag, rows[(first + 1)..]);

        // A tag has a figure in it, and no heading over tags has one.
        bool HasTag(ImmutableArray<CsvCell> row) => tag < row.Length && row[tag].Text.Any(char.IsAsciiDigit);

        int Named(ImmutableArray<CsvCell> row) => row.ToList().FindIndex(c => Plain(c.Text).Length > 0 && Plain(c.Text) == Plain(column));
    }

    private static int? TagIn(ImmutableArray<CsvCell> row) => row
        .Select((cell, at) => (Rank: EweColumn.TagRank(cell.Text), At: at))
        .Where(c => c.Rank is not null)
        .OrderBy(c => c.Rank)
        .Select(c => (int?)c.At)
        .FirstOrDefault();

    /// <summary>From 0: <c>A</c> is the first, and so is <c>1</c>.</summary>
    private static int? Number(string column) => column.Trim() switch
    {
        [var letter] when char.IsAsciiLetter(letter) => char.ToUpperInvariant(letter) - 'A',
        var text when int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0 => number - 1,
        _ => null,
    };

    private static string Plain(string heading) => string.Concat(heading.Where(char.IsLetterOrDigit)).ToUpperInvariant();

    /// <summary>Two rows of headings made one.</summary>
    private sealed class HeadingRows(Func<string, bool> isKnown)
    {
        public bool IsKnown(string text) => isKnown(text);

        /// <summary>Whether the second row belongs to the headings: it has no tag, and says more of what stands above, as a unit does.</summary>
        public bool GoOn(ImmutableArray<CsvCell> first, ImmutableArray<CsvCell> second, int tag) =>
            (tag >= second.Length || second[tag].IsBlank)
            && Enumerable.Range(0, second.Length).Any(i => !second[i].IsBlank && (isKnown(second[i].Text) || (i < first.Length && isKnown(Both(first[i], second[i])))));

        public ImmutableArray<CsvCell> Joined(ImmutableArray<CsvCell> upper, ImmutableArray<CsvCell> lower)
        {
            var joined = ImmutableArray.CreateBuilder<CsvCell>();
            for (var i = 0; i < Math.Max(upper.Length, lower.Length); i++)
            {
                joined.Add((i < upper.Length ? upper[i] : null, i < lower.Length ? lower[i] : null) switch
                {
                    ({ } one, null) => one,
                    (null, { } one) => one,
                    ({ } up, { } low) when !up.IsBlank && !low.IsBlank && isKnown(Both(up, low)) => low with { Text = Both(up, low) },
                    var (up, low) => isKnown(low!.Text) ? low : isKnown(up!.Text) ? up : low.IsBlank ? up : low,
                });
            }

            return joined.ToImmutable();
        }

        private static string Both(CsvCell upper, CsvCell lower) => $"{upper.Text.Trim()} {lower.Text.Trim()}";
    }
}
