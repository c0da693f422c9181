using PaperFlock.Flocks.Reading;

namespace PaperFlock.Cli.Files;

/// <summary>The bytes of a flock file or a list, as many as the reader takes and one over: enough for it to refuse the file, and no more is ever held.</summary>
internal static class InputFile
{
    /// <summary>A pipe into which another program writes has something within that time; one that nobody writes to would keep us for ever.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

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

            // A pipe does not know its length, and some files of the system say they have none. Opening a pipe may already wait.
            if (new FileInfo(full) is not { Exists: true, Length: 0 })
            {
                return Read(full, most);
            }

            var reading = Task.Run(() => Read(full, most));
            return Task.WhenAny(reading, Task.Delay(Patience, host.Stop)).GetAwaiter().GetResult() == reading
                ? reading.GetAwaiter().GetResult()
                : throw new UsageException(Messages.CannotRead(path, "it is no file but a pipe or a device, and nothing comes out of it"));
        },
        why => Messages.CannotRead(path, why));

    private static byte[] Read(string full, int most)
    {
        using var file = new FileStream(full, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var bytes = new byte[file.CanSeek && file.Length > 0 ? Math.Min(file.Length, most) : most];
        var read = file.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return read == bytes.Length ? bytes : bytes[..read];
    }
}
