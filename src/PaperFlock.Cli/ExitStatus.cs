namespace PaperFlock.Cli;

/// <summary>What the program says to the shell when it ends. Scripts rely on the numbers.</summary>
internal static class ExitStatus
{
    public const int Clean = 0;

    /// <summary>There are errors in the flock file, or in a list; no file was touched.</summary>
    public const int FlockErrors = 1;

    /// <summary>A wrong command line, or a file that cannot be read or written.</summary>
    public const int WrongUse = 2;

    /// <summary>The program is at fault.</summary>
    public const int Fault = 3;

    /// <summary>Stopped by the user: 128 and the number of the interrupt signal, as shells have it.</summary>
    public const int Stopped = 130;
}
