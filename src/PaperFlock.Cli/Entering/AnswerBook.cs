using PaperFlock.Cli.Files;
using PaperFlock.Flocks.Editing;

namespace PaperFlock.Cli.Entering;

/// <summary>
/// The flock file while answers go into it. It is read afresh before each, because an editor may have it open too, and
/// written whole after each, so that whatever ends the program has lost nothing that was read back.
/// </summary>
internal sealed class AnswerBook
{
    private readonly string _path;
    private readonly Host _host;
    private FlockFile _file;
    private byte[] _bytes;

    private AnswerBook(string path, Host host, FlockFile file, byte[] bytes) =>
        (_path, _host, _file, _bytes) = (path, host, file, bytes);

    public Flock Flock => _file.Flock;

    /// <returns>Null when the flock file has errors; they have been shown.</returns>
    /// <exception cref="UsageException">It cannot be read.</exception>
    public static AnswerBook? Open(string path, Host host)
    {
        var bytes = InputFile.Read(path, host);
        return FlockLoader.Open(path, bytes, host) is { } file ? new AnswerBook(path, host, file, bytes) : null;
    }

    /// <summary>She as the file has her now; null when she is no longer in it.</summary>
    public Ewe? Find(string tag) => Flock.Ewes.FirstOrDefault(e => e.Tag == tag);

    /// <summary>Takes in what others have written meanwhile.</summary>
    /// <exception cref="UsageException">The file cannot be read, or has errors now, which have been shown.</exception>
    public void Refresh()
    {
        var bytes = InputFile.Read(_path, _host);
        if (bytes.AsSpan().SequenceEqual(_bytes))
        {
            return;
        }

        _file = FlockLoader.Open(_path, bytes, _host)
            ?? throw new UsageException("the flock file has been changed meanwhile, and has errors now; put them right and start again. What you entered before is in it");
        _bytes = bytes;
    }

    /// <summary>Writes all the answers, or none.</summary>
    /// <returns>Whether anything was written; null when the file would not be right with them, and the reasons have been shown.</returns>
    /// <exception cref="UsageException">The file cannot be written.</exception>
    public bool? Enter(params IEnumerable<(string Tag, EweAnswer Answer)> answers)
    {
        ImmutableArray<FlockChange> changes = [.. answers.SelectMany(a => AnswerChanges.Of(a.Answer, _file, a.Tag))];
        if (changes.IsEmpty)
        {
            return false;
        }

        var edit = _file.Apply(changes);
        if (edit.File is not { } changed)
        {
            DiagnosticsOut.Write(edit.Source, [.. edit.Diagnostics.Where(d => d.Severity == Severity.Error)], _host);
            return null;
        }

        var bytes = changed.ToBytes();
        FlockWriter.Write(_path, _bytes, bytes, _host);
        (_file, _bytes) = (changed, bytes);
        return true;
    }
}
