using System.Runtime.InteropServices;

namespace PaperFlock.Cli;

/// <summary>The three streams every program is given, where somebody has closed one of them (<c>&lt;&amp;-</c>).</summary>
internal static class StandardStreams
{
    private const int ReadAndWrite = 2;
    private const int LastOfThem = 2;

    private static ReadOnlySpan<byte> Nowhere => "/dev/null\0"u8;

    /// <summary>
    /// Gives a closed one nothing to read and nowhere to write to. Otherwise the next file that is opened takes its place, and is read as if it had
    /// been typed, or has our messages written into it. To be called before any file is opened.
    /// </summary>
    public static void FillClosed()
    {
        // The lowest number that is free is the one that is given (POSIX, open()).
        var name = Nowhere.ToArray();
        while (!OperatingSystem.IsWindows() && open(name, ReadAndWrite) is >= 0 and var handle)
        {
            if (handle > LastOfThem)
            {
                _ = close(handle);
                return;
            }
        }
    }

#pragma warning disable IDE1006, SA1300 // The names are the C library's.
    [DllImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int open(byte[] path, int flags);

    [DllImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int close(int handle);
#pragma warning restore IDE1006, SA1300
}
