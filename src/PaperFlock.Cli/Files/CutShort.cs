namespace PaperFlock.Cli.Files;

/// <summary>What a run leaves that was killed, or had its power cut, while it put files in place.</summary>
internal static class CutShort
{
    /// <summary>Before anything is read there that such a run may have half replaced.</summary>
    /// <param name="folder">Full path; it need not be there.</param>
    /// <param name="shown">What messages call it.</param>
    /// <exception cref="UsageException">It cannot be put right, or another run has been writing there for too long.</exception>
    public static void PutRight(string folder, string shown, CancellationToken stop)
    {
        try
        {
            if (TempFiles.IsIn(folder))
            {
                using var held = FolderLock.Take(folder, shown, stop);
                PutRight(folder, held);
            }
        }
        catch (Exception e) when (FileTrouble.IsOfFiles(e))
        {
            throw new UsageException(Messages.CannotPutRight(shown, FileTrouble.Reason(e)), e);
        }
    }

    /// <summary>Puts back what was half replaced and sweeps up; nothing where the lock is not held, because it may be another run's.</summary>
    /// <exception cref="IOException">The old files cannot be put back.</exception>
    public static void PutRight(string folder, FolderLock held)
    {
        if (held.IsHeld)
        {
            UndoNote.Follow(folder);
            TempFiles.Quietly(() => TempFiles.Sweep(folder));
        }
    }
}
