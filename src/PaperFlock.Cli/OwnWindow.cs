using System.Runtime.InteropServices;

namespace PaperFlock.Cli;

/// <summary>The window Windows opens for a program that is double-clicked or dropped upon, and shuts when it ends.</summary>
internal static class OwnWindow
{
    /// <returns>What waits for the user to press Enter; null where the window belongs to a shell or there is nobody at the keys.</returns>
    public static Action? Waiting() =>
        OperatingSystem.IsWindows() && !Console.IsInputRedirected && !Console.IsOutputRedirected && IsOurs()
            ? () => Console.ReadLine()
            : null;

    /// <summary>With a shell there would be two processes in it.</summary>
    private static bool IsOurs()
    {
        var processes = new uint[2];
        return GetConsoleProcessList(processes, (uint)processes.Length) == 1;
    }

    // The generated kind of import would open the whole project to unsafe code for one array of numbers.
    [DllImport("kernel32.dll")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static extern uint GetConsoleProcessList([Out] uint[] processes, uint room);
}
