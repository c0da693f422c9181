using PaperFlock.Flocks.Drafting;
using PaperFlock.Flocks.Editing;

namespace PaperFlock.Flocks.Lists;

/// <summary>Tries the ewes of a list on the reader of flock files: what it would refuse is left out at the cell it comes from, and a ewe whose tag it refuses is left out whole.</summary>
internal static class ListTrial
{
    /// <param name="read">What the reader says of a flock file with these ewes as its last, and of which text.</param>
    /// <returns>The rows without what the reader refuses; why is in the bag.</returns>
    public static ImmutableArray<ListedEwe> Of(
        ImmutableArray<ListedEwe> rows, Func<IReadOnlyList<DraftEwe>, (SourceText Source, ImmutableArray<Diagnostic> Found)> read, DiagnosticBag bag)
    {
        // One reading finds what is wrong with all of them; what is left out may show what it hid, so there is another until nothing is wrong.
        while (true)
        {
            var right = Enumerable.Range(0, rows.Length).Where(i => rows[i].Ewe is not null).ToList();
            var (source, found) = right.Count == 0 ? (null, []) : read([.. right.Select(i => rows[i].Ewe!)]);
            var errors = found.Where(d => d.Severity == Severity.Error).ToList();
            if (errors.Count == 0)
            {
                return rows;
            }

            var places = new EwePlaces(source!);
            var before = places.Count - right.Count;
            var placed = errors
                .Where(e => e.Code != FlockEdit.CannotEdit)
                .Select(error => (Error: error, Place: places.At(error.Span)))
                .Where(e => e.Place?.Ewe >= before)
                .GroupBy(e => right[e.Place!.Value.Ewe - before], e => (e.Error, e.Place!.Value.Key))
                .ToList();
            if (placed.Count == 0)
            {
                bag.AddRange(errors.Select(e => e with { Span = SourceSpan.WholeFile }));
                return [.. rows.Select(r => r with { Ewe = null })];
            }

            var without = placed.ToDictionary(row => row.Key, row => Without(rows[row.Key], row, bag));
            rows = [.. rows.Select((row, i) => without.GetValueOrDefault(i, row))];
        }
    }

    private static ListedEwe Without(ListedEwe row, IEnumerable<(Diagnostic Error, string Key)> wrong, DiagnosticBag bag)
    {
        // That the group is missing concerns every row of a list without that column, and hides nothing else.
        foreach (var (error, key) in wrong.DistinctBy(w => (w.Key, w.Error.Code == FlockMessages.NoGroupGivenCode)))
        {
            if (row.Ewe is { } ewe && key != "tag" && ewe.Lines.FirstOrDefault(l => l.Key == key) is { Key: not null } line)
            {
                bag.Add(ListMessages.LeftOut(error with { Span = row.Cells[key].Span }));
                row = row with { Ewe = ewe with { Lines = ewe.Lines.Remove(line) }, LeftOut = row.LeftOut.Add(key) };
            }
            else
            {
                bag.Add(ListMessages.InWordsOfAList(error) with { Span = row.Cells["tag"].Span });
                row = row with { Ewe = null };
            }
        }

        return row;
    }
}
