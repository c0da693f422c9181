namespace PaperFlock.Cli.Entering;

/// <summary>Enters the rows of a spreadsheet, and keeps what came of each.</summary>
internal sealed class RowsTaken(IPencilSheet sheet, AnswerBook book, LocalDate today)
{
    private readonly List<string> _readBack = [];
    private readonly List<string> _refused = [];

    public Tally Tally { get; } = new();

    public IReadOnlyList<string> ReadBack => _readBack;

    /// <summary>Ewes whose rows, each alone, would have made the flock file wrong; why has been shown.</summary>
    public IReadOnlyList<string> Refused => _refused;

    /// <summary>In one write: all of them or none.</summary>
    public bool Together(ImmutableArray<ResultRow> rows)
    {
        var known = rows.Select(r => Known(r.Tag)).ToList();
        if (book.Enter(rows.Select(r => (r.Tag, r.Answer))) is not { } written)
        {
            return false;
        }

        for (var i = 0; i < rows.Length; i++)
        {
            Note(rows[i], known[i], written && Known(rows[i].Tag) != known[i]);
        }

        return true;
    }

    /// <summary>In a write each, so that one that is refused does not keep out the others.</summary>
    public bool EachAlone(ImmutableArray<ResultRow> rows)
    {
        foreach (var row in rows)
        {
            var known = Known(row.Tag);
            if (book.Enter((row.Tag, row.Answer)) is not { } written)
            {
                _refused.Add(book.Find(row.Tag)!.CallName);
                continue;
            }

            Note(row, known, written);
        }

        return _refused.Count == 0;
    }

    private void Note(ResultRow row, string known, bool written)
    {
        var who = book.Find(row.Tag)!.CallName;
        if (!written)
        {
            Tally.Leave(row.Tag);
            _readBack.Add(EnterMessages.SameAgain(who, row.Answer.Words));
            return;
        }

        Tally.Enter(row.Tag, known.Length > 0);
        _readBack.Add(EnterMessages.ReadBack(who, row.Answer.Words));
    }

    private string Known(string tag) => sheet.Known(new Asked(book.Flock, book.Find(tag)!, today));
}
