namespace PaperFlock.Cli.Entering;

/// <summary>Enters the rows of a spreadsheet in one write.</summary>
internal sealed class RowsTaken(AnswerBook book, Changes changes, DiagnosticBag bag)
{
    /// <param name="goodOnly">Rows that do not agree with the flock file do not keep out the others; else it is all or none.</param>
    /// <returns>Whether the file says so now. What did not agree is in the bag, at its row.</returns>
    public bool Enter(ImmutableArray<ResultRow> rows, bool goodOnly)
    {
        while (true)
        {
            var before = rows.Select(r => changes.Before(r.Tag, r.Answer)).ToList();
            var edit = book.Enter(rows.Select(r => (r.Tag, r.Answer)), out _);
            if (edit is null or { File: not null })
            {
                before.ForEach(changes.Note);
                return true;
            }

            var refused = Blame(edit, rows);
            rows = rows.RemoveAll(r => refused.Contains(r.Tag));
            if (!goodOnly || refused.Count == 0)
            {
                return false;
            }
        }
    }

    /// <summary>Names what is wrong at the rows it comes from.</summary>
    /// <returns>Their tags.</returns>
    private HashSet<string> Blame(FlockEdit edit, ImmutableArray<ResultRow> rows)
    {
        var places = new EwePlaces(edit.Source);
        var refused = new HashSet<string>(StringComparer.Ordinal);
        foreach (var error in edit.Diagnostics.Where(d => d.Severity == Severity.Error))
        {
            var tag = places.At(error.Span) is { } place ? book.Flock.Ewes[place.Ewe].Tag : null;
            var row = rows.FirstOrDefault(r => r.Tag == tag);
            bag.Add(error with { Span = row?.TagCell.Span ?? SourceSpan.WholeFile });
            if (row is not null)
            {
                refused.Add(row.Tag);
            }
        }

        return refused;
    }
}
