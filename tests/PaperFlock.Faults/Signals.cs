using System.Diagnostics;
using System.Runtime.InteropServices;

namespace PaperFlock.Faults;

/// <summary>Signals to a process we started, by its id. The numbers are those of Linux and macOS alike.</summary>
internal static class Signals
{
    public const int HangUp = 1;
    public const int Interrupt = 2;
    public const int Kill = 9;
    public const int Terminate = 15;

    public static void Send(Process process, int signal)
    {
        if (!process.HasExited)
        {
            _ = kill(process.Id, signal);
        }
    }

#pragma warning disable IDE1006, SA1300 // The name is the C library's.
    [DllImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int kill(int process, int signal);
#pragma warning restore IDE1006, SA1300
}
