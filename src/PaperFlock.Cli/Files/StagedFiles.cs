namespace PaperFlock.Cli.Files;

/// <summary>
/// Files to be put in place together: each written whole beside where it belongs, flushed, and then moved there in one stroke. Until the first is moved,
/// what was there before is untouched. A run that is killed leaves no file half written, and at most temporary ones, which the next run into that folder
/// sweeps up.
/// </summary>
/// <remarks>A target that is a link is replaced by a file: what the link pointed to is not the output that was named.</remarks>
internal sealed class StagedFiles : IDisposable
{
    private readonly List<(FileStream Temp, OutputFile Target, bool Overwrite)> _files = [];
    private readonly List<string> _foldersMade = [];
    private readonly HashSet<string> _swept = new(StringComparer.Ordinal);

    /// <summary>One file by itself.</summary>
    /// <exception cref="UsageException">It cannot be written.</exception>
    public static void Write(OutputFile target, ReadOnlyMemory<byte> content, Host host, bool overwrite = true)
    {
        using var staged = new StagedFiles();
        staged.Add(target, content, overwrite);
        staged.PutInPlace(host.Stop);
    }

    /// <summary>Writes it beside its target, whose folder is made if it is not there.</summary>
    /// <param name="overwrite">False for a file that must not be there yet, not even since it was last looked for.</param>
    /// <param name="likeOld">Whoever may read and write the file that is there may do so with the new one.</param>
    /// <exception cref="UsageException">It cannot be written there.</exception>
    public void Add(OutputFile target, ReadOnlyMemory<byte> content, bool overwrite = true, bool likeOld = false)
    {
        if (Directory.Exists(target.Full))
        {
            throw new UsageException(Messages.CannotWrite(target.Shown, "that is a folder: give it another name, or write elsewhere"));
        }

        FileTrouble.Told(
            () =>
            {
                var folder = Path.GetDirectoryName(target.Full)!;
                MakeFolder(folder);
                if (_swept.Add(folder))
                {
                    TempFiles.Sweep(folder);
                }

                var temp = TempFiles.New(folder);
                _files.Add((temp, target, overwrite));
                if (likeOld && !OperatingSystem.IsWindows())
                {
                    File.SetUnixFileMode(temp.SafeFileHandle, File.GetUnixFileMode(target.Full));
                }

                temp.Write(content.Span);
                temp.Flush(flushToDisk: true);
            },
            why => Messages.CannotWrite(target.Shown, why));
    }

    /// <summary>In the order they were added.</summary>
    /// <exception cref="UsageException">A file cannot be put in its place; those before it are in theirs.</exception>
    /// <exception cref="OperationCanceledException">The user stopped it before the first was moved.</exception>
    public void PutInPlace(CancellationToken stop)
    {
        stop.ThrowIfCancellationRequested();
        foreach (var (temp, target, overwrite) in _files)
        {
            FileTrouble.Told(() => File.Move(temp.Name, target.Full, overwrite), why => Messages.CannotWrite(target.Shown, why));
        }
    }

    public void Dispose()
    {
        foreach (var (temp, _, _) in _files)
        {
            // On a full disk closing may fail as writing did.
            TempFiles.Quietly(temp.Dispose);
            TempFiles.Quietly(() => File.Delete(temp.Name));
        }

        // Innermost first; one with something in it stays, because deleting it fails.
        _foldersMade.ForEach(folder => TempFiles.Quietly(() => Directory.Delete(folder)));
    }

    private void MakeFolder(string folder)
    {
        for (var missing = folder; missing is not null && !Directory.Exists(missing); missing = Path.GetDirectoryName(missing))
        {
            _foldersMade.Add(missing);
        }

        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception e) when (e is DirectoryNotFoundException or FileNotFoundException)
        {
            // What holds it is there: a place such as /proc, where the system keeps all folders to itself.
            throw new UnauthorizedAccessException(e.Message, e);
        }
    }
}
