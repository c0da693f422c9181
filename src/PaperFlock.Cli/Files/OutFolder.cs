namespace PaperFlock.Cli.Files;

/// <summary>The folder after <c>--out</c>, looked at before any work is done.</summary>
internal static class OutFolder
{
    /// <param name="folder">As typed.</param>
    /// <exception cref="UsageException">It is a file, or it would have to be inside one.</exception>
    public static void MustNotBeAFile(string folder, Host host)
    {
        var full = Full(folder, host);
        if (File.Exists(full))
        {
            throw new UsageException(Messages.CannotWriteInto(folder, new FileInfo(full).ResolveLinkTarget(true) is { Exists: false } ? Messages.LeadsNowhere : Messages.IsAFile));
        }

        for (var above = Path.GetDirectoryName(full); above is not null; above = Path.GetDirectoryName(above))
        {
            if (File.Exists(above))
            {
                throw new UsageException(Messages.CannotWriteInto(folder, Messages.FolderIsAFile(Path.GetFileName(above))));
            }
        }
    }

    private static string Full(string folder, Host host)
    {
        try
        {
            return Path.TrimEndingDirectorySeparator(host.FullPath(folder));
        }
        catch (Exception e) when (FileTrouble.IsOfFiles(e))
        {
            throw new UsageException(Messages.CannotWriteInto(folder, FileTrouble.Reason(e)), e);
        }
    }
}
