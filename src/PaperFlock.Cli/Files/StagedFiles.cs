namespace PaperFlock.Cli.Files;

/// <summary>
/// Files written whole beside where they belong, then moved into place together. Until then, and after any failure,
/// what was there before is untouched; disposing takes away whatever was not moved.
/// </summary>
internal sealed class StagedFiles : IDisposable
{
    private readonly List<(string Temp, string Target, string Shown, bool Overwrite)> _waiting = [];
    private readonly List<string> _foldersMade = [];

    /// <summary>Makes a folder for several to write into; it goes again on disposal if nothing has come into it.</summary>
    /// <param name="folder">Full path.</param>
    /// <param name="shown">What messages call it.</param>
    /// <exception cref="UsageException">It cannot be made.</exception>
    public void AddFolder(string folder, string shown)
    {
        try
        {
            MakeFolder(folder);
        }
        catch (Exception e) when (FileTrouble.IsOfFiles(e))
        {
            throw new UsageException(Words.CannotWriteInto(shown, FileTrouble.Reason(e)), e);
        }
    }

    /// <param name="target">Full path; its folder is made if it is not there.</param>
    /// <param name="shown">What messages call it.</param>
    /// <param name="overwrite">False for a file that must not be there yet, not even since it was last looked for.</param>
    /// <param name="likeOld">Whoever may read and write the file that is there may do so with the new one.</param>
    /// <exception cref="UsageException">It cannot be written there.</exception>
    public void Add(string target, string shown, ReadOnlySpan<byte> content, bool overwrite = true, bool likeOld = false)
    {
        try
        {
            if (Directory.Exists(target))
            {
                throw new UsageException(Words.CannotWrite(shown, Words.IsAFolder));
            }

            var folder = Path.GetDirectoryName(target)!;
            MakeFolder(folder);
            // The name is short and random: a long one might not fit, and two runs at once must not share it.
            var temp = Path.Combine(folder, $".paperflock-{Path.GetRandomFileName()}.tmp");
            using var file = new FileStream(temp, FileMode.CreateNew, FileAccess.Write, FileShare.None);
            _waiting.Add((temp, target, shown, overwrite));
            if (likeOld && !OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(file.SafeFileHandle, File.GetUnixFileMode(target));
            }

            file.Write(content);
            file.Flush(flushToDisk: true);
        }
        catch (Exception e) when (FileTrouble.IsOfFiles(e))
        {
            throw new UsageException(Words.CannotWrite(shown, FileTrouble.Reason(e)), e);
        }
    }

    /// <exception cref="UsageException">A file could not be put in its place; those not yet moved never will be.</exception>
    public void PutInPlace()
    {
        while (_waiting.Count > 0)
        {
            var (temp, target, shown, overwrite) = _waiting[0];
            try
            {
                File.Move(temp, target, overwrite);
            }
            catch (Exception e) when (FileTrouble.IsOfFiles(e))
            {
                throw new UsageException(Words.CannotWrite(shown, FileTrouble.Reason(e)), e);
            }

            _waiting.RemoveAt(0);
        }
    }

    public void Dispose()
    {
        foreach (var (temp, _, _, _) in _waiting)
        {
            Quietly(() => File.Delete(temp));
        }

        _waiting.Clear();
        // Innermost first; one with something in it stays, because deleting it fails.
        foreach (var folder in Enumerable.Reverse(_foldersMade))
        {
            Quietly(() => Directory.Delete(folder));
        }

        _foldersMade.Clear();
    }

    private void MakeFolder(string folder)
    {
        if (Directory.Exists(folder))
        {
            return;
        }

        if (Path.GetDirectoryName(folder) is { } parent)
        {
            MakeFolder(parent);
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

        _foldersMade.Add(folder);
    }

    /// <summary>Tidying up must not hide the trouble that made it necessary.</summary>
    private static void Quietly(Action tidy)
    {
        try
        {
            tidy();
        }
        catch (Exception e) when (FileTrouble.IsOfFiles(e))
        {
            // Nothing better can be done, and the message about the first trouble is on its way.
        }
    }
}
