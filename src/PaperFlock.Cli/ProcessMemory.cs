using System.Globalization;
using System.Runtime.InteropServices;

namespace PaperFlock.Cli;

/// <summary>
/// How a program that runs for a fraction of a second has its memory from the system: asking for it page by page, handing it back and asking again
/// took as long as a small pack itself. Nothing here changes what is printed; where the system knows no such thing, all is as usual.
/// </summary>
internal static class ProcessMemory
{
    /// <summary>
    /// Room for all that the pack of a small flock ever asks for, so that nothing is looked through and moved while it is made. What is not
    /// used of it is only an address. A large flock uses it up, and goes on as every program does.
    /// </summary>
    private const long Room = 64 << 20;

    /// <summary>
    /// The room is taken only where memory is not limited, or limited to many times the room: close to a limit the runtime takes it and breaks down.
    /// </summary>
    private const int LimitInRooms = 4;

    /// <summary>For objects too large to be moved, which are few.</summary>
    private const long LargeRoom = 4 << 20;

    /// <summary>For the C library, which the compressor asks for a third of a megabyte for every page and seldom has the same third back.</summary>
    private const long LibraryRoom = 16 << 20;

    private const string Gnu = "libc.so.6";

    // malloc.h of the GNU C library, and the most it takes on 64 bits.
    private const int TrimThreshold = -1;
    private const int MmapThreshold = -3;
    private const int ArenaMax = -8;
    private const int MostMmapThreshold = 32 << 20;

    // madvise(2).
    private const int HugePages = 14;

    /// <summary>To be called once, before anything else.</summary>
    public static void MakeReady()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        try
        {
            // What is freed is kept for what is asked for next, whichever thread it was freed by.
            _ = mallopt(ArenaMax, 1);
            _ = mallopt(TrimThreshold, int.MaxValue);
            _ = mallopt(MmapThreshold, MostMmapThreshold);
            if (!IsShort() && GC.TryStartNoGCRegion(Room + LargeRoom, LargeRoom))
            {
                // Taken and given back at once: the library grows by so much, and keeps it.
                Marshal.FreeHGlobal(Marshal.AllocHGlobal((nint)LibraryRoom));
                UseHugePages();
            }
        }
        catch (Exception e) when (e is DllNotFoundException or EntryPointNotFoundException or ArgumentOutOfRangeException or OutOfMemoryException or IOException or UnauthorizedAccessException)
        {
            // Another C library, less memory than that, or no /proc.
        }
    }

    /// <summary>Whether a container or the user has set a limit that the room would come close to.</summary>
    private static bool IsShort() =>
        GC.GetConfigurationVariables().TryGetValue("GCHeapHardLimit", out var limit) && limit is long and > 0 and < LimitInRooms * Room;

    /// <summary>Asks for memory in pieces of 2 MiB rather than 4 KiB: some seven thousand interruptions fewer.</summary>
    private static void UseHugePages()
    {
        var mappings = File.ReadLines("/proc/self/maps").Select(Mapping.Parse).ToList();
        // Nothing else is so large so early. What the collector hands out already lies close before it.
        var room = mappings.Find(mapping => mapping.IsWritable && mapping.Length >= Room / 2);
        foreach (var mapping in mappings)
        {
            if (mapping.IsHeap || (mapping.IsWritable && mapping.Length >= LargeRoom && mapping.From <= room.From && room.From - mapping.From < Room))
            {
                _ = madvise((nint)mapping.From, (nint)mapping.Length, HugePages);
            }
        }
    }

    /// <param name="From">Its first address.</param>
    /// <param name="IsHeap">The C library's, which grows from the end of the program.</param>
    private readonly record struct Mapping(long From, long Length, bool IsWritable, bool IsHeap)
    {
        /// <summary>A line of proc(5): "from-to rwxp ... [heap]", in hexadecimal.</summary>
        public static Mapping Parse(string line)
        {
            var parts = line.Split('-', ' ');
            var from = Address(parts[0]);
            // What the kernel maps for itself lies beyond the addresses of programs.
            return new Mapping(from, Address(parts[1]) - from, parts[2] == "rw", line.EndsWith("[heap]", StringComparison.Ordinal));
        }

        private static long Address(string digits) => unchecked((long)ulong.Parse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture));
    }

#pragma warning disable IDE1006, SA1300 // The names are the C library's.
    // The generated kind of import would open the whole project to unsafe code for a few numbers.
    [DllImport(Gnu)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int mallopt(int parameter, int value);

    [DllImport(Gnu)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int madvise(nint start, nint length, int advice);
#pragma warning restore IDE1006, SA1300
}
