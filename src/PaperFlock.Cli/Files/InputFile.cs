using PaperFlock.Flocks.Reading;

namespace PaperFlock.Cli.Files;

/// <summary>The bytes of a flock file or a list, as many as the reader takes and one over: enough for it to refuse the file, and no more is ever held.</summary>
internal static class InputFile
{
    /// <param name="path">As typed.</param>
    /// <exception cref="UsageException">There is no such file, or it cannot be read.</exception>
    public static byte[] Read(string path, Host host, int most = FlockReader.MostBytes + 1) => FileTrouble.Told(
        () =>
        {
            var full = host.FullPath(path);
            if (Directory.Exists(full))
            {
                throw new UsageException(Messages.CannotRead(path, "that is a folder"));
            }

            using var file = new FileStream(full, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            // A pipe does not know its length, and some files of the system say they have none.
            var bytes = new byte[file.CanSeek && file.Length > 0 ? Math.Min(file.Length, most) : most];
            return bytes[..file.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false)];
        },
        why => Messages.CannotRead(path, why));
}
