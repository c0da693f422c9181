namespace PaperFlock.Cli.Files;

/// <summary>The folder after <c>--out</c>, looked at before any work is done.</summary>
internal static class OutFolder
{
    /// <param name="folder">As typed.</param>
    /// <exception cref="UsageException">It is a file, or it would have to be inside one.</exception>
    public static void MustNotBeAFile(string folder, Surroundings surroundings)
    {
        var full = Full(folder, surroundings);
        if (File.Exists(full))
        {
            throw new UsageException(Words.CannotWriteInto(folder, new FileInfo(full).ResolveLinkTarget(true) is { Exists: false } ? Words.LeadsNowhere : Words.IsAFile));
        }

        for (var above = Path.GetDirectoryName(full); above is not null; above = Path.GetDirectoryName(above))
        {
            if (File.Exists(above))
            {
                throw new UsageException(Words.CannotWriteInto(folder, Words.FolderIsAFile(Path.GetFileName(above))));
            }
        }
    }

    private static string Full(string folder, Surroundings surroundings)
    {
        try
        {
            return Path.TrimEndingDirectorySeparator(surroundings.FullPath(folder));
        }
        catch (Exception e) when (FileTrouble.IsOfFiles(e))
        {
            throw new UsageException(Words.CannotWriteInto(folder, FileTrouble.Reason(e)), e);
        }
    }
}
