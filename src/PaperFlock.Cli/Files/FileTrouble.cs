using System.Security;

namespace PaperFlock.Cli.Files;

/// <summary>Why a file could not be had, in plain words.</summary>
internal static class FileTrouble
{
    // ENOSPC and EDQUOT as Linux and macOS number them, ERROR_DISK_FULL and ERROR_HANDLE_DISK_FULL as Windows does.
    private static readonly int[] DiskFull = [28, 122, 69, unchecked((int)0x80070070), unchecked((int)0x80070027)];

    // EROFS as Linux and macOS number it, ERROR_WRITE_PROTECT as Windows does.
    private static readonly int[] DiskReadOnly = [30, unchecked((int)0x80070013)];

    /// <summary>What the system throws for a file's sake; anything else is a fault of the program.</summary>
    public static bool IsOfFiles(Exception e) => e is IOException or UnauthorizedAccessException or SecurityException or ArgumentException or NotSupportedException;

    /// <summary>Does something for a file's sake.</summary>
    /// <param name="complaint">What is said where it cannot be done, from the reason.</param>
    /// <exception cref="UsageException">It cannot.</exception>
    public static T Told<T>(Func<T> work, Func<string, string> complaint)
    {
        try
        {
            return work();
        }
        catch (Exception e) when (IsOfFiles(e))
        {
            throw new UsageException(complaint(Reason(e)), e);
        }
    }

    /// <inheritdoc cref="Told{T}"/>
    public static void Told(Action work, Func<string, string> complaint) => Told(
        () =>
        {
            work();
            return true;
        },
        complaint);

    public static string Reason(Exception e) => e switch
    {
        FileNotFoundException => "there is no such file",
        DirectoryNotFoundException => "there is no such folder",
        PathTooLongException => "the name is too long: choose a shorter one",
        UnauthorizedAccessException or SecurityException => "this computer does not allow you to: see who may use it, or choose another place",
        IOException when DiskFull.Contains(e.HResult) => "the disk is full: make some room and try again",
        IOException when DiskReadOnly.Contains(e.HResult) => "that disk can be read only: write to another",
        _ => e.Message.TrimEnd('.'),
    };
}
