namespace PaperFlock.Cli.Files;

/// <summary>
/// Files to be put in place together: written whole beside where they belong, flushed, and then moved there. Until then, and after any failure,
/// what was there before is untouched; a run that is killed on the way leaves what the next one in that folder puts right.
/// </summary>
/// <remarks>
/// Content is held in memory until it is wanted, so that everything on the disk happens within one short while, under the lock of the folder. A target
/// that is a link is replaced by a file: what the link pointed to is not the output that was named.
/// </remarks>
internal sealed class StagedFiles : IDisposable
{
    private readonly List<StagedFile> _files = [];
    private readonly List<string> _foldersMade = [];
    private readonly List<string> _temps = [];

    public bool IsEmpty => _files.Count == 0;

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
            throw new UsageException(Messages.CannotWriteInto(shown, FileTrouble.Reason(e)), e);
        }
    }

    /// <param name="target">Full path; its folder is made if it is not there.</param>
    /// <param name="shown">What messages call it.</param>
    /// <param name="content">Not copied: it must stay as it is.</param>
    /// <param name="overwrite">False for a file that must not be there yet, not even since it was last looked for.</param>
    /// <param name="likeOld">Whoever may read and write the file that is there may do so with the new one.</param>
    /// <exception cref="UsageException">It cannot be written there.</exception>
    public void Add(string target, string shown, ReadOnlyMemory<byte> content, bool overwrite = true, bool likeOld = false)
    {
        if (Directory.Exists(target))
        {
            throw new UsageException(Messages.CannotWrite(shown, Messages.IsAFolderThere));
        }

        _files.Add(new StagedFile(target, shown, content, overwrite, likeOld));
    }

    /// <param name="lastLook">
    /// Asked when no other run can write there any more: whether what the files were made from is still what is there. Null where that does not matter.
    /// </param>
    /// <returns>False where the last look says no: nothing was written.</returns>
    /// <exception cref="UsageException">A file could not be put in its place; none is.</exception>
    /// <exception cref="OperationCanceledException">The user stopped it before the first was moved.</exception>
    public bool PutInPlace(CancellationToken stop, Func<bool>? lastLook = null)
    {
        var at = _files[0];
        var locks = new List<FolderLock>();
        try
        {
            // Always in the same order, so that no two runs wait for each other.
            foreach (var file in _files.DistinctBy(f => f.Folder, StringComparer.Ordinal).OrderBy(f => f.Folder, StringComparer.Ordinal))
            {
                at = file;
                MakeFolder(file.Folder);
                var held = FolderLock.Take(file.Folder, file.Shown, stop);
                locks.Add(held);
                CutShort.PutRight(file.Folder, held);
            }

            if (lastLook?.Invoke() == false)
            {
                return false;
            }

            foreach (var file in _files)
            {
                at = file;
                Write(file);
                stop.ThrowIfCancellationRequested();
            }

            Move(locks, ref at);
            return true;
        }
        catch (Exception e) when (FileTrouble.IsOfFiles(e))
        {
            throw new UsageException(Messages.CannotWrite(at.Shown, FileTrouble.Reason(e)), e);
        }
        finally
        {
            Tidy();
            locks.ForEach(l => l.Dispose());
        }
    }

    public void Dispose()
    {
        Tidy();
        // Innermost first; one with something in it stays, because deleting it fails.
        foreach (var folder in Enumerable.Reverse(_foldersMade))
        {
            TempFiles.Quietly(() => Directory.Delete(folder));
        }

        _foldersMade.Clear();
    }

    private void Write(StagedFile file)
    {
        var temp = TempFiles.NewName(file.Folder);
        _temps.Add(temp);
        using var written = new FileStream(temp, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        if (file.LikeOld && !OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(written.SafeFileHandle, File.GetUnixFileMode(file.Target));
        }

        written.Write(file.Content.Span);
        written.Flush(flushToDisk: true);
    }

    /// <param name="at">The file in hand, for the message about what goes wrong.</param>
    private void Move(List<FolderLock> locks, ref StagedFile at)
    {
        UndoNote? note = null;
        if (_files.Count > 1)
        {
            note = new UndoNote(_files[0].Folder);
            try
            {
                foreach (var file in _files)
                {
                    at = file;
                    note.Keep(file.Target, file.Content.Span);
                }

                note.Write();
            }
            catch
            {
                note.Drop();
                throw;
            }

            locks.ForEach(l => l.Flush());
        }

        try
        {
            for (var i = 0; i < _files.Count; i++)
            {
                at = _files[i];
                File.Move(_temps[i], at.Target, at.Overwrite);
            }

            locks.ForEach(l => l.Flush());
            note?.Drop();
            locks.ForEach(l => l.Flush());
        }
        catch
        {
            TempFiles.Quietly(() => note?.PutBack());
            throw;
        }
    }

    private void Tidy()
    {
        _temps.ForEach(temp => TempFiles.Quietly(() => File.Delete(temp)));
        _temps.Clear();
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

    private sealed record StagedFile(string Target, string Shown, ReadOnlyMemory<byte> Content, bool Overwrite, bool LikeOld)
    {
        public string Folder { get; } = Path.GetDirectoryName(Target)!;
    }
}
