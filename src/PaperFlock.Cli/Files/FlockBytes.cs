using PaperFlock.Flocks.Reading;

namespace PaperFlock.Cli.Files;

/// <summary>The bytes of a flock file.</summary>
internal static class FlockBytes
{
    /// <summary>One byte over what the reader takes: enough for it to refuse the file, and no more is ever held.</summary>
    private const int Most = FlockReader.MostBytes + 1;

    /// <exception cref="UsageException">There is no such file, or it cannot be read.</exception>
    public static byte[] Read(string path, Host host)
    {
        try
        {
            var full = host.FullPath(path);
            if (Directory.Exists(full))
            {
                throw new UsageException(Messages.CannotRead(path, Messages.IsAFolder));
            }

            using var file = new FileStream(full, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            // A pipe does not know its length, and some files of the system say they have none.
            var bytes = new byte[file.CanSeek && file.Length > 0 ? Math.Min(file.Length, Most) : Most];
            var length = file.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return bytes[..length];
        }
        catch (Exception e) when (FileTrouble.IsOfFiles(e))
        {
            throw new UsageException(Messages.CannotRead(path, FileTrouble.Reason(e)), e);
        }
    }
}
