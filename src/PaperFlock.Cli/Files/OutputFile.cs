namespace PaperFlock.Cli.Files;

/// <summary>A file to be written.</summary>
/// <param name="Full">Its whole path.</param>
/// <param name="Shown">What messages call it: the folder as it was typed.</param>
internal readonly record struct OutputFile(string Full, string Shown)
{
    /// <summary>Looked at before any work is done.</summary>
    /// <param name="folder">As typed; it need not be there.</param>
    /// <exception cref="UsageException">The folder is a file, or would have to be inside one.</exception>
    public static OutputFile In(string folder, string name, Host host) => FileTrouble.Told(
        () =>
        {
            var full = Path.TrimEndingDirectorySeparator(host.FullPath(folder));
            for (var above = full; above is not null; above = Path.GetDirectoryName(above))
            {
                if (File.Exists(above))
                {
                    throw new UsageException(Messages.CannotWriteInto(folder, WhyNot(above, isFolderItself: above == full)));
                }
            }

            var shown = folder == "." ? name : Path.Combine(folder, name);
            return new OutputFile(host.FullPath(shown), shown);
        },
        why => Messages.CannotWriteInto(folder, why));

    private static string WhyNot(string file, bool isFolderItself) =>
        !isFolderItself ? $"{Path.GetFileName(file)} is a file, not a folder"
        : new FileInfo(file).ResolveLinkTarget(returnFinalTarget: true) is { Exists: false } ? "that is a link to something that is not there"
        : "that is a file, not a folder";
}
