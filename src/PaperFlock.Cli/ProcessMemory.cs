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
            // For compressing: what is freed is kept for what is asked for next, whichever thread it was freed by.
            _ = mallopt(ArenaMax, 1);
            _ = mallopt(TrimThreshold, int.MaxValue);
            _ = mallopt(MmapThreshold, MostMmapThreshold);
            Marshal.FreeHGlobal(Marshal.AllocHGlobal(16 << 20));
            if (!IsShort() && GC.TryStartNoGCRegion(Room + LargeRoom, LargeRoom))
            {
                UseHugePages();
            }
        }
        catch (Exception e) when (e is DllNotFoundException or EntryPointNotFoundException or ArgumentOutOfRangeException or IOException or UnauthorizedAccessException)
        {
            // Another C library, less memory than that, or no /proc.
        }
    }

    /// <summary>Whether a container or the user has set a limit.</summary>
    private static bool IsShort() =>
        GC.GetConfigurationVariables().TryGetValue("GCHeapHardLimit", out var limit) && limit is long and > 0 and < LimitInRooms * Room;

    /// <summary>Asks for the room in pieces of 2 MiB rather than 4 KiB: some five thousand interruptions fewer.</summary>
    private static void UseHugePages()
    {
        // proc(5): "from-to rwxp …", in hexadecimal.
        var mappings = File.ReadLines("/proc/self/maps").Select(line => line.Split('-', ' ')).Where(parts => parts[2] == "rw").Select(parts => (From: Address(parts[0]), To: Address(parts[1]))).ToList();
        // Nothing else is so large so early. What is already being handed out lies close before it.
        var room = mappings.Find(mapping => mapping.To - mapping.From >= Room / 2);
        foreach (var (from, to) in mappings.Where(mapping => mapping.From <= room.From && room.From - mapping.From < Room && mapping.To - mapping.From >= LargeRoom))
        {
            _ = madvise((nint)from, (nint)(to - from), HugePages);
        }

        foreach (var line in File.ReadLines("/proc/self/maps"))
        {
            if (line.EndsWith("[heap]", StringComparison.Ordinal))
            {
                var p = line.Split('-', ' ');
                _ = madvise((nint)Address(p[0]), (nint)(Address(p[1]) - Address(p[0])), HugePages);
            }
        }

        static ulong Address(string digits) => ulong.Parse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
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
