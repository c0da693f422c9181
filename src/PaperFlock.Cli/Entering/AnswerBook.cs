namespace PaperFlock.Cli.Entering;

/// <summary>
/// The flock file while answers go into it. It is read afresh before each, because an editor may have it open too, and
/// written whole after each, so that whatever ends the program has lost nothing that was read back.
/// </summary>
/// <param name="path">As typed.</param>
/// <param name="opened">As it is to begin with.</param>
/// <param name="today">What has not happened by then is refused.</param>
internal sealed class AnswerBook(string path, FlockFile opened, Func<DateTimeZone, LocalDate> today, Host host)
{
    private FlockFile _file = opened;
    private Dictionary<string, int> _places = PlacesIn(opened);

    public Flock Flock => _file.Flock;

    /// <summary>She as the file has her now.</summary>
    /// <exception cref="UsageException">She is no longer in it.</exception>
    public Ewe Ewe(string tag) => Flock.Ewes[IndexOf(tag)];

    /// <summary>What the file says now where each of those would say something.</summary>
    public ImmutableArray<AnswerPart> Now(string tag, IEnumerable<AnswerPart> parts) =>
        IndexOf(tag) is var ewe ? [.. parts.Select(part => AnswerChanges.Now(part, _file, ewe))] : [];

    /// <summary>Takes in what others have written meanwhile.</summary>
    /// <exception cref="UsageException">The file cannot be read, or has errors now, which have been shown.</exception>
    public void Refresh()
    {
        var bytes = InputFile.Read(path, host);
        if (!bytes.AsSpan().SequenceEqual(_file.ToBytes()))
        {
            Hold(FlockLoader.Open(path, bytes, today, host)
                ?? throw new UsageException("the flock file has been changed meanwhile, and has errors now; put them right and start again. What you entered before is in it"));
        }
    }

    /// <summary>Writes all the answers, or none.</summary>
    /// <param name="warnings">What is worth a second look now and was not before.</param>
    /// <returns>What came of it: without a file when it would not be right with them. Null when it says so already.</returns>
    /// <exception cref="UsageException">A ewe is no longer in the file, or it cannot be written.</exception>
    public FlockEdit? Enter(IEnumerable<(string Tag, EweAnswer Answer)> answers, out ImmutableArray<Diagnostic> warnings)
    {
        ImmutableArray<FlockChange> changes = [.. answers.SelectMany(a => a.Answer.Parts.SelectMany(part => AnswerChanges.Of(part, _file, IndexOf(a.Tag))))];
        warnings = [];
        if (changes.IsEmpty)
        {
            return null;
        }

        var edit = _file.Apply(changes);
        if (edit.File is { } changed)
        {
            var before = _file.Reading.Diagnostics.Select(d => (d.Code, d.Message)).ToHashSet();
            warnings = [.. edit.Diagnostics.Where(d => !before.Contains((d.Code, d.Message)))];
            FlockWriter.Write(path, _file, changed, host);
            Hold(changed);
        }

        return edit;
    }

    private static Dictionary<string, int> PlacesIn(FlockFile file) => file.Flock.Ewes.Select((ewe, at) => (ewe.Tag, at)).ToDictionary(StringComparer.Ordinal);

    private void Hold(FlockFile file) => (_file, _places) = (file, PlacesIn(file));

    private int IndexOf(string tag) => _places.TryGetValue(tag, out var at)
        ? at
        : throw new UsageException($"the ewe {tag} is no longer in the flock file; start again to go on with the others");
}
