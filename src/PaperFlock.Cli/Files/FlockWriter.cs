namespace PaperFlock.Cli.Files;

/// <summary>Puts a changed flock file in the place of the old one, whole.</summary>
internal static class FlockWriter
{
    /// <param name="path">As typed. A link is followed, so that it stays one.</param>
    /// <param name="old">What it was changed from.</param>
    /// <exception cref="UsageException">It cannot be written, or is no longer the old one; it is untouched.</exception>
    public static void Write(string path, FlockFile old, FlockFile changed, Host host)
    {
        var target = host.FullPath(path);
        FileTrouble.Told(
            () =>
            {
                target = File.ResolveLinkTarget(target, returnFinalTarget: true)?.FullName ?? target;
                // A folder may let a file be replaced that may not be written: whoever set it so did not want it changed.
                new FileStream(target, FileMode.Open, FileAccess.Write, FileShare.ReadWrite | FileShare.Delete).Dispose();
            },
            why => Messages.CannotWrite(path, why));

        using var staged = new StagedFiles();
        staged.Add(new OutputFile(target, path), changed.ToBytes(), likeOld: true);
        if (!InputFile.Read(path, host).AsSpan().SequenceEqual(old.ToBytes()))
        {
            throw new UsageException(Messages.CannotWrite(path, "it has been changed by somebody else meanwhile; try again"));
        }

        staged.PutInPlace(CancellationToken.None);
    }
}
