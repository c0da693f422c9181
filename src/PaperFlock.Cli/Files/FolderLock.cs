namespace PaperFlock.Cli.Files;

/// <summary>
/// One run at a time puts files into a folder. The system takes the lock back from a process that ends, however it ends, so that nothing
/// is left to be taken away by hand.
/// </summary>
internal sealed class FolderLock : IDisposable
{
    /// <summary>Putting a pack in place takes a moment; a run that has not done with it by now hangs, or is stopped.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(30);

    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(5);

    private readonly int? _unix;
    private readonly FileStream? _windows;

    private FolderLock(int? unix, FileStream? windows, bool isHeld) => (_unix, _windows, IsHeld) = (unix, windows, isHeld);

    /// <summary>False where this disk has no locks, or the folder may not be looked into: then there may be another run.</summary>
    public bool IsHeld { get; }

    /// <param name="folder">Full path of a folder that is there.</param>
    /// <param name="shown">What messages call it.</param>
    /// <exception cref="UsageException">Another run has had it for too long.</exception>
    /// <exception cref="OperationCanceledException">The user would not wait.</exception>
    public static FolderLock Take(string folder, string shown, CancellationToken stop)
    {
        var until = Environment.TickCount64 + (long)Longest.TotalMilliseconds;
        while (true)
        {
            if (TryTake(folder) is { } taken)
            {
                return taken;
            }

            if (Environment.TickCount64 > until)
            {
                throw new UsageException(Messages.CannotWriteInto(shown, Messages.AnotherRun));
            }

            stop.WaitHandle.WaitOne(Pause);
            stop.ThrowIfCancellationRequested();
        }
    }

    /// <summary>Puts on the disk what has been moved within the folder.</summary>
    public void Flush()
    {
        if (_unix is { } folder)
        {
            UnixFiles.Flush(folder);
        }
    }

    public void Dispose()
    {
        _windows?.Dispose();
        if (_unix is { } folder)
        {
            UnixFiles.Close(folder);
        }
    }

    /// <returns>Null while another run has it.</returns>
    private static FolderLock? TryTake(string folder) => OperatingSystem.IsWindows() ? TryTakeOnWindows(folder) : TryTakeOnUnix(folder);

    private static FolderLock? TryTakeOnUnix(string folder)
    {
        if (UnixFiles.OpenFolder(folder) is not { } handle)
        {
            return new FolderLock(null, null, isHeld: false);
        }

        if (UnixFiles.TryLock(handle) is not false and var isHeld)
        {
            return new FolderLock(handle, null, isHeld is true);
        }

        UnixFiles.Close(handle);
        return null;
    }

    /// <summary>A folder cannot be locked there, but a file can be that goes with its process.</summary>
    private static FolderLock? TryTakeOnWindows(string folder)
    {
        try
        {
            var file = new FileStream(
                Path.Combine(folder, TempFiles.LockName), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 1, FileOptions.DeleteOnClose);
            return new FolderLock(null, file, isHeld: true);
        }
        catch (IOException e) when (!FileTrouble.IsFull(e) && e is not (DirectoryNotFoundException or PathTooLongException))
        {
            return null;
        }
    }
}
