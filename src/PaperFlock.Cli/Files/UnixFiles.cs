using System.Runtime.InteropServices;
using System.Text;

namespace PaperFlock.Cli.Files;

/// <summary>What Unix can do with folders and names and the framework has no call for.</summary>
internal static class UnixFiles
{
    private const string C = "libc";
    private const int ReadOnly = 0;
    private const int Exclusive = 2;
    private const int AtOnce = 4;

    /// <summary>EWOULDBLOCK as Linux and macOS number it.</summary>
    private static readonly int[] HeldByAnother = [11, 35];

    // The C library goes by other names on other systems; the program has it loaded already, whatever it is called.
    static UnixFiles() =>
        NativeLibrary.SetDllImportResolver(typeof(UnixFiles).Assembly, static (name, _, _) => name == C ? NativeLibrary.GetMainProgramHandle() : 0);

    /// <returns>Null where the folder may not be looked into, or is none.</returns>
    public static int? OpenFolder(string folder) => open(Name(folder), ReadOnly) is >= 0 and var handle ? handle : null;

    public static void Close(int handle) => _ = close(handle);

    /// <summary>Puts the names in a folder on the disk, as flushing does the content of a file. Some disks cannot, and do without.</summary>
    public static void Flush(int folder) => _ = fsync(folder);

    /// <summary>Tries for a lock that ends with its process. Never waits.</summary>
    /// <returns>Null where this kind of disk has no locks.</returns>
    public static bool? TryLock(int folder) =>
        flock(folder, Exclusive | AtOnce) == 0 ? true : HeldByAnother.Contains(Marshal.GetLastPInvokeError()) ? false : null;

    /// <summary>Gives a file a second name beside the first.</summary>
    /// <returns>Whether it has it: some disks know no such thing.</returns>
    public static bool TryLink(string file, string second) => link(Name(file), Name(second)) == 0;

    private static byte[] Name(string path) => Encoding.UTF8.GetBytes(path + '\0');

#pragma warning disable IDE1006, SA1300 // The names are the C library's.
    // The generated kind of import would open the whole project to unsafe code for a few numbers.
    [DllImport(C, SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int open(byte[] path, int flags);

    [DllImport(C)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int close(int handle);

    [DllImport(C)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int fsync(int handle);

    [DllImport(C, SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int flock(int handle, int operation);

    [DllImport(C)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int link(byte[] path, byte[] second);
#pragma warning restore IDE1006, SA1300
}
