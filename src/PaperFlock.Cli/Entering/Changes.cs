namespace PaperFlock.Cli.Entering;

/// <summary>What a sitting has changed, a line a ewe, so that old and new can be shown side by side and any line undone.</summary>
internal sealed class Changes(PencilSheet sheet, AnswerBook book, LocalDate today)
{
    private readonly OrderedDictionary<string, Change> _changes = new(StringComparer.Ordinal);

    /// <summary>Ewes that are not as they were, in the order in which they were first changed.</summary>
    public ImmutableArray<Change> All => [.. _changes.Values.Where(c => !c.IsUndone)];

    public int Entered => All.Count(c => c.Was.Length == 0);

    public int Changed => All.Length - Entered;

    public Ewe Ewe(string tag) => book.Ewe(tag);

    /// <summary>What the sheet says of her by the file as it is now.</summary>
    public string Known(string tag) => sheet.Known(new Asked(book.Flock, book.Ewe(tag), today));

    /// <summary>To be asked before an answer is written.</summary>
    public Change Before(string tag, EweAnswer answer)
    {
        var change = _changes.GetValueOrDefault(tag) ?? new Change(tag, Known(tag));
        foreach (var part in book.Now(tag, answer.Parts))
        {
            change.Old.TryAdd(part.Key, part);
        }

        return change;
    }

    /// <summary>To be told after it is written.</summary>
    public void Note(Change change)
    {
        change.New = book.Now(change.Tag, change.Old.Values);
        _changes.TryAdd(change.Tag, change);
    }

    /// <returns>Null when it is as it was again; else why not.</returns>
    public string? Undo(Change change)
    {
        book.Refresh();
        var whyNot = !Change.Same(book.Now(change.Tag, change.Old.Values), change.New) ? "she has been changed elsewhere meanwhile, and is left as she is now"
            : book.Enter([(change.Tag, new EweAnswer("", [.. change.Old.Values]))], out _) is { File: null } refused ? EnterMessages.Refused(refused)
            : null;
        if (whyNot is null)
        {
            Note(change);
        }

        return whyNot;
    }
}

/// <param name="Was">What the sheet said of her before; empty for nothing.</param>
internal sealed record Change(string Tag, string Was)
{
    public Dictionary<string, AnswerPart> Old { get; } = new(StringComparer.Ordinal);

    public ImmutableArray<AnswerPart> New { get; set; } = [];

    public bool IsUndone => Same(Old.Values, New);

    public static bool Same(IEnumerable<AnswerPart> one, IEnumerable<AnswerPart> other) => one.Zip(other).All(p => p.First.IsSame(p.Second));
}
